// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import spadework.draft.FieldKind;
import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.draft.TypedValue;
import spadework.form.kit.CalendarPick;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PickList;
import spadework.form.kit.TextChanges;
import spadework.form.kit.WheelScroll;
import spadework.form.session.JobSession;
import spadework.form.session.References;

/**
 * A field for words or a measure. Each keystroke goes into the draft in full form, right or wrong. On leaving it, the
 * field shows that form.
 */
public final class BoundTextField implements BoundField {
    private final JobSession session;
    private final BasePointer base;
    private final String key;
    private final Optional<SchemaField> spot;
    private final JTextComponent text;
    private final LabeledControl look;
    private Optional<PickList> picks = Optional.empty();
    private boolean showing;
    private boolean typed;

    public BoundTextField(JobSession session, BasePointer base, String key) {
        this(session, base, key, Messages.field(base.format(key)));
    }

    /** @param name what it is called where its own name would not tell it from others beside it */
    public BoundTextField(JobSession session, BasePointer base, String key, String name) {
        this.session = session;
        this.base = base;
        this.key = key;
        String format = base.format(key);
        spot = FileSchema.job().at(format);
        boolean lines = spot.filter(s -> s.kind() == FieldKind.TEXT).isPresent();
        text = lines ? area() : new JTextField();
        text.setName(format);
        text.getDocument().putProperty("filterNewlines", false);
        text.putClientProperty(
                "JTextField.placeholderText",
                spot.map(LabeledControl::placeholder).orElse(""));
        JComponent shown = lines ? WheelScroll.in(new JScrollPane(text)) : text;
        boolean needed = spot.filter(SchemaField::needed).isPresent();
        look = new LabeledControl(
                name, needed, text, shown, spot.map(Messages::help).orElse(""));
        if (References.isAt(format)) {
            boolean series = spot.filter(s -> s.kind() == FieldKind.LIST).isPresent();
            picks = Optional.of(new PickList(text, () -> References.at(session, format), series));
        }
        if (text instanceof JTextField day
                && spot.filter(s -> s.kind() == FieldKind.DATE).isPresent()) {
            new CalendarPick(day, session::day);
        }
        TextChanges.in(text, this::type);
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                // Come to by Tab, what stands here is typed over; a click sets the caret.
                if (text instanceof JTextField
                        && (event.getCause() == FocusEvent.Cause.TRAVERSAL_FORWARD
                                || event.getCause() == FocusEvent.Cause.TRAVERSAL_BACKWARD)) {
                    text.selectAll();
                }
            }

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
        KeyBindings.tabLeaves(area);
        return area;
    }

    private void type() {
        Optional<String> pointer = pointer();
        if (!showing && pointer.isPresent()) {
            typed = true;
            picks.ifPresent(PickList::typed);
            session.type(pointer.get(), inFull(text.getText()));
        }
    }

    private String inFull(String words) {
        return spot.map(place -> TypedValue.inFull(place, words)).orElse(words);
    }

    private void leave() {
        Optional<String> pointer = pointer();
        if (typed && pointer.isPresent()) {
            session.settle();
            show(session.draft().shown(pointer.get()));
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

    @Override
    public JPanel panel() {
        return look.panel();
    }

    @Override
    public void showDraft() {
        Optional<String> pointer = pointer();
        text.setEnabled(pointer.isPresent());
        // Another spelling of what the draft says already, as "A, " for "A", stays while it is being typed.
        boolean same = typed
                && text.isFocusOwner()
                && pointer.filter(p ->
                                session.draft().typed(p, inFull(text.getText())).equals(session.draft()))
                        .isPresent();
        if (!same) {
            show(pointer.map(session.draft()::shown).orElse(""));
        }
    }

    private void show(String says) {
        if (!says.equals(text.getText())) {
            showing = true;
            text.setText(says);
            text.setCaretPosition(0);
            showing = false;
        }
    }

    @Override
    public void showFaults() {
        showFaults(look, session);
    }
}
