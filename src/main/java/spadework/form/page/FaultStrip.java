// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.Component;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.finding.Fault;
import spadework.form.kit.FaultWords;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;
import spadework.form.session.LikelyFixes;

/** What is wrong with the field that has the keyboard, and a button for each likely fix. */
public final class FaultStrip extends JPanel {
    private static final int MOST_FIXES = 3;

    private final JobSession session;
    private final JTextArea said = LabeledControl.wrapped();
    private final JPanel fixes = new JPanel(new MigLayout("insets 0, gap 6"));
    private List<Fault> shown = List.of();
    private Optional<Component> at = Optional.empty();

    public FaultStrip(JobSession session) {
        super(new MigLayout("insets 2 16 2 16, gap 8, fill", "[grow,fill][]"));
        this.session = session;
        setName("fault strip");
        fixes.setOpaque(false);
        add(said, "wmin 100, growy");
        add(fixes);
    }

    /** Shows what is wrong where the keyboard is on a page; while it is on a fix, what that one is for. */
    public void show(FormPage page, Component owner) {
        if (!SwingUtilities.isDescendingFrom(owner, this)) {
            at = Optional.of(owner);
        }
        List<Fault> faults = at.map(page::faultsAt).orElse(List.of());
        if (faults.equals(shown)) {
            return;
        }
        shown = faults;
        said.setForeground(UIManager.getColor(
                faults.stream().allMatch(FaultWords::isMissing) ? "Spadework.missing" : "Spadework.fault"));
        said.setText(FaultWords.of(faults.stream().limit(2).toList()));
        said.setCaretPosition(0);
        said.setToolTipText(faults.isEmpty() ? null : FaultWords.of(faults));
        fixes.removeAll();
        Set<String> offered = new LinkedHashSet<>();
        for (Fault fault : faults) {
            String pointer = fault.place().pointer();
            for (String fix : LikelyFixes.of(session, fault)) {
                if (offered.size() < MOST_FIXES && offered.add(fix)) {
                    fixes.add(button(pointer, fix));
                }
            }
        }
        revalidate();
        repaint();
    }

    private JButton button(String pointer, String fix) {
        JButton button =
                new JButton(KeyBindings.action(Messages.of("fault.write", Messages.or("choice." + fix, fix)), () -> {
                    session.edit(session.draft().typed(pointer, fix));
                    at.ifPresent(Component::requestFocusInWindow);
                }));
        button.setName("fix " + fix);
        button.getAccessibleContext().setAccessibleName(button.getText());
        return button;
    }
}
