// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spadework.bids.BidRow;
import spadework.bids.BidStatus;
import spadework.draft.Draft;
import spadework.form.kit.Messages;
import spadework.money.Dollars;

/**
 * A job on the first page.
 *
 * @param stands where it stands, in words
 * @param waits what the contractor can do next; empty for nothing
 * @param price nothing where it cannot be priced yet
 * @param issued the day of its proposal
 */
record HomeRow(
        String customer,
        String what,
        String stands,
        String waits,
        Optional<Dollars> price,
        LocalDate issued,
        String number,
        Path file) {

    /** The jobs of a home: priced ones as they were read, and those of the files that cannot be priced yet. */
    static List<HomeRow> of(List<BidRow> priced, List<Path> files, LocalDate today) {
        List<HomeRow> rows = new ArrayList<>();
        Set<Path> done = new HashSet<>();
        for (BidRow bid : priced) {
            done.add(Path.of(bid.place()));
            rows.add(of(bid, today));
        }
        for (Path file : files) {
            if (!done.contains(file)) {
                rows.add(unpriced(file, today));
            }
        }
        return newestFirst(rows);
    }

    /** A job without a price; one whose file is no job stands there too, by the name of its folder. */
    private static HomeRow unpriced(Path file, LocalDate today) {
        try {
            Optional<Draft> draft = Draft.read(Files.readString(file));
            if (draft.isPresent()) {
                return of(draft.get(), file, today);
            }
        } catch (IOException unreadable) {
            // Said in the row: the others are shown all the same.
        }
        String folder = file.toAbsolutePath().getParent().getFileName().toString();
        return new HomeRow(
                "",
                folder,
                Messages.of("home.unreadable"),
                Messages.of("home.waits.unreadable"),
                Optional.empty(),
                today,
                "",
                file);
    }

    /** Whether all of these words stand in it, in whatever case. */
    boolean holds(List<String> words) {
        String all = String.join("\n", customer, what, stands, number).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(word -> all.contains(word.toLowerCase(Locale.ROOT)));
    }

    /** By the day of the proposal. */
    static List<HomeRow> newestFirst(List<HomeRow> rows) {
        return rows.stream()
                .sorted(Comparator.comparing(HomeRow::issued).reversed())
                .toList();
    }

    private static HomeRow of(BidRow bid, LocalDate today) {
        return new HomeRow(
                bid.customer(),
                bid.title(),
                Messages.of("home." + standing(bid, today), left(bid, today)),
                Messages.of("home.waits." + standing(bid, today)),
                Optional.of(bid.total()),
                bid.issued(),
                bid.number(),
                Path.of(bid.place()));
    }

    private static HomeRow of(Draft draft, Path file, LocalDate today) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < draft.rows("/customer/names"); i++) {
            names.add(draft.shown("/customer/names/" + i));
        }
        return new HomeRow(
                String.join(" and ", names),
                draft.shown("/title"),
                Messages.of("home.unfinished"),
                Messages.of("home.waits.unfinished"),
                Optional.empty(),
                day(draft, today),
                draft.shown("/number"),
                file);
    }

    private static LocalDate day(Draft draft, LocalDate today) {
        try {
            return LocalDate.parse(draft.shown("/issued"));
        } catch (DateTimeException none) {
            return today;
        }
    }

    /** Where a job stands, as the keys of words have it. */
    private static String standing(BidRow bid, LocalDate today) {
        return bid.standing() == BidStatus.ISSUED && bid.validUntil().isPresent()
                ? left(bid, today) < 0 ? "over" : "left"
                : bid.standing().toString();
    }

    /** The days that its price still holds. */
    private static long left(BidRow bid, LocalDate today) {
        return bid.validUntil().map(day -> today.until(day, ChronoUnit.DAYS)).orElse(0L);
    }
}
