// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.Job;

/** Searches a bid by words. */
public final class BidWords {
    private BidWords() {}

    /**
     * Whether every word occurs, in whatever case: in number, title, customer, street, notes, what was seen, or in the
     * code, name or reason of a priced line.
     */
    public static boolean holds(BidWithStatus bid, List<String> words) {
        if (words.isEmpty()) {
            return true;
        }
        String all = text(bid).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(word -> all.contains(word.toLowerCase(Locale.ROOT)));
    }

    private static String text(BidWithStatus bid) {
        Job job = bid.job();
        Stream<String> about = Stream.of(
                job.number(),
                job.title(),
                job.site().address().street(),
                job.site().address().city());
        Stream<String> seen = job.observations().stream().map(one -> one.seen() + "\n" + one.cause());
        Stream<String> lines =
                bid.quote().lines().stream().map(line -> line.code() + "\n" + line.name() + "\n" + line.reason());
        return Stream.of(about, job.customer().names().stream(), job.notes().stream(), seen, lines)
                .flatMap(each -> each)
                .collect(Collectors.joining("\n"));
    }
}
