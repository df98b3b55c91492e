// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** What has to be known, in a strip of the window: nothing waits for it, and it goes when it is answered. */
public final class NoticeBar extends JPanel {
    private final JTextArea text = LabeledControl.wrapped();
    /** Longer words than there is room for are read by the wheel. */
    private final JScrollPane scroll = WheelScroll.in(new JScrollPane(text));

    /**
     * An answer to a notice.
     *
     * @param key of its words
     */
    public record Answer(String key, Runnable act) {}

    public NoticeBar() {
        super(new MigLayout("insets 2 16 2 16, gap 8, fill, hidemode 3", "[grow,fill][][][][][][]"));
        setName("notice");
        setVisible(false);
        text.setName("notice text");
        scroll.setBorder(null);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        text.getAccessibleContext().setAccessibleName(Messages.of("notice"));
    }

    /** Says something, with what can be done about it and a way to put it away. */
    public void say(String words, Answer... answers) {
        removeAll();
        text.setText(words);
        text.setCaretPosition(0);
        text.setForeground(UIManager.getColor("Label.foreground"));
        text.getAccessibleContext().setAccessibleDescription(words);
        setBorder(BorderFactory.createMatteBorder(0, 6, 1, 0, UIManager.getColor("Spadework.water")));
        add(scroll, "w 0:100:, h 20:pref:, grow, pushx");
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
