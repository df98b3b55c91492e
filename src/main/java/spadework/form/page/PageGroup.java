// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;

/**
 * Fields and lists under a heading. A group that most jobs have no use for is closed: its heading is a button that
 * opens it, and under it stands what is in it.
 */
final class PageGroup extends JPanel {
    private static final Pattern SPAN = Pattern.compile("span (\\d+)");
    private static final String NEWLINE = "newline";
    private static final int NAMED = 3;

    private final String title;
    private final JPanel grid = new JPanel(new MigLayout(
            "insets 0, gap 10 6, fillx, wrap " + PageContent.COLUMNS + ", hidemode 3",
            "[grow,fill,sg]".repeat(PageContent.COLUMNS)));
    private final List<Placed> placed = new ArrayList<>();
    private final List<JButton> headings = new ArrayList<>();
    private final JTextArea inIt = LabeledControl.wrapped();
    private Consumer<Boolean> kept = open -> {};
    private String holds = "";
    private boolean narrow;
    /** Columns of the last row that are taken. */
    private int taken;

    /** Something in the group, and the room it takes where there is enough. */
    private record Placed(JComponent component, String how) {}

    private PageGroup(String key) {
        super(new MigLayout("insets 0, gap 0 6, fillx, wrap 1, hidemode 3", "[grow,fill]"));
        title = Messages.of("group." + key);
        setName("group " + key);
        setOpaque(false);
        inIt.setName("in " + key);
        inIt.getAccessibleContext().setAccessibleName(title);
        grid.setOpaque(false);
    }

    /** A group that is always open. */
    static PageGroup open(String key) {
        PageGroup made = new PageGroup(key);
        JLabel heading = new JLabel(made.title);
        heading.putClientProperty("FlatLaf.styleClass", "h4");
        made.add(heading);
        made.add(made.grid, "wmin 100");
        return made;
    }

    /**
     * A group that opens and closes.
     *
     * @param open whether it was left open
     * @param kept told when somebody opens or closes it
     */
    static PageGroup rare(String key, boolean open, Consumer<Boolean> kept) {
        PageGroup made = new PageGroup(key);
        made.kept = kept;
        JButton heading = PlainText.of(new JButton());
        heading.setAction(KeyBindings.action("", () -> made.turn(!made.isOpen())));
        heading.setName("open " + key);
        heading.setHorizontalAlignment(SwingConstants.LEFT);
        heading.putClientProperty("FlatLaf.styleClass", "h4");
        heading.putClientProperty("JButton.buttonType", "borderless");
        made.headings.add(heading);
        made.add(heading, "wmin 100");
        made.add(made.inIt, "wmin 100, gapleft 24, gaptop 0");
        made.add(made.grid, "wmin 100");
        made.grid.setVisible(open);
        made.tell();
        return made;
    }

    boolean isOpen() {
        return grid.isVisible();
    }

    /** Shows what is in it; nothing about a group that is always open. */
    void open() {
        if (!isOpen()) {
            turn(true);
        }
    }

    private void turn(boolean open) {
        grid.setVisible(open);
        tell();
        kept.accept(open);
        revalidate();
        repaint();
    }

    void put(JComponent component, String how) {
        placed.add(new Placed(component, how));
        grid.add(component, next(how));
    }

    /** Where there is little room each field takes twice as many columns. */
    void narrow(boolean now) {
        if (now != narrow) {
            narrow = now;
            MigLayout layout = (MigLayout) grid.getLayout();
            taken = 0;
            placed.forEach(one -> layout.setComponentConstraints(one.component(), next(one.how())));
            grid.revalidate();
        }
    }

    /** How the next one is laid: in a row of its own where the row that is begun has no room for it. */
    private String next(String how) {
        Matcher span = SPAN.matcher(how);
        if (!span.find()) {
            return how;
        }
        int wide = Integer.parseInt(span.group(1));
        int columns = Math.min(PageContent.COLUMNS, narrow ? 2 * wide : wide);
        boolean full = taken + columns > PageContent.COLUMNS;
        taken = full || how.contains(NEWLINE) ? columns : taken + columns;
        return (full && !how.contains(NEWLINE) ? NEWLINE + ", " : "") + span.replaceFirst("span " + columns);
    }

    /**
     * Says under the heading what is in the group.
     *
     * @param names of what is filled in
     * @param faults in it
     */
    void say(List<String> names, int faults) {
        String list = String.join(", ", names.stream().limit(NAMED).toList());
        String filled = names.isEmpty()
                ? Messages.of("group.empty")
                : names.size() > NAMED ? Messages.of("group.more", list, names.size() - NAMED) : list;
        holds = faults == 0 ? filled : Messages.of("way.faults", filled, faults);
        tell();
    }

    private void tell() {
        inIt.setVisible(!isOpen());
        inIt.setForeground(UIManager.getColor("Spadework.quiet"));
        if (!holds.equals(inIt.getText())) {
            inIt.setText(holds);
        }
        for (JButton heading : headings) {
            heading.setText(title);
            heading.setIcon(UIManager.getIcon(isOpen() ? "Tree.expandedIcon" : "Tree.collapsedIcon"));
            heading.getAccessibleContext()
                    .setAccessibleName(Messages.of(isOpen() ? "group.open.name" : "group.closed.name", title, holds));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (headings != null) {
            tell();
        }
    }
}
