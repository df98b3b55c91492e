// SPDX-License-Identifier: Apache-2.0
package spadework.buying;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Supplier;
import spadework.schedule.CrewCalendar;
import spadework.schedule.Steps;
import spadework.takeoff.Purchase;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/** Sorts what a takeoff buys by supplier and by the day on which it has to be there. */
public final class PurchaseOrders {
    private final PriceBook book;
    private final Takeoff takeoff;
    private final CrewCalendar calendar;

    private PurchaseOrders(PriceBook book, Takeoff takeoff, CrewCalendar calendar) {
        this.book = book;
        this.takeoff = takeoff;
        this.calendar = calendar;
    }

    /**
     * The orders of a job by the supplier's name; what nobody said where to buy comes last.
     *
     * @param book as this job uses it
     * @param calendar of the same takeoff
     */
    public static List<PurchaseOrder> of(PriceBook book, Takeoff takeoff, CrewCalendar calendar) {
        return new PurchaseOrders(book, takeoff, calendar).orders();
    }

    private List<PurchaseOrder> orders() {
        TreeMap<String, TreeMap<LocalDate, List<Purchase>>> bought = new TreeMap<>();
        for (Purchase purchase : takeoff.purchases()) {
            bought.computeIfAbsent(supplier(purchase).name(), name -> new TreeMap<>())
                    .computeIfAbsent(needed(purchase), day -> new ArrayList<>())
                    .add(purchase);
        }
        List<PurchaseOrder> orders = new ArrayList<>();
        bought.tailMap("", false)
                .forEach((supplier, days) -> orders.add(new PurchaseOrder(supplier, deliveries(days))));
        if (bought.containsKey("")) {
            orders.add(new PurchaseOrder("", deliveries(bought.get(""))));
        }
        return orders;
    }

    private List<Delivery> deliveries(TreeMap<LocalDate, List<Purchase>> days) {
        List<Delivery> deliveries = new ArrayList<>();
        days.forEach((day, purchases) -> {
            int lead = purchases.stream()
                    .mapToInt(purchase -> supplier(purchase).leadDays())
                    .max()
                    .orElse(0);
            deliveries.add(new Delivery(
                    day,
                    calendar.before(day, lead),
                    purchases.stream().map(this::line).toList()));
        });
        return deliveries;
    }

    /**
     * The working day before the first step that uses it. Sod does not keep: it comes on the last day of it, when
     * the ground is graded.
     */
    private LocalDate needed(Purchase purchase) {
        LineItem item = book.get(purchase.code());
        if (item.follows().filter(Measure.SOD::equals).isPresent()) {
            return calendar.last(Steps.of(item, item.section()));
        }
        LocalDate first = takeoff.lines().stream()
                .filter(line -> line.code().equals(purchase.code()))
                .map(line -> calendar.first(Steps.of(item, line.section().kind())))
                .min(LocalDate::compareTo)
                .orElse(calendar.start());
        return calendar.before(first, 1);
    }

    private Supplier supplier(Purchase purchase) {
        return book.get(purchase.code()).supplier();
    }

    private OrderLine line(Purchase purchase) {
        LineItem item = book.get(purchase.code());
        Material material = item.material().orElseThrow();
        return new OrderLine(
                purchase.code(),
                item.supplier().number(),
                item.name(),
                purchase.packages(),
                purchase.sold(),
                material.cost(),
                onSite(purchase, material));
    }

    /** What is carried from job to job is counted whole on site and bought in parts. */
    private Optional<BigDecimal> onSite(Purchase purchase, Material material) {
        boolean byHand = book.get(purchase.code()).follows().isEmpty();
        if (!byHand || material.each().compareTo(BigDecimal.ONE) >= 0) {
            return Optional.empty();
        }
        return takeoff.lines().stream()
                .filter(line -> line.code().equals(purchase.code()))
                .map(TakeoffLine::quantity)
                .reduce(BigDecimal::add)
                .filter(used -> used.compareTo(purchase.packages()) > 0);
    }
}
