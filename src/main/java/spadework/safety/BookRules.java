// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import spadework.finding.Finding;
import spadework.job.Access;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.takeoff.Measuring;
import spadework.takeoff.TakeoffLine;

/** Whether the prices that a job is bid with still hold on the day that its papers carry. */
final class BookRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>(wholeDigging(facts));
        found.addAll(outOfDate(facts));
        return found;
    }

    /** An item that follows all that the machine digs takes the place of those for its parts. */
    private static List<Finding> wholeDigging(Facts facts) {
        List<LineItem> leftOut = facts.book().leftOut();
        boolean digs =
                facts.job().walls().stream().anyMatch(wall -> wall.digging().access() == Access.MACHINE);
        return leftOut.isEmpty() || !digs
                ? List.of()
                : List.of(advise(
                        "dig-as-one",
                        "",
                        Found.PRACTICE,
                        "items",
                        codes(facts.book().standardFor(Measure.DIG_MACHINE)),
                        "parts",
                        codes(leftOut)));
    }

    private static String codes(List<LineItem> items) {
        return String.join(", ", items.stream().map(LineItem::code).toList());
    }

    private static List<Finding> outOfDate(Facts facts) {
        LocalDate issued = facts.job().issued();
        List<LineItem> doubtful = facts.book().pastOn(issued);
        if (doubtful.isEmpty()) {
            return List.of();
        }
        List<String> used = Measuring.of(facts.job(), facts.book()).lines().stream()
                .filter(line -> line.quantity().signum() != 0)
                .map(TakeoffLine::code)
                .distinct()
                .toList();
        List<Finding> found = new ArrayList<>();
        used.forEach(code -> doubtful.stream()
                .filter(item -> item.code().equals(code))
                .forEach(item -> found.addAll(described(item, issued))));
        return found;
    }

    private static List<Finding> described(LineItem item, LocalDate issued) {
        List<Finding> found = new ArrayList<>();
        if (item.isStaleOn(issued)) {
            found.add(advise(
                    "price-stale",
                    item.code(),
                    Found.PRACTICE,
                    "item",
                    item.name(),
                    "until",
                    item.goodUntil().orElseThrow().toString(),
                    "issued",
                    issued.toString()));
        }
        if (item.isRetiredOn(issued)) {
            found.add(advise(
                    "item-retired",
                    item.code(),
                    Found.PRACTICE,
                    "item",
                    item.name(),
                    "on",
                    item.retired().orElseThrow().on().toString(),
                    "why",
                    item.retired().get().reason()));
        }
        return found;
    }
}
