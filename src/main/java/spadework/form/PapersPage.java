package spadework.form;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import spadework.office.Paper;

/** The papers of the job: looked at, put on paper, saved, or laid into a letter. */
final class PapersPage extends Page {
    private final JTextArea why = FieldLook.wrapped();
    private final Map<Paper, JCheckBox> enclosed = new LinkedHashMap<>();
    private final Set<JButton> issuing = new LinkedHashSet<>();

    /** What can be done with a paper. */
    record Acts(Consumer<Paper> look, Consumer<Paper> print, Consumer<Paper> save, Consumer<Set<Paper>> letter) {}

    PapersPage(Desk desk, Acts acts) {
        super(desk, "papers");
        group("papers");
        why.setName("why not");
        put(why, "span 12, wmin 100");
        for (Paper paper : Paper.values()) {
            String name = Words.of("paper." + paper.file());
            put(new JLabel(name), "span 3");
            put(button(paper, "look", acts.look()), "span 2");
            put(issuing(button(paper, "print", acts.print())), "span 2");
            put(issuing(button(paper, "save", acts.save())), "span 2");
            if (paper.isForHomeowner()) {
                JCheckBox box = new JCheckBox(Words.of("papers.enclose"), paper != Paper.WARRANTY);
                box.setName(paper.file() + " enclose");
                box.getAccessibleContext().setAccessibleName(Words.of("papers.enclose.name", name));
                enclosed.put(paper, box);
                put(box, "span 3");
            } else {
                put(new JLabel(Words.of("papers.own")), "span 3");
            }
        }
        group("letter");
        JTextArea told = FieldLook.wrapped();
        told.setText(Words.of("letter.told"));
        told.setForeground(new JLabel().getForeground());
        told.getAccessibleContext().setAccessibleName(Words.of("letter.told"));
        put(told, "span 8, wmin 100");
        JButton letter = new JButton(Keys.action(Words.of("letter.make"), () -> acts.letter().accept(chosen())));
        letter.setName("letter");
        letter.getAccessibleContext().setAccessibleName(Words.of("letter.make"));
        put(issuing(letter), "span 4");
    }

    private JButton button(Paper paper, String key, Consumer<Paper> act) {
        JButton button = new JButton(Keys.action(Words.of("papers." + key), () -> act.accept(paper)));
        button.setName(paper.file() + " " + key);
        button.getAccessibleContext().setAccessibleName(
                Words.of("papers." + key + ".name", Words.of("paper." + paper.file())));
        return button;
    }

    private JButton issuing(JButton button) {
        issuing.add(button);
        return button;
    }

    private Set<Paper> chosen() {
        Set<Paper> papers = EnumSet.noneOf(Paper.class);
        enclosed.forEach((paper, box) -> {
            if (box.isSelected()) {
                papers.add(paper);
            }
        });
        return papers;
    }

    @Override
    void showFaults() {
        super.showFaults();
        int stops = desk().bid().map(bid -> bid.openStops().size()).orElse(0);
        String text = !desk().isCurrent() ? Words.of("papers.faults", desk().faults().size())
                : stops > 0 ? Words.of("papers.stops", stops) : "";
        why.setText(text);
        why.setVisible(!text.isEmpty());
        issuing.forEach(button -> button.setEnabled(text.isEmpty()));
    }
}
