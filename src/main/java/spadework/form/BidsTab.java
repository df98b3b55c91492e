package spadework.form;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.bids.Standing;
import spadework.office.BidsDesk;

/** All bids of the folder, found by words; one opens by Enter, is copied for another customer, or priced anew. */
final class BidsTab extends JPanel {
    /** How long after a key the bids are searched, in milliseconds. */
    private static final int PAUSE = 250;

    private final Reach reach;
    private final Errands errands;
    private final Slip words = new Slip("bids.find", "");
    private final Slip day;
    private final JComboBox<Choice> standing = new JComboBox<>(Stream.concat(
                    Stream.of(new Choice("", Words.of("bids.any"))),
                    Stream.of(Standing.values()).map(one -> new Choice(one.name(), Words.of("standing." + one))))
            .toArray(Choice[]::new));
    private final JLabel told = PlainText.of(new JLabel(" "));
    private final JTextArea unread = Plain.lines("shelf.unread");
    private final Board<BidRow> board;
    private final Timer pause = new Timer(PAUSE, event -> load());

    BidsTab(Reach reach, Errands errands, Errands looking) {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1, hidemode 3", "[grow,fill]", "[][][grow,fill][][]"));
        this.reach = reach;
        this.errands = looking;
        pause.setRepeats(false);
        day = new Slip("bids.on", reach.today().toString());
        board = new Board<>("shelf.bids", heads(() -> day.day().orElse(reach.today())));
        FieldLook look = new FieldLook(Words.of("bids.standing"), false, standing, standing, "");
        standing.setName("bids.standing");
        PlainText.inList(standing);
        standing.addActionListener(event -> load());
        words.onTyped(pause::restart);
        day.onTyped(pause::restart);
        Keys.inside(words.field(), "DOWN", () -> board.table().requestFocusInWindow());
        Keys.inside(words.field(), "ENTER", this::load);
        told.setName("bids.told");
        unread.setVisible(false);
        board.onOpened(row -> reach.open(Path.of(row.place())));
        CopyPane copy = new CopyPane(reach, errands, this::load);
        RepricePane reprice = new RepricePane(reach, errands, this::load);
        board.onChosen(row -> {
            copy.show(row);
            reprice.show(row);
        });
        JPanel top = new JPanel(
                new MigLayout("insets 2, gap 8, fillx, novisualpadding", "[grow,fill][160!,fill][120!,fill][]"));
        top.add(words.panel(), "top");
        top.add(look.panel(), "top");
        top.add(day.panel(), "top");
        top.add(Plain.button("shelf.folder", this::choose), "bottom");
        JTabbedPane below = new JTabbedPane();
        below.setName("bids.below");
        below.getAccessibleContext().setAccessibleName(Words.of("bids.below"));
        below.addTab(Words.of("bids.copy"), copy);
        below.addTab(Words.of("bids.reprice"), reprice);
        add(top);
        add(told, "wmin 80");
        add(board.pane(), "hmin 80, wmin 80");
        add(unread, "wmin 80");
        add(below, "h 264!, wmin 80");
        reach.onTree(this::load);
    }

    private interface Day {
        LocalDate get();
    }

    private static List<Board.Head<BidRow>> heads(Day day) {
        return List.of(
                Board.Head.text("shelf.bids.number", 3, BidRow::number),
                Board.Head.text("shelf.bids.standing", 3, row -> Words.of("standing." + row.standing())),
                Board.Head.figure("shelf.bids.issued", 3, row -> row.issued().toString(), BidRow::issued),
                Board.Head.figure(
                        "shelf.bids.until",
                        4,
                        row -> until(row, day.get()),
                        row -> row.validUntil().orElse(LocalDate.MIN)),
                Board.Head.figure("shelf.bids.age", 2, row -> Long.toString(row.age()), BidRow::age),
                Board.Head.figure("shelf.bids.total", 3, row -> row.total().text(), BidRow::total),
                Board.Head.figure(
                        "shelf.bids.margin",
                        2,
                        row -> row.margin().map(share -> share + " %").orElse(""),
                        row -> row.margin().orElse(BigDecimal.ZERO)),
                Board.Head.text("shelf.bids.customer", 6, BidRow::customer),
                Board.Head.text("shelf.bids.title", 8, BidRow::title));
    }

    private static String until(BidRow row, LocalDate on) {
        return row.validUntil()
                .map(last -> row.isExpiredOn(on) ? Words.of("shelf.bids.over", last) : last.toString())
                .orElse("");
    }

    Slip words() {
        return words;
    }

    boolean isIdle() {
        return !pause.isRunning();
    }

    private void choose() {
        reach.outside().folder(this, reach.tree()).ifPresent(reach::tree);
    }

    /** Reads the bids anew. */
    void load() {
        pause.stop();
        if (!day.isDay(true)) {
            return;
        }
        LocalDate on = day.day().orElseThrow();
        String word = ((Choice) standing.getSelectedItem()).word();
        Optional<Standing> wanted = word.isEmpty() ? Optional.empty() : Optional.of(Standing.valueOf(word));
        List<String> sought =
                List.of(words.text().isEmpty() ? new String[0] : words.text().split("\\s+"));
        Path tree = reach.tree();
        told.setText(Words.of("bids.looking", tree));
        errands.look("bids", () -> BidsDesk.rows(tree, on, wanted, sought), found -> {
            board.show(found.rows(), BidRow::place);
            told.setText(Words.of("bids.found", found.rows().size(), tree));
            Plain.say(unread, String.join("\n", found.unread()));
            unread.setVisible(!found.unread().isEmpty());
            revalidate();
        });
    }
}
