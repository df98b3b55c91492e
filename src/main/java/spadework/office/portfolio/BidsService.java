// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import spadework.bids.BidRow;
import spadework.bids.BidStatus;
import spadework.bids.BidUse;
import spadework.bids.BidWithStatus;
import spadework.bids.BidWords;
import spadework.listing.BidsListing;
import spadework.office.files.FileName;
import spadework.office.files.JobTree;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;

/** Looks across all the bids of a folder tree. */
public final class BidsService {
    private BidsService() {}

    /**
     * What was found in a tree.
     *
     * @param unread files that are left out, and why
     * @param unpriced the files of jobs that have no price yet
     */
    public record Found<T>(List<T> rows, List<String> unread, List<Path> unpriced) {

        public Found {
            rows = List.copyOf(rows);
            unread = List.copyOf(unread);
            unpriced = List.copyOf(unpriced);
        }
    }

    /**
     * Which bids are looked for.
     *
     * @param standing where they stand; empty for wherever
     * @param words all of which occur in the bid; none for any
     */
    public record Wanted(Optional<BidStatus> standing, List<String> words) {
        public static final Wanted ALL = new Wanted(Optional.empty(), List.of());

        public Wanted {
            words = List.copyOf(words);
        }

        private boolean isMet(BidWithStatus bid) {
            return standing.filter(wanted -> wanted != bid.standing()).isEmpty() && BidWords.holds(bid, words);
        }
    }

    /** The bids of {@link #list} as rows. */
    public static Found<BidRow> rows(Path tree, LocalDate on, Wanted wanted) throws IOException {
        return rows(JobTree.files(tree), on, wanted);
    }

    /** The bids of files that were found before. */
    public static Found<BidRow> rows(List<Path> files, LocalDate on, Wanted wanted) {
        BidReader reader = new BidReader();
        List<BidReader.ReadBid<Drawn>> read = JobTree.each(
                files,
                file -> reader.read(
                        file,
                        bid -> new Drawn(
                                bid.job().number(),
                                wanted.isMet(bid)
                                        ? Optional.of(BidRow.of(bid, on, file.toString()))
                                        : Optional.empty())));
        List<String> wrong = new ArrayList<>(unread(read));
        wrong.addAll(doubles(read));
        return new Found<>(
                read.stream()
                        .flatMap(one -> one.drawn().stream())
                        .flatMap(one -> one.row().stream())
                        .toList(),
                wrong,
                unpriced(read));
    }

    private record Drawn(String number, Optional<BidRow> row) {}

    /** Numbers that several jobs have. */
    private static List<String> doubles(List<BidReader.ReadBid<Drawn>> read) {
        Map<String, List<Path>> files = new TreeMap<>();
        for (BidReader.ReadBid<Drawn> one : read) {
            one.drawn()
                    .ifPresent(drawn -> files.computeIfAbsent(
                                    FileName.safe(drawn.number()).toLowerCase(Locale.ROOT), first -> new ArrayList<>())
                            .add(one.file()));
        }
        return files.entrySet().stream()
                .filter(entry -> entry.getValue().size() > 1)
                .map(entry -> "the number " + entry.getKey() + " is that of "
                        + entry.getValue().size() + " jobs, as "
                        + entry.getValue().stream().limit(3).map(Path::toString).collect(Collectors.joining(" and "))
                        + "; give all but one another number")
                .toList();
    }

    /** The uses of {@link #history} as rows. */
    public static Found<BidUse> uses(String code, Path tree) throws IOException {
        BidReader reader = new BidReader();
        List<BidReader.ReadBid<List<BidUse>>> read =
                JobTree.each(tree, file -> reader.read(file, bid -> BidUse.of(bid, code, file.toString())));
        return new Found<>(
                read.stream()
                        .flatMap(one -> one.drawn().stream())
                        .flatMap(List::stream)
                        .toList(),
                unread(read),
                unpriced(read));
    }

    /**
     * All bids with where they stand.
     *
     * @param standing only those that stand so
     * @param words only those in which every word occurs
     */
    public static Reply list(Path tree, LocalDate on, Wanted wanted, boolean json) throws IOException {
        Found<BidRow> found = rows(tree, on, wanted);
        List<String> out = json
                ? List.of(BidsListing.of(on, found.rows()))
                : TextColumns.of(found.rows().stream().map(row -> row(row, on)).toList());
        return Reply.done(out).andWrong(found.unread());
    }

    /** Every use of a line item. */
    public static Reply history(String code, Path tree, boolean json) throws IOException {
        Found<BidUse> found = uses(code, tree);
        List<String> out = json
                ? List.of(BidsListing.of(code, found.rows()))
                : TextColumns.of(found.rows().stream().map(BidsService::row).toList());
        return Reply.done(out).andWrong(found.unread());
    }

    static <T> List<String> unread(List<BidReader.ReadBid<T>> read) {
        List<String> wrong = new ArrayList<>();
        read.stream()
                .filter(one -> !one.faults().isEmpty())
                .forEach(one -> wrong.add(one.file() + ": left out, "
                        + one.faults().size() + " to fix; see: spadework check " + one.file()));
        return wrong;
    }

    private static <T> List<Path> unpriced(List<BidReader.ReadBid<T>> read) {
        return read.stream()
                .filter(one -> !one.faults().isEmpty())
                .map(BidReader.ReadBid::file)
                .toList();
    }

    private static List<String> row(BidRow row, LocalDate on) {
        String until = row.validUntil()
                .map(day -> (row.isExpiredOn(on) ? "expired " : "until ") + day)
                .orElse("");
        return List.of(
                row.number(),
                row.standing().name().toLowerCase(Locale.ROOT),
                row.issued().toString(),
                until,
                row.age() + " days",
                row.total().text(),
                row.margin().map(share -> share + "%").orElse(""),
                row.customer(),
                row.title());
    }

    private static List<String> row(BidUse use) {
        return List.of(
                use.number(),
                use.standing().name().toLowerCase(Locale.ROOT),
                use.issued().toString(),
                use.quantity().toPlainString() + " " + use.unit().symbol(),
                use.unitPrice().text(),
                use.price().text(),
                use.section());
    }
}
