// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

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
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;
import spadework.office.portfolio.Copying;

/** Begins a bid for another customer with parts of an old one. */
public final class CopyBidPane extends JPanel {
    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final Runnable copied;
    private final StandaloneField number = new StandaloneField("copy.number", "");
    private final StandaloneField customer = new StandaloneField("copy.customer", "");
    private final StandaloneField day;
    private final Map<Copying.Take, JCheckBox> parts = new EnumMap<>(Copying.Take.class);
    private final JTextArea message = LibraryControls.lines("copy.text");
    private final JButton copy = LibraryControls.button("copy.make", this::copy);
    private final JButton open = LibraryControls.button("copy.open", this::open);
    private Optional<BidRow> bid = Optional.empty();
    private Optional<Path> made = Optional.empty();

    CopyBidPane(LibraryContext context, BackgroundTasks tasks, Runnable copied) {
        super(new MigLayout("insets 8, gap 8, fill, wrap 3", "[160!,fill][grow,fill][160!,fill]", "[][][][grow,fill]"));
        this.context = context;
        this.tasks = tasks;
        this.copied = copied;
        day = new StandaloneField("copy.on", context.today().toString());
        add(number.panel(), "top");
        add(customer.panel(), "top, wmin 60");
        add(day.panel(), "top");
        JPanel boxes = new JPanel(new MigLayout("insets 0, gap 16"));
        for (Copying.Take part : Copying.Take.values()) {
            JCheckBox box = new JCheckBox(Messages.of("copy.take." + part), true);
            box.setName("copy.take." + part);
            parts.put(part, box);
            boxes.add(box);
        }
        add(boxes, "span 3");
        open.setEnabled(false);
        add(LibraryControls.row(List.of(copy, open)), "span 3");
        add(new JScrollPane(message), "span 3, hmin 40, wmin 80");
        clear();
    }

    void show(BidRow chosen) {
        bid = Optional.of(chosen);
        copy.setEnabled(true);
        copy.setText(Messages.of("copy.make.of", chosen.number()));
    }

    /** No bid is chosen. */
    void clear() {
        bid = Optional.empty();
        copy.setEnabled(false);
        copy.setText(Messages.of("copy.make"));
    }

    private void copy() {
        boolean numbered = number.needed().isPresent();
        boolean named = customer.needed().isPresent();
        if (!numbered || !named || !day.isDay(true) || bid.isEmpty()) {
            return;
        }
        Path from = Path.of(bid.get().place());
        Path target = JobFile.place(context.tree(), number.text());
        String own = number.text();
        String whose = customer.text();
        LocalDate on = day.day().orElseThrow();
        EnumSet<Copying.Take> take = EnumSet.noneOf(Copying.Take.class);
        parts.forEach((part, box) -> {
            if (box.isSelected()) {
                take.add(part);
            }
        });
        JobsHome home = context.home();
        tasks.run(() -> home.step(target, () -> Copying.copy(from, target, own, whose, on, take)), reply -> {
            made = reply.done() ? Optional.of(target) : Optional.empty();
            open.setEnabled(made.isPresent());
            LibraryControls.say(message, String.join("\n", reply.done() ? reply.out() : reply.err()));
            if (reply.done()) {
                copied.run();
            }
        });
    }

    private void open() {
        made.ifPresent(context::open);
    }
}
