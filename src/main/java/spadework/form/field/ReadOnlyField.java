// SPDX-License-Identifier: Apache-2.0
package spadework.form.field;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import spadework.draft.FileSchema;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;

/** A value that a step wrote: it can be read and copied, and is not typed. It is there once it is written. */
public final class ReadOnlyField implements BoundField {
    private final JobSession session;
    private final BasePointer base;
    private final String key;
    private final JTextField text = new JTextField();
    private final LabeledControl look;

    public ReadOnlyField(JobSession session, BasePointer base, String key) {
        this.session = session;
        this.base = base;
        this.key = key;
        String format = base.format(key);
        text.setEditable(false);
        text.setName(format);
        look = new LabeledControl(
                Messages.field(format),
                false,
                text,
                text,
                FileSchema.job().at(format).map(Messages::help).orElse(""));
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
        String says = pointer().map(session.draft()::shown).orElse("");
        panel().setVisible(!says.isEmpty());
        String shown = Messages.or("choice." + says, says);
        if (!shown.equals(text.getText())) {
            text.setText(shown);
            text.setCaretPosition(0);
        }
    }

    @Override
    public void showFaults() {
        showFaults(look, session);
    }
}
