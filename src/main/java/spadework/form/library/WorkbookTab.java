// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.Messages;
import spadework.office.book.BookSheets;
import spadework.office.reply.Reply;

/** The book out to a workbook and back: what differs, or all that is wrong, is told before anything is written. */
public final class WorkbookTab extends JPanel {
    private final LibraryContext context;
    private final BackgroundTasks tasks;
    private final Runnable moved;
    private final StandaloneField day;
    private final StandaloneField reason = new StandaloneField("workbook.reason", "");
    private final JTextArea message = LibraryControls.lines("workbook.text");
    private final JTextArea lines = LibraryControls.lines("workbook.lines");
    private final JButton write;
    private Optional<Taken> pending = Optional.empty();

    /** A file that was looked at, with what goes with it. */
    private record Taken(Path job, BookSheets.PriceFile from, LocalDate on, String reason) {

        Reply on(boolean save) throws IOException {
            return new BookSheets(LibraryContext.bookOf(job)).cells(from, new BookSheets.Saving(on, reason, save));
        }
    }

    /** @param moved called when the book was written */
    WorkbookTab(LibraryContext context, BackgroundTasks tasks, Runnable moved) {
        super(new MigLayout("insets 12 16 12 16, gap 8, fill, wrap 1", "[grow,fill]", "[][][][][][][grow,fill][]"));
        this.context = context;
        this.tasks = tasks;
        this.moved = moved;
        day = new StandaloneField("workbook.on", context.today().toString());
        write = LibraryControls.button("workbook.write", () -> pending.ifPresent(this::write));
        write.setEnabled(false);
        add(LibraryControls.described("workbook.out.text"), "wmin 80");
        add(LibraryControls.row(List.of(LibraryControls.button("workbook.export", this::export))));
        add(LibraryControls.described("workbook.in.text"), "wmin 80, gaptop 12");
        JPanel why = new JPanel(new MigLayout("insets 0, gap 8, fillx", "[140!,fill][grow,fill]"));
        why.add(day.panel(), "top");
        why.add(reason.panel(), "top, wmin 60");
        add(why);
        add(LibraryControls.row(List.of(
                LibraryControls.button("workbook.take", () -> take(false)),
                LibraryControls.button("workbook.supplier", () -> take(true)))));
        message.setOpaque(false);
        add(message, "wmin 80");
        add(new JScrollPane(lines), "hmin 80, wmin 80");
        add(LibraryControls.row(List.of(write)));
        List.of(day, reason).forEach(field -> field.onTyped(this::forget));
    }

    private void forget() {
        pending = Optional.empty();
        write.setEnabled(false);
    }

    private void export() {
        Path job = context.job();
        tasks.run(
                () -> LibraryContext.bookOf(job),
                book -> context.platform()
                        .saveAs(this, book.file().toAbsolutePath().resolveSibling(Messages.of("workbook.file")))
                        .ifPresent(target -> tasks.run(
                                () -> new BookSheets(book).export(target),
                                reply -> say(reply, Messages.of("workbook.exported", target), reply.err()))));
    }

    private void take(boolean supplier) {
        boolean dayFits = day.isDay(true);
        boolean reasonFits = reason.needed().isPresent();
        if (!dayFits || !reasonFits) {
            return;
        }
        Path from = context.job().getParent();
        Optional<Path> file = context.platform().openTable(this, from);
        Optional<Path> map = file.isPresent() && supplier ? context.platform().open(this, from) : Optional.empty();
        if (file.isEmpty() || (supplier && map.isEmpty())) {
            return;
        }
        Taken taken = new Taken(
                context.job(),
                new BookSheets.PriceFile(file.get(), map),
                day.day().orElseThrow(),
                reason.text());
        forget();
        tasks.latest("cells", () -> taken.on(false), reply -> {
            boolean differs = reply.done() && !reply.out().isEmpty();
            pending = differs ? Optional.of(taken) : Optional.empty();
            write.setEnabled(differs);
            say(
                    reply,
                    differs
                            ? Messages.of(
                                    "workbook.differ",
                                    reply.out().size(),
                                    taken.from().file())
                            : Messages.of("workbook.same", taken.from().file()),
                    reply.out());
        });
    }

    private void write(Taken taken) {
        forget();
        tasks.run(() -> context.home().step(taken.job(), () -> taken.on(true)), reply -> {
            say(reply, Messages.of("workbook.written", reply.out().size()), reply.out());
            moved.run();
        });
    }

    private void say(Reply reply, String done, List<String> out) {
        LibraryControls.say(
                message,
                reply.done() ? done : Messages.of("workbook.faults", reply.err().size()));
        LibraryControls.say(lines, String.join("\n", reply.done() ? out : reply.err()));
        revalidate();
    }
}
