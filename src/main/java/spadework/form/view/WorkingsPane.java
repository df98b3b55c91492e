// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.awt.BorderLayout;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTree;
import javax.swing.tree.DefaultMutableTreeNode;
import javax.swing.tree.DefaultTreeModel;
import javax.swing.tree.TreePath;
import javax.swing.tree.TreeSelectionModel;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.form.session.JobSession;
import spadework.form.session.PointerNames;
import spadework.office.Bid;
import spadework.pricing.PricedLine;
import spadework.takeoff.TakeoffLine;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** How each quantity and price came about, down to what was measured; what was measured leads to its field. */
public final class WorkingsPane extends JPanel {
    private final JobSession session;
    private final Consumer<String> reveal;
    private final JTree tree = new JTree(new DefaultMutableTreeNode());
    private Optional<Bid> shown = Optional.empty();

    /** One line of a working; {@code cause} is where in the job it is given. */
    private record WorkingLine(String text, Optional<String> cause) {
        @Override
        public String toString() {
            return text;
        }
    }

    /** @param reveal goes to a place of the job */
    public WorkingsPane(JobSession session, Consumer<String> reveal) {
        super(new BorderLayout());
        this.session = session;
        this.reveal = reveal;
        tree.setName("working");
        tree.getAccessibleContext().setAccessibleName(Messages.of("pane.working"));
        tree.setRootVisible(false);
        tree.setShowsRootHandles(true);
        tree.getSelectionModel().setSelectionMode(TreeSelectionModel.SINGLE_TREE_SELECTION);
        var look = PlainText.inTree();
        look.setLeafIcon(null);
        look.setOpenIcon(null);
        look.setClosedIcon(null);
        tree.setCellRenderer(look);
        tree.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    go();
                }
            }
        });
        KeyBindings.inside(tree, "ENTER", this::go);
        add(new JScrollPane(tree));
    }

    private void go() {
        TreePath path = tree.getSelectionPath();
        if (path != null
                && ((DefaultMutableTreeNode) path.getLastPathComponent()).getUserObject() instanceof WorkingLine step) {
            step.cause().ifPresent(reveal);
        }
    }

    @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
    public void showAnswer() {
        Optional<Bid> bid = session.bid();
        if (isShowing() && bid.isPresent() && (shown.isEmpty() || shown.get() != bid.get())) {
            show(bid.get());
        }
    }

    private void show(Bid bid) {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < tree.getRowCount(); i++) {
            if (tree.isExpanded(i)) {
                open.add(i);
            }
        }
        shown = Optional.of(bid);
        DefaultMutableTreeNode root = new DefaultMutableTreeNode();
        DefaultMutableTreeNode total =
                node(Messages.of("working.total", bid.total().text()));
        bid.quote().buildUp().forEach(step -> total.add(working(step)));
        root.add(total);
        for (int i = 0; i < bid.quote().lines().size(); i++) {
            root.add(line(bid.quote().lines().get(i), takenOff(bid, i).stream().toList()));
        }
        tree.setModel(new DefaultTreeModel(root));
        open.forEach(tree::expandRow);
    }

    /** The taken-off line that a priced line prices: both lists have the same order. */
    private static Optional<TakeoffLine> takenOff(Bid bid, int index) {
        List<TakeoffLine> lines = bid.takeoff().lines();
        return index < lines.size()
                        && lines.get(index)
                                .code()
                                .equals(bid.quote().lines().get(index).code())
                ? Optional.of(lines.get(index))
                : Optional.empty();
    }

    /** Shows the working of the total; -1, or of a line by its place. */
    @SuppressWarnings("ReferenceEquality") // the very same record: nothing was figured since
    public void open(int line) {
        session.bid().ifPresent(bid -> {
            if (shown.isEmpty() || shown.get() != bid) {
                show(bid);
            }
            DefaultMutableTreeNode root =
                    (DefaultMutableTreeNode) tree.getModel().getRoot();
            if (line + 1 < root.getChildCount()) {
                DefaultMutableTreeNode node = (DefaultMutableTreeNode) root.getChildAt(line + 1);
                TreePath path = new TreePath(node.getPath());
                tree.setSelectionPath(path);
                expand(node);
                tree.scrollPathToVisible(path);
                tree.scrollRowToVisible(Math.min(tree.getRowForPath(path) + 12, tree.getRowCount() - 1));
                tree.scrollPathToVisible(path);
            }
        });
    }

    private void expand(DefaultMutableTreeNode node) {
        tree.expandPath(new TreePath(node.getPath()));
        for (int i = 0; i < node.getChildCount(); i++) {
            expand((DefaultMutableTreeNode) node.getChildAt(i));
        }
    }

    private String section(PricedLine line) {
        String name = line.section().name();
        return session.view().map(seen -> seen.section(name)).orElse(name);
    }

    private DefaultMutableTreeNode line(PricedLine line, List<TakeoffLine> from) {
        DefaultMutableTreeNode node = node(Messages.of("working.line", session.ofBook(line.name()), section(line)));
        node.add(node(Messages.of(
                "working.price",
                line.quantity().toPlainString(),
                line.unit().symbol(),
                line.unitPrice().text(),
                line.price().text())));
        from.stream().flatMap(one -> one.from().stream()).forEach(quantity -> node.add(working(quantity.working())));
        if (!line.reason().isEmpty()) {
            node.add(node(line.reason()));
        }
        DefaultMutableTreeNode cost =
                node(Messages.of("working.cost", line.cost().direct().text()));
        part(
                cost,
                "labor",
                line.cost().labor().text(),
                line.crewHours().signum() == 0
                        ? ""
                        : Messages.of("working.hours", line.crewHours().toPlainString(), line.crew()));
        part(cost, "material", line.cost().material().text(), "");
        part(cost, "purchaseTax", line.cost().purchaseTax().text(), "");
        part(cost, "machine", line.cost().machine().text(), "");
        part(cost, "subcontract", line.cost().subcontract().text(), "");
        part(cost, "disposal", line.cost().disposal().text(), "");
        node.add(cost);
        return node;
    }

    private static void part(DefaultMutableTreeNode cost, String key, String amount, String note) {
        if (!amount.equals("$0.00")) {
            cost.add(node(Messages.of("working." + key, amount) + (note.isEmpty() ? "" : ", " + note)));
        }
    }

    private DefaultMutableTreeNode working(Working working) {
        String right = working instanceof Worked worked ? worked.line() : working.valueText();
        Optional<String> cause =
                working instanceof Given given && given.source().startsWith("/")
                        ? Optional.of(given.source())
                        : Optional.empty();
        String source =
                cause.map(place -> PointerNames.named(place, session.draft())).orElse(working.source());
        DefaultMutableTreeNode node = new DefaultMutableTreeNode(
                new WorkingLine(Messages.of("working.step", working.symbol(), right, working.name(), source), cause));
        working.inputs().forEach(input -> node.add(working(input)));
        return node;
    }

    private static DefaultMutableTreeNode node(String text) {
        return new DefaultMutableTreeNode(new WorkingLine(text, Optional.empty()));
    }
}
