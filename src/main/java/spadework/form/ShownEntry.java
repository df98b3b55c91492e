package spadework.form;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import spadework.draft.Outline;
import spadework.draft.Spot;

/** A value that a step wrote: it can be read and copied, and is not typed. It is there once it is written. */
final class ShownEntry implements Entry {
    private final Desk desk;
    private final Base base;
    private final String key;
    private final JTextField text = new JTextField();
    private final FieldLook look;

    ShownEntry(Desk desk, Base base, String key) {
        this.desk = desk;
        this.base = base;
        this.key = key;
        String format = base.format(key);
        text.setEditable(false);
        text.setName(format);
        look = new FieldLook(
                Words.field(format),
                false,
                text,
                text,
                Outline.job().at(format).map(Spot::help).orElse(""));
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
        String says = pointer().map(desk.draft()::shown).orElse("");
        panel().setVisible(!says.isEmpty());
        String shown = Words.or("choice." + says, says);
        if (!shown.equals(text.getText())) {
            text.setText(shown);
            text.setCaretPosition(0);
        }
    }

    @Override
    public void showFaults() {
        showFaults(look, desk);
    }
}
