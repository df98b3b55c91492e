// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.bids.LineMove;
import spadework.bids.Repricing;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.BookDraft;
import spadework.finding.Fault;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.office.agreement.JobText;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;
import spadework.pricebook.ItemChange;
import spadework.pricebook.PriceBook;
import spadework.pricing.PricedLine;
import spadework.pricing.Pricing;
import spadework.register.Entry;
import spadework.schedule.DayQuantities;
import spadework.schedule.JobBook;
import spadework.wording.Wording;

/**
 * Prices an old bid with the books of now and shows what moves. The old price is that of the last issued proposal; of a
 * bid that was never issued it is the one that the book gave on its date, as the book's history tells.
 */
public final class RepriceService {
    private static final Wording WORDS = Wording.beside(RepriceService.class);

    /** What stands above the faults of a bid that cannot be saved under its new date alone. */
    public static final String NEEDS_DAYS = WORDS.get("reprice-service.not-saved-give-work");

    private final Intake intake = new Intake();

    /** The dates that a saved bid gets. */
    public record Dates(LocalDate issued, Optional<LocalDate> start, Optional<LocalDate> finish) {}

    /**
     * What moves in a bid.
     *
     * @param was the day of the old price
     * @param refused why the bid cannot be priced anew; then there is nothing else
     */
    public record Moves(Optional<LocalDate> was, Optional<Repricing> moved, List<String> refused) {

        public Moves {
            refused = List.copyOf(refused);
        }
    }

    /**
     * Shows what moves, line by line, and saves the bid under a new date if that is wanted.
     *
     * @throws IOException if a file cannot be read or written
     */
    public Reply reprice(Path job, Dates dates, boolean save) throws IOException {
        Moves moves = moves(job, dates.issued());
        if (!moves.refused.isEmpty()) {
            return new Reply(List.of(), moves.refused, false);
        }
        List<String> out = new ArrayList<>(table(moves.was.orElseThrow(), dates.issued(), moves.moved.orElseThrow()));
        return save ? saved(Intake.fileOf(job), dates, out) : Reply.done(out);
    }

    /** The lines that move when a bid is priced on a day with the books of now; nothing is written. */
    public Moves moves(Path job, LocalDate issued) throws IOException {
        Path file = Intake.fileOf(job);
        JobRecords records = JobRecords.beside(file);
        if (records.contract().isPresent()) {
            return refused(List.of(file + ": the contract is signed and its price stands."));
        }
        Reading now = intake.read(file);
        Reading then = then(file, records, now);
        if (!(now instanceof ReadJob live) || !(then instanceof ReadJob old)) {
            return refused(((Refused) (now instanceof Refused ? now : then))
                    .faults().stream().map(Fault::text).toList());
        }
        LocalDate was = old.job().issued();
        Repricing moved = Repricing.between(was, priced(old, was), priced(live, issued));
        return new Moves(Optional.of(was), Optional.of(moved), List.of());
    }

    private static Moves refused(List<String> why) {
        return new Moves(Optional.empty(), Optional.empty(), why);
    }

    private Reading then(Path file, JobRecords records, Reading now) throws IOException {
        Optional<Entry> proposal = records.proposal();
        Optional<JobSource> source = proposal.isPresent() ? records.source(proposal.get()) : Optional.empty();
        if (source.isPresent()) {
            JobSource kept = source.get();
            return intake.readKept(
                    kept.text(JobSource.JOB), file, kept.books(), kept.files().get(JobSource.BUNDLED_BOOK));
        }
        Optional<Path> book = Intake.bookOf(file.toAbsolutePath().getParent());
        if (!(now instanceof ReadJob live) || book.isEmpty()) {
            return now;
        }
        Optional<BookDraft> asOf = BookDraft.read(Files.readString(book.get()))
                .map(b -> b.asOf(live.job().issued()));
        return asOf.isPresent() ? intake.readWith(asOf.get().text(), file) : now;
    }

    private static Repricing.Priced priced(ReadJob understood, LocalDate on) {
        Job job = understood.job();
        PriceBook book = JobBook.of(understood.book(), understood.company(), job, on);
        return new Repricing.Priced(
                Pricing.of(job, understood.company(), book, DayQuantities.takeoff(job, understood.company(), book)),
                understood.company(),
                book);
    }

    private Reply saved(Path file, Dates dates, List<String> out) throws IOException {
        return SharedFile.alone(file, () -> savedAlone(file, dates, out));
    }

    private Reply savedAlone(Path file, Dates dates, List<String> out) throws IOException {
        JobText text = JobText.of(Snapshot.of(file).text().orElseThrow(() -> new NoSuchFileException(file.toString())))
                .with("/issued", dates.issued().toString());
        if (dates.start().isPresent()) {
            text = text.with("/schedule/earliestStart", dates.start().get().toString());
        }
        if (dates.finish().isPresent()) {
            text = text.with("/schedule/latestFinish", dates.finish().get().toString());
        }
        Reading reading = intake.read(text.text(), file);
        if (reading instanceof Refused refused) {
            List<String> wrong = new ArrayList<>(List.of(NEEDS_DAYS));
            refused.faults().stream().map(Fault::text).forEach(wrong::add);
            return new Reply(out, wrong, false);
        }
        text.write(file, List.of("/issued", "/schedule/earliestStart", "/schedule/latestFinish"));
        out.add(WORDS.get("reprice-service.saved-with-date", dates.issued()));
        return Reply.done(out);
    }

    private static List<String> table(LocalDate was, LocalDate on, Repricing moved) {
        List<List<String>> rows = new ArrayList<>();
        for (LineMove move : moved.moves()) {
            rows.add(List.of(
                    move.line().code(),
                    move.line().section().name(),
                    move.before().map(RepriceService::described).orElse("—"),
                    move.after().map(RepriceService::described).orElse("—"),
                    signed(move.difference()),
                    move.causes().stream()
                            .map(cause -> cause.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                            .collect(Collectors.joining(", "))));
            move.changes().forEach(change -> rows.add(List.of("", "  " + described(change))));
        }
        rows.add(List.of("", "rounding of sections, minimum, sales tax", "", "", signed(moved.rest())));
        rows.add(List.of(
                "",
                "total, " + was + " and " + on,
                moved.before().text(),
                moved.after().text(),
                signed(moved.difference())));
        return TextColumns.of(rows);
    }

    private static String described(PricedLine line) {
        return line.quantity().toPlainString() + " " + line.unit().symbol() + " × "
                + line.unitPrice().text() + " = " + line.price().text();
    }

    private static String described(ItemChange change) {
        return change.on() + " " + change.reason()
                + change.values().stream()
                        .filter(value -> !value.what().startsWith("source/"))
                        .map(value -> "; " + value.what() + " " + value.from().orElse("—") + " → "
                                + value.to().orElse("—"))
                        .collect(Collectors.joining());
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }
}
