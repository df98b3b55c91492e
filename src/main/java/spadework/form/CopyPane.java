package spadework.form;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.bids.BidRow;
import spadework.office.Copying;
import spadework.office.JobFile;

/** Begins a bid for another customer with parts of an old one. */
final class CopyPane extends JPanel {
    private final Reach reach;
    private final Errands errands;
    private final Runnable copied;
    private final Slip number = new Slip("copy.number", "");
    private final Slip customer = new Slip("copy.customer", "");
    private final Slip day;
    private final Map<Copying.Take, JCheckBox> parts = new EnumMap<>(Copying.Take.class);
    private final JTextArea told = Plain.lines("copy.told");
    private final JButton copy = Plain.button("copy.make", this::copy);
    private final JButton open = Plain.button("copy.open", this::open);
    private Optional<BidRow> bid = Optional.empty();
    private Optional<Path> made = Optional.empty();

    CopyPane(Reach reach, Errands errands, Runnable copied) {
        super(new MigLayout("insets 8, gap 8, fill, wrap 3", "[160!,fill][grow,fill][160!,fill]", "[][][][grow,fill]"));
        this.reach = reach;
        this.errands = errands;
        this.copied = copied;
        day = new Slip("copy.on", reach.today().toString());
        add(number.panel(), "top");
        add(customer.panel(), "top, wmin 60");
        add(day.panel(), "top");
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 16"));
        for (Copying.Take part : Copying.Take.values()) {
            JCheckBox box = new JCheckBox(Words.of("copy.take." + part), true);
            box.setName("copy.take." + part);
            parts.put(part, box);
            boxes.add(box);
        }
        add(boxes, "span 3");
        open.setEnabled(false);
        add(Plain.row(List.of(copy, open)), "span 3");
        add(new JScrollPane(told), "span 3, hmin 40, wmin 80");
        show(Optional.empty());
    }

    void show(Optional<BidRow> chosen) {
        bid = chosen;
        copy.setEnabled(chosen.isPresent());
        copy.setText(chosen.map(one -> Words.of("copy.make.of", one.number())).orElse(Words.of("copy.make")));
    }

    private void copy() {
        boolean numbered = number.needed().isPresent();
        boolean named = customer.needed().isPresent();
        if (!numbered || !named || !day.isDay(true) || bid.isEmpty()) {
            return;
        }
        Path from = Path.of(bid.get().place());
        Path target = JobFile.place(reach.tree(), number.text());
        String own = number.text();
        String whose = customer.text();
        LocalDate on = day.day().orElseThrow();
        EnumSet<Copying.Take> take = EnumSet.noneOf(Copying.Take.class);
        parts.forEach((part, box) -> {
            if (box.isSelected()) {
                take.add(part);
            }
        });
        errands.run(() -> Copying.copy(from, target, own, whose, on, take), reply -> {
            made = reply.done() ? Optional.of(target) : Optional.empty();
            open.setEnabled(made.isPresent());
            Plain.say(told, String.join("\n", reply.done() ? reply.out() : reply.err()));
            if (reply.done()) {
                copied.run();
            }
        });
    }

    private void open() {
        made.ifPresent(reach::open);
    }
}
