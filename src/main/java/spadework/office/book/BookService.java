// SPDX-License-Identifier: Apache-2.0
package spadework.office.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import spadework.disk.ChangedElsewhere;
import spadework.disk.InsideFolder;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.BookDraft;
import spadework.draft.ChangedValues;
import spadework.draft.DraftValue.Entries;
import spadework.draft.Leaves;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.Intake;
import spadework.intake.ReadBook;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;
import spadework.pricebook.LineItem;

/** Work on a price book file. What is changed is read as a job would read it before it is written. */
public final class BookService {
    private final Path file;
    private final boolean writes;
    /** What the file said when a change of it began. */
    private Snapshot basis = Snapshot.NONE;

    private final Intake intake = new Intake();

    private BookService(Path file, boolean writes) {
        this.file = file;
        this.writes = writes;
    }

    /** A price book by its file, or by the folder that it lies in. */
    public static BookService at(Path book) {
        return new BookService(Files.isDirectory(book) ? book.resolve("price-book.json") : book, true);
    }

    /**
     * The nearest {@code price-book.json} to a folder or a job, else to the working folder: there or in a folder above.
     *
     * @throws IOException if there is none
     */
    public static BookService near(Path tree) throws IOException {
        Path folder = Files.isRegularFile(tree) ? tree.toAbsolutePath().getParent() : tree;
        return at(Intake.bookOf(folder)
                .or(() -> Intake.bookOf(Path.of("")))
                .orElseThrow(
                        () -> new IOException("no price-book.json here or in a folder above; name it with --book")));
    }

    /** A service of the same book that tells what would move, or what is wrong, and writes nothing. */
    public BookService trial() {
        return new BookService(file, false);
    }

    /** The items as a table, of the sections and codes that match; retired ones only where they are asked for. */
    public Reply list(Wanted wanted) throws IOException {
        return table(wanted.on().map(draft()::asOf).orElse(draft()), wanted::isMet);
    }

    /**
     * Which items are listed.
     *
     * @param section only of this section; empty for all
     * @param retired those that were given up as well
     * @param on as the book stood on that day; empty for today
     */
    public record Wanted(Optional<String> section, boolean retired, Optional<LocalDate> on) {
        /** What can be priced today. */
        public static final Wanted CURRENT = new Wanted(Optional.empty(), false, Optional.empty());

        private boolean isMet(LineItem item) {
            return (retired || item.retired().isEmpty())
                    && section.filter(label -> !label.equals(item.section().label()))
                            .isEmpty();
        }
    }

    /** The items in which every word occurs: in code, names, notes or source, in whatever case. */
    public Reply find(List<String> words) throws IOException {
        return table(draft(), item -> BookText.holds(item, words));
    }

    /** Everything that the book says of an item today, with its history. */
    public Reply show(String code) throws IOException {
        return show(code, draft());
    }

    /** The same at the end of another day. */
    public Reply show(String code, LocalDate on) throws IOException {
        return show(code, draft().asOf(on));
    }

    private Reply show(String code, BookDraft book) throws IOException {
        Optional<Entries> item = item(book, code);
        return item.isPresent()
                ? Reply.done(BookText.of(item.get(), book.item(code).isEmpty()))
                : Reply.refused(List.of(unknown(code)));
    }

    /**
     * Changes values of an item.
     *
     * @param values what is written where, as {@code material/cost} to {@code $33.00}; nothing takes a value out
     * @param on the day from which it holds
     */
    public Reply change(String code, Map<String, String> values, LocalDate on, String reason) throws IOException {
        return alone(() -> changed(code, values, on, reason));
    }

    private Reply changed(String code, Map<String, String> values, LocalDate on, String reason) throws IOException {
        BookDraft book = draft();
        Optional<Entries> item = item(book, code);
        if (item.isEmpty()) {
            return Reply.refused(List.of(unknown(code)));
        }
        BookDraft own = book.item(code).isPresent() ? book : book.with(item.get());
        return written(own.changed(code, BookText.sourced(values, on, reason), on, reason), book, code);
    }

    /** Adds an item. */
    public Reply add(String code, Map<String, String> values, LocalDate on, String reason) throws IOException {
        return alone(() -> added(code, Entries.NONE, values, on, reason));
    }

    /** Adds an item that starts as another and differs in some values. */
    public Reply addLike(String like, String code, Map<String, String> values, LocalDate on, String reason)
            throws IOException {
        return alone(() -> {
            Optional<Entries> base = item(draft(), like);
            return base.isPresent()
                    ? added(code, base.get(), values, on, reason)
                    : Reply.refused(List.of(unknown(like)));
        });
    }

