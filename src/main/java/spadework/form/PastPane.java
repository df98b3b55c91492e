package spadework.form;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import spadework.pricebook.ItemChange;
import spadework.pricebook.LineItem;

/** What was changed in an item, when and why; the newest first. */
final class PastPane extends JPanel {
    private final Board<Step> board = new Board<>(
            "shelf.past",
            List.of(
                    Board.Head.figure("shelf.past.on", 3, step -> step.on().toString(), Step::on),
                    Board.Head.text("shelf.past.what", 4, Step::what),
                    Board.Head.text("shelf.past.from", 4, Step::from),
                    Board.Head.text("shelf.past.to", 4, Step::to),
                    Board.Head.text("shelf.past.reason", 6, Step::reason)));

    private record Step(LocalDate on, String what, String from, String to, String reason) {}

    PastPane() {
        super(new MigLayout("insets 8, gap 6, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        add(Plain.told("shelf.past.told"), "wmin 80");
        add(board.pane(), "hmin 80, wmin 80");
    }

    void show(Optional<LineItem> item) {
        List<Step> steps = new ArrayList<>();
        List<ItemChange> history = item.map(LineItem::history).orElse(List.of());
        for (int i = history.size() - 1; i >= 0; i--) {
            ItemChange change = history.get(i);
            if (change.values().isEmpty()) {
                steps.add(new Step(change.on(), Words.of("shelf.past.added"), "", "", change.reason()));
            }
            change.values()
                    .forEach(value -> steps.add(new Step(
                            change.on(),
                            ItemSheet.name(value.what()),
                            value.from().orElse(Words.of("shelf.nothing")),
                            value.to().orElse(Words.of("shelf.nothing")),
                            change.reason())));
        }
        board.show(steps, step -> step);
    }
}
