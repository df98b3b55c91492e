// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import spadework.finding.Fault;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.LabeledControl;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.office.Bid;
import spadework.office.portfolio.WhatIf;
import spadework.office.reply.Reply;

/** The price of the job on screen with something otherwise, side by side, and the range it may come to. */
public final class WhatIfTab extends JPanel {
    private static final int FEWEST = 100;
    private static final int MOST = 100_000;

    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final List<StandaloneField> with = List.of(
            new StandaloneField("whatif.with.1", ""),
            new StandaloneField("whatif.with.2", ""),
            new StandaloneField("whatif.with.3", ""));
    private final StandaloneField range = new StandaloneField("whatif.unsure", "");
    private final StandaloneField runs = new StandaloneField("whatif.runs", "1000");
    private final StandaloneField seed = new StandaloneField("whatif.seed", "1");
    private final DefaultTableModel prices = new DefaultTableModel() {
        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final JTable table = new JTable(prices);
    private final JTextArea wrong = LabeledControl.wrapped();
    private final JTextArea lines = LibraryControls.lines("whatif.lines");

    WhatIfTab(LibraryContext context, BackgroundTasks tasks) {
        super(new MigLayout(
                "insets 8 12 8 12, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][][grow,fill][][]"));
        this.context = context;
        this.tasks = tasks;
        table.setName("whatif.prices");
        table.getAccessibleContext().setAccessibleName(Messages.of("whatif.prices"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoCreateColumnsFromModel(true);
        JPanel cases = new JPanel(new MigLayout(
                "insets 2, gap 8, fillx, novisualpadding", "[grow,fill,sg][grow,fill,sg][grow,fill,sg][]"));
        with.forEach(field -> {
            cases.add(field.panel(), "top, wmin 60");
            KeyBindings.inside(field.field(), "ENTER", this::compare);
        });
        cases.add(LibraryControls.button("whatif.compare", this::compare), "top, gaptop 18");
        JPanel unsure = new JPanel(
                new MigLayout("insets 2, gap 8, fillx, novisualpadding", "[grow,fill][110!,fill][110!,fill][]"));
        List.of(range, runs, seed).forEach(field -> {
            unsure.add(field.panel(), "top, wmin 60");
            KeyBindings.inside(field.field(), "ENTER", this::range);
        });
        unsure.add(LibraryControls.button("whatif.range", this::range), "top, gaptop 18");
        range.field().putClientProperty("JTextField.placeholderText", Messages.of("whatif.unsure.usual"));
        with.get(0).field().putClientProperty("JTextField.placeholderText", Messages.of("whatif.with.example"));
        add(LibraryControls.described("whatif.text"), "wmin 80");
        add(cases);
        wrong.setVisible(false);
        add(wrong, "wmin 80");
        add(new JScrollPane(table), "hmin 100, wmin 80");
        add(unsure);
        add(new JScrollPane(lines), "h 176!, wmin 80");
    }

    /** The job on screen; told where it has no price yet. */
    private Optional<Bid> bid() {
        say(context.bid().isEmpty() ? Messages.of("whatif.none") : "");
        return context.bid();
    }

    private void say(String text) {
        wrong.setText(text);
        wrong.setVisible(!text.isEmpty());
        revalidate();
    }

    private void compare() {
        List<String> typed = with.stream()
                .map(StandaloneField::text)
                .filter(text -> !text.isEmpty())
                .toList();
        bid().ifPresent(bid -> tasks.latest("beside", () -> WhatIf.beside(bid, typed), beside -> {
            say(beside.faults().stream().map(WhatIfTab::described).collect(Collectors.joining("\n")));
            if (beside.faults().isEmpty()) {
                show(beside.rows());
            }
        }));
    }

    /** As the command line tells it, but for the name of its option. */
    private static String described(Fault fault) {
        return withoutOption(fault.text());
    }

    private static String withoutOption(String text) {
        return text.replaceFirst("^--(with|range) ", "");
    }

    private void show(List<List<String>> rows) {
        List<String> columns = Stream.concat(
                        Stream.of(Messages.of("whatif.head")),
                        rows.get(0).stream().skip(1))
                .toList();
        prices.setDataVector(rows.stream().skip(1).map(List::toArray).toArray(Object[][]::new), columns.toArray());
        for (int i = 0; i < columns.size(); i++) {
            DefaultTableCellRenderer look = PlainText.inTable();
            look.setHorizontalAlignment(i == 0 ? SwingConstants.LEFT : SwingConstants.RIGHT);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
        }
    }

    private void range() {
        Optional<Long> tries = whole(runs).filter(number -> number >= FEWEST && number <= MOST);
        Optional<Long> from = whole(seed);
        if (tries.isEmpty() || from.isEmpty()) {
            say(Messages.of("whatif.numbers", FEWEST, MOST));
            return;
        }
        String typed = range.text();
        bid().ifPresent(bid -> tasks.latest(
                "range", () -> WhatIf.range(bid, typed, tries.get().intValue(), from.get()), this::showRange));
    }

    private void showRange(Reply reply) {
        LibraryControls.say(
                lines,
                (reply.done() ? reply.out() : reply.err())
                        .stream().map(WhatIfTab::withoutOption).collect(Collectors.joining("\n")));
    }

    private static Optional<Long> whole(StandaloneField field) {
        return field.text().matches("-?\\d{1,18}") ? Optional.of(Long.parseLong(field.text())) : Optional.empty();
    }
}