    private Reply added(String code, Entries base, Map<String, String> values, LocalDate on, String reason)
            throws IOException {
        BookDraft book = draft();
        if (item(book, code).isPresent()) {
            return Reply.refused(List.of(
                    fault("the code " + code + ", which the book has", "a new code", "use: book change " + code)));
        }
        Map<String, String> all = new LinkedHashMap<>(Map.of("code", code));
        all.putAll(BookText.sourced(values, on, reason));
        return written(book.added(BookText.item(base, all), on, reason), book, code);
    }

    /** Gives an item up. It stays readable, and where a job names it it is still priced. */
    public Reply retire(String code, LocalDate on, String reason) throws IOException {
        return alone(() -> retired(code, on, reason));
    }

    private Reply retired(String code, LocalDate on, String reason) throws IOException {
        BookDraft book = draft();
        Optional<Entries> item = item(book, code);
        if (item.isEmpty()) {
            return Reply.refused(List.of(unknown(code)));
        }
        BookDraft own = book.item(code).isPresent() ? book : book.with(item.get());
        return written(own.retired(code, on, reason), book, code);
    }

    private Reply table(BookDraft draft, Predicate<LineItem> wanted) throws IOException {
        ReadBook read = read(draft);
        if (!read.faults().isEmpty() || read.book().isEmpty()) {
            return Reply.refused(read.faults());
        }
        List<List<String>> rows = read.book().get().items().values().stream()
                .filter(wanted)
                .sorted((a, b) -> a.section() == b.section()
                        ? a.code().compareTo(b.code())
                        : a.section().compareTo(b.section()))
                .map(BookText::row)
                .toList();
        return Reply.done(TextColumns.of(rows));
    }

    private Reply written(BookDraft book, BookDraft before, String code) throws IOException {
        ReadBook read = read(book);
        if (!read.faults().isEmpty()) {
            return Reply.refused(read.faults());
        }
        Map<String, String> then = item(before, code).map(Leaves::of).orElse(Map.of());
        List<String> moved = new ArrayList<>();
        Leaves.of(book.item(code).orElseThrow()).forEach((what, to) -> {
            if (!to.equals(then.get(what))) {
                moved.add(String.format(Locale.ROOT, "%s %s: %s → %s", code, what, then.getOrDefault(what, "—"), to));
            }
        });
        Map<String, String> now = Leaves.of(book.item(code).orElseThrow());
        then.forEach((what, from) -> {
            if (!now.containsKey(what)) {
                moved.add(String.format(Locale.ROOT, "%s %s: %s → —", code, what, from));
            }
        });
        if (moved.isEmpty()) {
            return Reply.done(List.of(code + ": nothing changed"));
        }
        write(book);
        return Reply.done(moved);
    }

    /** The file that is worked on. */
    public Path file() {
        return file;
    }

    public ReadBook read() throws IOException {
        return read(draft());
    }

    public ReadBook read(BookDraft book) {
        return intake.readBook(book.text(), file);
    }

    void write(BookDraft book) throws IOException {
        if (!writes) {
            return;
        }
        try {
            SharedFile.replace(file, basis, book.text().getBytes(StandardCharsets.UTF_8));
        } catch (ChangedElsewhere changed) {
            String what = ChangedValues.described(
                    basis.text().orElse(""), changed.now().text().orElse(""));
            throw new ChangedElsewhere(file, changed.now(), what);
        }
    }

    /**
     * A change from the reading of the book to its writing, while no other program changes it: of two changes at once
     * the second is made from what the first has written.
     */
    synchronized Reply alone(SharedFile.Work<Reply> change) throws IOException {
        return writes ? SharedFile.alone(file, change) : change.done();
    }

    /** The book as it stands, which has to be one JSON object. */
    BookDraft draft() throws IOException {
        Snapshot now = Snapshot.of(InsideFolder.existing(
                file.toAbsolutePath().getParent(), file.getFileName().toString()));
        basis = now;
        return now.text()
                .flatMap(BookDraft::read)
                .orElseThrow(
                        () -> new IOException(file + " is no price book: it is not one JSON object, each key once"));
    }

    /** The item as the file holds it, or as the bundled book does where the file starts from that. */
    Optional<Entries> item(BookDraft book, String code) {
        return book.item(code)
                .or(() -> book.startsFromBundled()
                        ? BookDraft.read(new String(Intake.bundledBookFile(), StandardCharsets.UTF_8))
                                .flatMap(b -> b.item(code))
                        : Optional.empty());
    }

    private Fault unknown(String code) {
        return fault("no item " + code, "a code of the price book", "see: book list");
    }

    private Fault fault(String found, String allowed, String fix) {
        return new Fault(Place.ofFile(file.toString()), found, allowed, fix);
    }
}
