package spadework.form;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import spadework.draft.Kind;
import spadework.draft.Outline;
import spadework.draft.Pointer;
import spadework.draft.Spot;
import spadework.draft.Tidy;
import spadework.finding.Fault;

/**
 * A field for words or a measure. Each keystroke goes into the draft, right or wrong. On leaving it, what was typed is
 * spelled tidily: same figures, same units.
 */
final class TextEntry implements Entry {
    private final Desk desk;
    private final Base base;
    private final String key;
    private final JTextComponent text;
    private final FieldLook look;
    private boolean showing;
    private boolean typed;

    TextEntry(Desk desk, Base base, String key, String format) {
        this.desk = desk;
        this.base = base;
        this.key = key;
        Optional<Spot> spot = Outline.job().at(format);
        boolean long_ = spot.filter(s -> s.kind() == Kind.TEXT).isPresent();
        text = long_ ? area() : new JTextField();
        text.setName(format);
        text.getDocument().putProperty("filterNewlines", Boolean.FALSE);
        text.putClientProperty("JTextField.placeholderText", FieldLook.usual(spot));
        JComponent shown = long_ ? new JScrollPane(text) : text;
        look = new FieldLook(
                Words.field(format), spot.filter(Spot::needed).isPresent(), text, shown, spot.map(Spot::help).orElse(""));
        text.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                type();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                type();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // Plain text has no attributes to change.
            }
        });
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                leave();
            }
        });
    }

    private static JTextArea area() {
        JTextArea area = new JTextArea(2, 20);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        Keys.tabLeaves(area);
        return area;
    }

    private void type() {
        Optional<String> pointer = pointer();
        if (!showing && pointer.isPresent()) {
            typed = true;
            desk.type(pointer.get(), text.getText());
        }
    }

    private void leave() {
        Optional<String> pointer = pointer();
        if (typed && pointer.isPresent()) {
            Kind kind = Outline.job().at(pointer.get()).map(Spot::kind).orElse(Kind.LABEL);
            desk.type(pointer.get(), Tidy.of(kind, text.getText()));
            desk.settle();
        }
        typed = false;
    }

    @Override
    public Optional<String> pointer() {
        return base.at(key);
    }

    @Override
    public JComponent control() {
        return text;
    }

    JPanel panel() {
        return look.panel();
    }

    @Override
    public void showDraft() {
        Optional<String> pointer = pointer();
        String says = pointer.map(desk.draft()::shown).orElse("");
        text.setEnabled(pointer.isPresent());
        if (!says.equals(text.getText())) {
            showing = true;
            text.setText(says);
            text.setCaretPosition(0);
            showing = false;
        }
    }

    @Override
    public void showFaults() {
        look.tell(pointer().map(this::faults).orElse(List.of()));
    }

    /** A value that stands for its whole group shows the group's faults. */
    private List<Fault> faults(String pointer) {
        List<Fault> own = desk.faultsIn(pointer);
        String above = Pointer.above(pointer);
        boolean first = Outline.job().at(above)
                .filter(spot -> spot.either() && pointer.equals(Pointer.of(above, spot.keys().get(0)))).isPresent();
        return own.isEmpty() && first
                ? desk.faults().stream().filter(fault -> fault.place().pointer().equals(above)).toList()
                : own;
    }
}
