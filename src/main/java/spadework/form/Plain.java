package spadework.form;

import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Controls of the shelf: each bears its key of the words as its name. */
final class Plain {
    private Plain() {}

    static JButton button(String key, Runnable act) {
        JButton button = new JButton(Keys.action(Words.of(key), act));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Words.or(key + ".name", Words.of(key)));
        button.setToolTipText(Words.or(key + ".help", null));
        return button;
    }

    /** Lines to be read and copied, which nobody types into. */
    static JTextArea lines(String key) {
        JTextArea lines = new JTextArea();
        lines.setName(key);
        lines.setEditable(false);
        lines.setLineWrap(true);
        lines.setWrapStyleWord(true);
        lines.getAccessibleContext().setAccessibleName(Words.of(key));
        Keys.tabLeaves(lines);
        return lines;
    }

    /** A sentence of the window's own. */
    static JTextArea told(String key) {
        JTextArea told = FieldLook.wrapped();
        told.setName(key);
        told.setText(Words.of(key));
        told.setForeground(new JLabel().getForeground());
        told.getAccessibleContext().setAccessibleName(Words.of(key));
        return told;
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
