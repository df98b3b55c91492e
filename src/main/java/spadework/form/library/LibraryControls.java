// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;

/** Controls of the library: each bears its key of the words as its name. */
public final class LibraryControls {
    private LibraryControls() {}

    static JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), act));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Messages.or(key + ".name", Messages.of(key)));
        button.setToolTipText(Messages.or(key + ".help", null));
        return button;
    }

    /** Lines to be read and copied, which nobody types into. */
    static JTextArea lines(String key) {
        JTextArea lines = new JTextArea();
        lines.setName(key);
        lines.setEditable(false);
        lines.setLineWrap(true);
        lines.setWrapStyleWord(true);
        lines.getAccessibleContext().setAccessibleName(Messages.of(key));
        KeyBindings.tabLeaves(lines);
        return lines;
    }

    /** A sentence of the window's own. */
    static JTextArea described(String key) {
        JTextArea message = LabeledControl.wrapped();
        message.setName(key);
        message.setText(Messages.of(key));
        message.setForeground(new JLabel().getForeground());
        message.getAccessibleContext().setAccessibleName(Messages.of(key));
        return message;
    }

    /** Controls in a row, none wider than it has to be. */
    static JPanel row(List<? extends JComponent> controls) {
        JPanel row = new JPanel(new MigLayout("insets 2, gap 6, novisualpadding"));
        row.setOpaque(false);
        controls.forEach(control -> row.add(control, "bottom"));
        return row;
    }

    /** Puts text into lines and shows its beginning. */
    static void say(JTextArea lines, String text) {
        lines.setText(text);
        lines.setCaretPosition(0);
    }
}
