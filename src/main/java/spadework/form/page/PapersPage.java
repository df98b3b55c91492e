// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;
import spadework.form.session.PaperNames;
import spadework.office.JobPaper;
import spadework.office.PaperKind;

/** The papers that the job has as it stands: looked at, put on paper, saved, or laid into a letter. */
public final class PapersPage extends FormPage {
    private static final Set<PaperKind> USUALLY_SENT = Set.of(PaperKind.PROPOSAL, PaperKind.SCOPE);

    private final Actions acts;
    private final JTextArea why = LabeledControl.wrapped();
    private final JPanel rows = new JPanel(new MigLayout("insets 0, gap 5 6, fillx, wrap 5", "[grow,fill][][][][]"));
    private final List<JobPaper> papers = new ArrayList<>();
    private final Map<JobPaper, JCheckBox> enclosed = new LinkedHashMap<>();
    private final Set<JButton> issuing = new LinkedHashSet<>();
    private final JButton letter;

    /** What can be done with a paper. */
    public record Actions(
            Consumer<JobPaper> look,
            Consumer<JobPaper> print,
            Consumer<JobPaper> save,
            Consumer<List<JobPaper>> letter) {}

    public PapersPage(JobSession session, Actions acts) {
        super(session, "papers");
        this.acts = acts;
        group("papers");
        why.setName("why not");
        put(why, "span 12, wmin 100");
        rows.setOpaque(false);
        put(rows, "span 12, wmin 100");
        group("letter");
        JTextArea message = LabeledControl.wrapped();
        message.setText(Messages.of("letter.text"));
        message.setForeground(new JLabel().getForeground());
        message.getAccessibleContext().setAccessibleName(Messages.of("letter.text"));
        put(message, "span 8, wmin 100");
        letter = new JButton(KeyBindings.action(
                Messages.of("letter.make"), () -> acts.letter().accept(chosen())));
        letter.setName("letter");
        letter.getAccessibleContext().setAccessibleName(Messages.of("letter.make"));
        put(letter, "span 4");
        offer(PaperKind.ofEveryJob().stream().map(JobPaper::of).toList());
    }

    /** What a paper is called. */
    private void offer(List<JobPaper> now) {
        if (now.equals(papers)) {
            return;
        }
        papers.clear();
        papers.addAll(now);
        issuing.clear();
        enclosed.keySet().retainAll(now);
        rows.removeAll();
        now.forEach(this::row);
        rows.revalidate();
        rows.repaint();
    }

    private void row(JobPaper paper) {
        String name = PaperNames.of(paper);
        rows.add(new JLabel(name), "wmin 40");
        rows.add(button(paper, "look", acts.look()));
        rows.add(issuing(button(paper, "print", acts.print())));
        rows.add(issuing(button(paper, "save", acts.save())));
        if (paper.paper().isForHomeowner()) {
            rows.add(enclosed.computeIfAbsent(paper, fresh -> box(fresh, name)));
        } else {
            rows.add(new JLabel(Messages.of("papers.own")));
        }
    }

    private static JCheckBox box(JobPaper paper, String name) {
        JCheckBox box = new JCheckBox(Messages.of("papers.enclose"), USUALLY_SENT.contains(paper.paper()));
        box.setName(paper.file() + " enclose");
        box.getAccessibleContext().setAccessibleName(Messages.of("papers.enclose.name", name));
        return box;
    }

    private JButton button(JobPaper paper, String key, Consumer<JobPaper> act) {
        JButton button = new JButton(KeyBindings.action(Messages.of("papers." + key), () -> act.accept(paper)));
        button.setName(paper.file() + " " + key);
        button.getAccessibleContext().setAccessibleName(Messages.of("papers." + key + ".name", PaperNames.of(paper)));
        return button;
    }

    private JButton issuing(JButton button) {
        issuing.add(button);
        return button;
    }

    private List<JobPaper> chosen() {
        return papers.stream()
                .filter(paper ->
                        enclosed.containsKey(paper) && enclosed.get(paper).isSelected())
                .toList();
    }

    /** The keyboard goes to what makes the proposal a file. */
    @Override
    public void begin() {
        issuing.stream()
                .filter(button -> button.isEnabled() && button.getName().endsWith(" save"))
                .findFirst()
                .ifPresent(JButton::requestFocusInWindow);
    }

    @Override
    public void showFaults() {
        super.showFaults();
        session().bid().map(JobPaper::of).ifPresent(this::offer);
        int stops = session().bid().map(bid -> bid.openStops().size()).orElse(0);
        String text = !session().isCurrent()
                ? Messages.of("papers.faults", session().faults().size())
                : stops > 0 ? Messages.of("papers.stops", stops) : "";
        why.setText(text);
        why.setVisible(!text.isEmpty());
        issuing.forEach(button -> button.setEnabled(text.isEmpty()));
        letter.setEnabled(text.isEmpty());
    }
}
