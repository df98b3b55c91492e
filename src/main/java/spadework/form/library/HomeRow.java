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
 * @param price nothing where it cannot be priced yet
 * @param issued the day of its proposal
 */
record HomeRow(
        String customer,
        String what,
        String stands,
        Optional<Dollars> price,
        LocalDate issued,
        String number,
        Path file) {

    /** The jobs of a home: priced ones as they were read, and those of the files that cannot be priced yet. */
    static List<HomeRow> of(List<BidRow> priced, List<Path> files, LocalDate today) throws IOException {
        List<HomeRow> rows = new ArrayList<>();
        Set<Path> done = new HashSet<>();
        for (BidRow bid : priced) {
            done.add(Path.of(bid.place()));
            rows.add(of(bid, today));
        }
        for (Path file : files) {
            if (!done.contains(file)) {
                Draft.read(Files.readString(file)).ifPresent(draft -> rows.add(of(draft, file, today)));
            }
        }
        return newestFirst(rows);
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
                standing(bid, today),
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

    /** Where a job stands, in words. */
    private static String standing(BidRow bid, LocalDate today) {
        if (bid.standing() == BidStatus.ISSUED && bid.validUntil().isPresent()) {
            long left = today.until(bid.validUntil().get(), ChronoUnit.DAYS);
            return left < 0 ? Messages.of("home.over") : Messages.of("home.left", left);
        }
        return Messages.of("home." + bid.standing());
    }
}
