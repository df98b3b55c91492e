// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.CrewPlace;
import spadework.company.Leftovers;
import spadework.company.PriceRules;
import spadework.company.Production;
import spadework.company.ProfitBasis;
import spadework.company.Rates;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.company.Wage;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.ItemCost;
import spadework.pricebook.ItemIdentity;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricebook.Source;
import spadework.takeoff.Purchase;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;
import spadework.takeoff.TakeoffSection;
import spadework.working.Formula;
import spadework.working.Worked;

/**
 * A company and a book small enough to be priced with a pencil. An hour of the crew is one operator at 24.00 and 50% of
 * burden, 36.00, with two laborers at 20.00 and 56.5%, 31.30 each (published example of a burdened wage): 98.60; with
 * its machine at 41.40 an hour it is 140.00.
 */
final class Priced {
    static final TakeoffSection WALL = new TakeoffSection(Section.WALL, "A", "Wall A");
    static final TakeoffSection DRAIN = new TakeoffSection(Section.DRAIN, "drain", "Drain");
    static final TakeoffSection SETUP = new TakeoffSection(Section.SETUP, "setup", "Setting up");

    /** 10 cy an hour with the machine, and 12.00 a cubic yard at the tip. */
    static final LineItem DIG = item(
            "DIG",
            Section.WALL,
            Unit.CUBIC_YARD,
            new ItemCost(
                    Optional.empty(),
                    Optional.of(labor("10", Optional.of("mini"))),
                    Optional.empty(),
                    Optional.of(Dollars.of("12.00"))));

    /** Sticks of 10 ft at 30.00, 5% of waste, 20 ft an hour without the machine. */
    static final LineItem PIPE = item(
            "PIPE",
            Section.DRAIN,
            Unit.FOOT,
            new ItemCost(
                    Optional.of(new Material(
                            Dollars.of("30.00"),
                            "10 ft stick",
                            BigDecimal.TEN,
                            Unit.FOOT,
                            BigDecimal.ONE,
                            Optional.empty(),
                            Percent.of("5"))),
                    Optional.of(labor("20", Optional.empty())),
                    Optional.empty(),
                    Optional.empty()));

    /** A fee of 150.00. */
    static final LineItem PERMIT = item(
            "PERMIT",
            Section.SETUP,
            Unit.EACH,
            new ItemCost(Optional.empty(), Optional.empty(), Optional.of(Dollars.of("150.00")), Optional.empty()));

    static final PriceBook BOOK = new PriceBook(
            "by hand",
            LocalDate.of(2026, 2, 3),
            Map.of("DIG", DIG, "PIPE", PIPE, "PERMIT", PERMIT),
            Map.of(),
            List.of(),
            1.4,
            10);

    /** 25 cy of digging, 33 ft of pipe that take 4 sticks, a permit, and a line that came to nothing. */
    static final Takeoff TAKEOFF = new Takeoff(
            List.of(WALL, DRAIN, SETUP),
            List.of(),
            List.of(
                    line("DIG", WALL, "25", Unit.CUBIC_YARD, Optional.empty()),
                    line("DIG", DRAIN, "0.0", Unit.CUBIC_YARD, Optional.empty()),
                    line("PIPE", DRAIN, "33", Unit.FOOT, Optional.of(new BigDecimal("33"))),
                    line("PERMIT", SETUP, "1", Unit.EACH, Optional.empty())),
            List.of(new Purchase(
                    "PIPE",
                    new BigDecimal("33"),
                    new BigDecimal("3.465"),
                    new BigDecimal("4"),
                    "10 ft stick",
                    Worked.of("P", "sticks", new BigDecimal("4"), Unit.EACH, new Formula("4", "test")))));

    private Priced() {}

    private static Labor labor(String perHour, Optional<String> machine) {
        return new Labor("dig crew", new BigDecimal(perHour), machine, List.of(), Optional.empty());
    }

    private static LineItem item(String code, Section section, Unit unit, ItemCost cost) {
        return new LineItem(
                new ItemIdentity(code, section, code + " by name", code + " for the homeowner", unit),
                new ItemUse(Optional.empty(), false, false, Optional.empty()),
                cost,
                Optional.empty(),
                Optional.empty(),
                new ItemUpkeep(
                        new Source("test", LocalDate.of(2026, 1, 1)),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of()));
    }

    private static TakeoffLine line(
            String code, TakeoffSection section, String quantity, Unit unit, Optional<BigDecimal> bought) {
        return new TakeoffLine(
                code,
                section,
                new BigDecimal(quantity),
                unit,
                Optional.empty(),
                List.of(),
                bought,
                bought.map(net -> Percent.of("5")),
                "",
                Optional.empty());
    }

    /** 10% of contingency, 20% of overhead, 12% of profit: a margin makes 1.5 of the direct cost. */
    static PriceRules rules(ProfitBasis basis, String minimum) {
        return new PriceRules(
                Percent.of("10"),
                Percent.of("20"),
                basis,
                Percent.of("12"),
                Dollars.of(minimum),
                Dollars.of("1.00"),
                Leftovers.CHARGED);
    }

    static Company company(PriceRules rules, TaxMode mode) {
        Company c = Books.company();
        Map<String, Wage> wages = new HashMap<>();
        wages.put("operator", new Wage(Dollars.of("24.00"), Percent.of("50")));
        wages.put("laborer", new Wage(Dollars.of("20.00"), Percent.of("56.5")));
        return new Company(
                c.name(),
                c.credentials(),
                c.contact(),
                c.letterhead(),
                new Rates(
                        wages,
                        Map.of("dig crew", List.of(new CrewPlace("operator", 1), new CrewPlace("laborer", 2))),
                        Map.of("mini", Dollars.of("41.40")),
                        List.of()),
                new Production(Optional.empty(), Map.of(), Optional.empty()),
                rules,
                new Tax(mode, Percent.of("6"), Map.of()),
                c.usualTerms());
    }

    /** With 6% of tax on what is bought. */
    static Company company() {
        return company(rules(ProfitBasis.MARGIN, "0.00"), TaxMode.ON_PURCHASES);
    }
}
