// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static spadework.safety.Found.advise;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.job.Access;
import spadework.job.Wall;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.takeoff.Purchase;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;
import spadework.takeoff.wall.SheetRolls;

/** Whether the prices that a job is bid with hold on the day of its papers, and what they buy is enough. */
final class BookRules implements Rule {
    @Override
    public List<Finding> check(Facts facts) {
        List<Finding> found = new ArrayList<>(wholeDigging(facts));
        found.addAll(outOfDate(facts));
        found.addAll(shortRolls(facts, facts.takeoff().get()));
        return found;
    }

    /** Sheet that is bought by area may be too short to hang along the walls. */
    private static List<Finding> shortRolls(Facts facts, Takeoff takeoff) {
        List<Finding> found = new ArrayList<>();
        for (Purchase purchase : takeoff.purchases()) {
            LineItem item = facts.book().get(purchase.code());
            Optional<SheetRolls> sizes = item.follows().equals(Optional.of(Measure.PROTECT))
                    ? SheetRolls.of(purchase.sold())
                    : Optional.empty();
            if (sizes.isEmpty()) {
                continue;
            }
            List<Wall> walls = takeoff.lines().stream()
                    .filter(line -> line.code().equals(purchase.code()))
                    .flatMap(line -> line.from().stream())
                    .map(quantity -> facts.job().getWall(quantity.label()))
                    .toList();
            double feet = sizes.get().along(walls);
            int rolls = sizes.get().count(feet);
            if (rolls > purchase.packages().intValueExact()) {
                found.add(advise(
                        "rolls-short",
                        item.code(),
                        SheetRolls.SOURCE,
                        "item",
                        item.name(),
                        "feet",
                        Amounts.feetUp(feet),
                        "roll",
                        Amounts.feet(sizes.get().length()),
                        "lap",
                        SheetRolls.LAP.text(),
                        "rolls",
                        String.valueOf(rolls),
                        "priced",
                        purchase.packages().toPlainString()));
            }
        }
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
        List<String> used = facts.takeoff().get().lines().stream()
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
