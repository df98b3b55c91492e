// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.Color;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BusySign;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.kit.Theme;
import spadework.form.session.JobSession;
import spadework.form.view.FoundItem.Group;
import spadework.money.Dollars;
import spadework.office.Bid;

/** Always in view: the total, what the last edit changed, the gravest thing found, and whether the file has it. */
public final class SummaryBar extends JPanel {
    /** Those whose number is always in view. */
    private static final List<Group> COUNTED = List.of(Group.FIX, Group.HOUSE, Group.CREW);

    /** The width from which figures and numbers stand beside the price. */
    private static final int ROOM = 1280;

    private final JobSession session;
    private final JButton total = new JButton();
    private final JLabel change = new JLabel();
    private final JLabel figures = new JLabel();
    private final Map<Group, JButton> counts = new EnumMap<>(Group.class);
    private final JButton gravest = PlainText.of(new JButton());
    private final JLabel saved = new JLabel();
    private final JLabel margin = new JLabel();
    private boolean marginShown;

    /**
     * Makes the bar.
     *
     * @param working shows how the total came about
     * @param cause goes to the cause of the gravest thing
     * @param found shows all that was found for one kind of reader
     */
    public SummaryBar(JobSession session, Runnable working, Runnable cause, Consumer<Group> found) {
        super(new MigLayout(
                "insets 4 12 4 12, gap 12, fillx, hidemode 2",
                "[shrink 0][90:pref:][shrink 0][shrink 0][grow,fill,shrinkprio 200][shrink 0][40!][shrink 0]"));
        this.session = session;
        total.setName("total");
        total.putClientProperty("JButton.buttonType", "borderless");
        total.addActionListener(event -> working.run());
        change.setName("change");
        gravest.setName("gravest");
        gravest.putClientProperty("JButton.buttonType", "borderless");
        gravest.setHorizontalAlignment(SwingConstants.LEFT);
        gravest.addActionListener(event -> cause.run());
        saved.setName("saved");
        figures.setName("figures");
        margin.setName("margin");
        add(total);
        add(change, "wmin 0");
        add(figures);
        add(margin);
        add(gravest, "wmin 50");
        JPanel numbers = new JPanel(new MigLayout("insets 0, gap 4, hidemode 3"));
        numbers.setOpaque(false);
        for (Group group : COUNTED) {
            JButton button = new JButton();
            button.setName("count " + group.word());
            button.addActionListener(event -> found.accept(group));
            counts.put(group, button);
            numbers.add(button);
        }
        add(numbers);
        add(new BusySign(session.work()));
        add(saved);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                showAll();
            }
        });
        showAll();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(BorderFactory.createMatteBorder(2, 0, 0, 0, UIManager.getColor("Spadework.soil")));
        if (session != null) {
            SwingUtilities.invokeLater(this::showAll);
        }
    }

    /** Shows or hides what the job leaves over: not for a customer who looks on; whether it is shown now. */
    public boolean toggleMargin() {
        marginShown = !marginShown;
        showAll();
        return marginShown;
    }

    public void showAll() {
        margin.setVisible(marginShown);
        margin.setText(
                marginShown
                        ? session.bid()
                                .flatMap(Bid::margin)
                                .map(share -> Messages.of("summary.margin", share))
                                .orElse("")
                        : "");
        total.setFont(Theme.bold(22));
        String amount = session.total().map(Dollars::text).orElse(Messages.of("totals.none"));
        boolean provisional = session.assumed().isPresent();
        boolean old = !provisional
                && !session.isCurrent()
                && session.total().isPresent()
                && !session.faults().isEmpty();
        total.setText(amount);
        Color faded = UIManager.getColor("Label.disabledForeground");
        total.setForeground(old ? faded : UIManager.getColor("Label.foreground"));
        total.getAccessibleContext().setAccessibleName(Messages.of("totals.total", amount));
        total.setToolTipText(Messages.of("totals.total.help"));
        change.setText(
                provisional
                        ? Messages.of(
                                "totals.provisional",
                                session.assumed().map(a -> a.all().size()).orElse(0))
                        : old
                                ? Messages.of("totals.older")
                                : session.change().map(SummaryBar::changed).orElse(""));
        change.setForeground(UIManager.getColor(provisional ? "Spadework.missing" : "Label.foreground"));
        List<FoundItem> found = FoundItem.of(session);
        Optional<FoundItem> first = found.stream().findFirst();
        String text = first.map(item -> Messages.of("grade." + item.grade(), item.text()))
                .orElse(Messages.of("totals.nothing"));
        int more = Math.max(0, found.size() - 1);
        gravest.setText(more > 0 ? Messages.of("totals.more", text, more) : text);
        gravest.setToolTipText(null);
        gravest.setForeground(
                first.filter(FoundItem::isGrave).isPresent()
                        ? UIManager.getColor("Spadework.fault")
                        : UIManager.getColor("Label.foreground"));
        gravest.getAccessibleContext().setAccessibleName(Messages.of("totals.gravest", text));
        counts.forEach((group, button) -> {
            long here = found.stream().filter(item -> item.group() == group).count();
            button.setText(Messages.of("summary.count." + group.word(), here));
            button.setVisible(here > 0 && hasRoom());
        });
        figures.setText(
                session.bid().filter(bid -> hasRoom()).map(SummaryBar::figures).orElse(""));
        figures.setVisible(!figures.getText().isEmpty());
        saved.setText(Messages.of(session.history().isSaved() ? "totals.saved" : "totals.unsaved"));
        saved.setForeground(session.history().isSaved() ? faded : UIManager.getColor("Spadework.missing"));
    }

    private static String figures(Bid bid) {
        String days = Messages.of("summary.days", bid.workingDays());
        return bid.perFoot()
                .map(foot -> Dollars.of(foot).text())
                .map(foot -> Messages.of("summary.foot", foot, days))
                .orElse(days);
    }

    /** Whether more stands in the bar than a small window or large letters leave room for. */
    private boolean hasRoom() {
        return getWidth() >= Theme.scaled(ROOM);
    }

    private static String changed(Dollars by) {
        if (by.isZero()) {
            return Messages.of("totals.same");
        }
        return Messages.of("totals.change", (by.isNegative() ? "" : "+") + by.text());
    }
}
