package spadework.form;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** What has to be known, in a strip above the page: nothing waits for it, and it goes when it is answered. */
final class Notice extends JPanel {
    private final JTextArea text = FieldLook.wrapped();

    /**
     * An answer to a notice.
     *
     * @param key of its words
     */
    record Answer(String key, Runnable act) {}

    Notice() {
        super(new MigLayout("insets 6 16 6 16, gap 8, fillx, hidemode 3", "[grow,fill]"));
        setName("notice");
        setVisible(false);
        text.setName("notice text");
        text.getAccessibleContext().setAccessibleName(Words.of("notice"));
    }

    /** Says something, with what can be done about it and a way to put it away. */
    void say(String words, Answer... answers) {
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

    String said() {
        return isVisible() ? text.getText() : "";
    }

    private JButton button(String key, Runnable act) {
        JButton button = new JButton(Keys.action(Words.of(key), () -> {
            setVisible(false);
            act.run();
        }));
        button.setName(key);
        button.getAccessibleContext().setAccessibleName(Words.of(key));
        return button;
    }
}
