// SPDX-License-Identifier: Apache-2.0
package spadework.bids;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import spadework.company.Company;
import spadework.money.Dollars;
import spadework.pricebook.ItemChange;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;

/**
 * A bid priced twice: as it was, and with the books of now. The lines that moved and the rest, which is what rounding
 * of sections, the small-job minimum and sales tax do, add up to the difference of the totals.
 *
 * @param rest rounding of sections, small-job minimum and sales tax
 */
public record Repricing(Dollars before, Dollars after, List<LineMove> moves, Dollars rest) {

    public Repricing {
        moves = List.copyOf(moves);
    }

    /** One price of a bid with the books it was made with. */
    public record Priced(Quote quote, Company company, PriceBook book) {}

    /** After less before. */
    public Dollars difference() {
        return after.minus(before);
    }

    /**
     * Compares two prices of a bid.
     *
     * @param since the day of the earlier one; what the book says was changed after it is told
     */
    public static Repricing between(LocalDate since, Priced then, Priced now) {
        Map<String, Deque<PricedLine>> gone = new LinkedHashMap<>();
        then.quote()
                .lines()
                .forEach(line -> gone.computeIfAbsent(key(line), key -> new ArrayDeque<>())
                        .add(line));
        List<LineMove> moves = new ArrayList<>();
        for (PricedLine line : now.quote().lines()) {
            Optional<PricedLine> was = Optional.ofNullable(
                    gone.getOrDefault(key(line), new ArrayDeque<>()).poll());
            if (was.filter(before -> before.price().equals(line.price())).isEmpty()) {
                moves.add(new LineMove(
                        was,
                        Optional.of(line),
                        was.map(before -> causes(before, line, then, now)).orElse(List.of(MoveCause.NEW)),
                        changes(now.book(), line.code(), since)));
            }
        }
        gone.values()
                .forEach(left -> left.forEach(line -> moves.add(new LineMove(
                        Optional.of(line),
                        Optional.empty(),
                        List.of(MoveCause.GONE),
                        changes(now.book(), line.code(), since)))));
        Dollars byLines = Dollars.total(moves.stream().map(LineMove::difference).toList());
        Dollars difference = now.quote().total().minus(then.quote().total());
        return new Repricing(then.quote().total(), now.quote().total(), moves, difference.minus(byLines));
    }

    private static String key(PricedLine line) {
        return line.code() + "\n" + line.section().label();
    }

    private static List<ItemChange> changes(PriceBook book, String code, LocalDate since) {
        return book.find(code).map(LineItem::history).orElse(List.of()).stream()
                .filter(change -> change.on().isAfter(since))
                .toList();
    }

    private static List<MoveCause> causes(PricedLine was, PricedLine is, Priced then, Priced now) {
        List<MoveCause> causes = new ArrayList<>();
        add(causes, MoveCause.QUANTITY, was.quantity().compareTo(is.quantity()) != 0);
        Optional<LineItem> old = then.book().find(is.code());
        Optional<LineItem> item = now.book().find(is.code());
        Predicate<Function<LineItem, ?>> differs = value -> !old.map(value).equals(item.map(value));
        add(causes, MoveCause.MATERIAL, differs.test(LineItem::material));
        add(causes, MoveCause.PRODUCTION, differs.test(LineItem::labor));
        add(causes, MoveCause.SUBCONTRACT, differs.test(LineItem::subcontract) || differs.test(LineItem::disposal));
        add(
                causes,
                MoveCause.COMPANY,
                item.flatMap(LineItem::labor)
                                .filter(labor -> isCompanyMoved(labor, then.company(), now.company()))
                                .isPresent()
                        || (!was.cost().material().isZero()
                                && !then.company().tax().equals(now.company().tax())));
        add(
                causes,
                MoveCause.PRICE_RULES,
                !then.company().priceRules().equals(now.company().priceRules()));
        boolean material = !was.cost().material().equals(is.cost().material());
        add(
                causes,
                MoveCause.SHARE_OF_ORDER,
                causes.isEmpty()
                        || (material && !causes.contains(MoveCause.MATERIAL) && !causes.contains(MoveCause.QUANTITY)));
        return causes;
    }

    private static boolean isCompanyMoved(Labor labor, Company then, Company now) {
        return !then.slowdowns().equals(now.slowdowns())
                || !Objects.equals(then.crews().get(labor.crew()), now.crews().get(labor.crew()))
                || !then.wages().equals(now.wages())
                || labor.machine()
                        .filter(name -> !Objects.equals(
                                then.machines().get(name), now.machines().get(name)))
                        .isPresent();
    }

    private static void add(List<MoveCause> causes, MoveCause cause, boolean holds) {
        if (holds) {
            causes.add(cause);
        }
    }
}
