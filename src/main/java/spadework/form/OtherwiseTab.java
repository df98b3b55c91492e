package spadework.form;

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
import spadework.office.Bid;
import spadework.office.Otherwise;
import spadework.office.Reply;

/** The price of the job on screen with something otherwise, side by side, and the range it may come to. */
final class OtherwiseTab extends JPanel {
    private static final int FEWEST = 100;
    private static final int MOST = 100_000;

    private final Reach reach;
    private final Errands errands;
    private final List<Slip> with = List.of(
            new Slip("otherwise.with.1", ""), new Slip("otherwise.with.2", ""), new Slip("otherwise.with.3", ""));
    private final Slip range = new Slip("otherwise.unsure", "");
    private final Slip runs = new Slip("otherwise.runs", "1000");
    private final Slip seed = new Slip("otherwise.seed", "1");
    private final DefaultTableModel prices = new DefaultTableModel() {
        @Override
        public boolean isCellEditable(int row, int column) {
            return false;
        }
    };
    private final JTable table = new JTable(prices);
    private final JTextArea wrong = FieldLook.wrapped();
    private final JTextArea lines = Plain.lines("otherwise.lines");

    OtherwiseTab(Reach reach, Errands errands) {
        super(new MigLayout(
                "insets 8 12 8 12, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][][grow,fill][][]"));
        this.reach = reach;
        this.errands = errands;
        table.setName("otherwise.prices");
        table.getAccessibleContext().setAccessibleName(Words.of("otherwise.prices"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.getTableHeader().setReorderingAllowed(false);
        table.setAutoCreateColumnsFromModel(true);
        JPanel cases = new JPanel(new MigLayout(
                "insets 2, gap 8, fillx, novisualpadding", "[grow,fill,sg][grow,fill,sg][grow,fill,sg][]"));
        with.forEach(slip -> {
            cases.add(slip.panel(), "top, wmin 60");
            Keys.inside(slip.field(), "ENTER", this::compare);
        });
        cases.add(Plain.button("otherwise.compare", this::compare), "top, gaptop 18");
        JPanel unsure = new JPanel(
                new MigLayout("insets 2, gap 8, fillx, novisualpadding", "[grow,fill][110!,fill][110!,fill][]"));
        List.of(range, runs, seed).forEach(slip -> {
            unsure.add(slip.panel(), "top, wmin 60");
            Keys.inside(slip.field(), "ENTER", this::range);
        });
        unsure.add(Plain.button("otherwise.range", this::range), "top, gaptop 18");
        range.field().putClientProperty("JTextField.placeholderText", Words.of("otherwise.unsure.usual"));
        with.get(0).field().putClientProperty("JTextField.placeholderText", Words.of("otherwise.with.example"));
        add(Plain.told("otherwise.told"), "wmin 80");
        add(cases);
        wrong.setVisible(false);
        add(wrong, "wmin 80");
        add(new JScrollPane(table), "hmin 100, wmin 80");
        add(unsure);
        add(new JScrollPane(lines), "h 176!, wmin 80");
    }

    /** The job on screen; told where it has no price yet. */
    private Optional<Bid> bid() {
        say(reach.bid().isEmpty() ? Words.of("otherwise.none") : "");
        return reach.bid();
    }

    private void say(String text) {
        wrong.setText(text);
        wrong.setVisible(!text.isEmpty());
        revalidate();
    }

    private void compare() {
        List<String> typed =
                with.stream().map(Slip::text).filter(text -> !text.isEmpty()).toList();
        bid().ifPresent(bid -> errands.look("beside", () -> Otherwise.beside(bid, typed), beside -> {
            say(beside.faults().stream().map(OtherwiseTab::told).collect(Collectors.joining("\n")));
            if (beside.faults().isEmpty()) {
                show(beside.rows());
            }
        }));
    }

    /** As the command line tells it, but for the name of its option. */
    private static String told(Fault fault) {
        return withoutOption(fault.text());
    }

    private static String withoutOption(String text) {
        return text.replaceFirst("^--(with|range) ", "");
    }

    private void show(List<List<String>> rows) {
        List<String> heads = Stream.concat(
                        Stream.of(Words.of("otherwise.head")),
                        rows.get(0).stream().skip(1))
                .toList();
        prices.setDataVector(rows.stream().skip(1).map(List::toArray).toArray(Object[][]::new), heads.toArray());
        for (int i = 0; i < heads.size(); i++) {
            DefaultTableCellRenderer look = PlainText.inTable();
            look.setHorizontalAlignment(i == 0 ? SwingConstants.LEFT : SwingConstants.RIGHT);
            table.getColumnModel().getColumn(i).setCellRenderer(look);
        }
    }

    private void range() {
        Optional<Long> tries = whole(runs).filter(number -> number >= FEWEST && number <= MOST);
        Optional<Long> from = whole(seed);
        if (tries.isEmpty() || from.isEmpty()) {
            say(Words.of("otherwise.numbers", FEWEST, MOST));
            return;
        }
        String typed = range.text();
        bid().ifPresent(bid -> errands.look(
                "range", () -> Otherwise.range(bid, typed, tries.get().intValue(), from.get()), this::showRange));
    }

    private void showRange(Reply reply) {
        Plain.say(
                lines,
                (reply.done() ? reply.out() : reply.err())
                        .stream().map(OtherwiseTab::withoutOption).collect(Collectors.joining("\n")));
    }

    private static Optional<Long> whole(Slip slip) {
        return slip.text().matches("-?\\d{1,18}") ? Optional.of(Long.parseLong(slip.text())) : Optional.empty();
    }
}
