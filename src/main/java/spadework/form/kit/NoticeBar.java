// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** What has to be known, in a strip above the page: nothing waits for it, and it goes when it is answered. */
public final class NoticeBar extends JPanel {
    private final JTextArea text = LabeledControl.wrapped();

    /**
     * An answer to a notice.
     *
     * @param key of its words
     */
    public record Answer(String key, Runnable act) {}

    public NoticeBar() {
        super(new MigLayout("insets 6 16 6 16, gap 8, fillx, hidemode 3", "[grow,fill]"));
        setName("notice");
        setVisible(false);
        text.setName("notice text");
        text.getAccessibleContext().setAccessibleName(Messages.of("notice"));
    }

    /** Says something, with what can be done about it and a way to put it away. */
    public void say(String words, Answer... answers) {
        removeAll();
        text.setText(words);
        text.setForeground(UIManager.getColor("Label.foreground"));
        text.getAccessibleContext().setAccessibleDescription(words);
        setBorder(BorderFactory.createMatteBorder(0, 6, 1, 0, UIManager.getColor("Spadework.water")));
        add(text, "w 0:100:, growx, pushx");
        for (Answer answer : List.of(answers)) {
            add(button(answer.key(), answer.act()));
        }
        if (answers.length == 0) {
            add(button("notice.away", () -> {}));
        }
        setVisible(true);
        revalidate();
        repaint();
    }

    public String said() {
        return isVisible() ? text.getText() : "";
    }

    private JButton button(String key, Runnable act) {
        JButton button = new JButton(KeyBindings.action(Messages.of(key), () -> {
            setVisible(false);
            act.run();
        }));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Messages.of(key));
        return button;
    }
}
