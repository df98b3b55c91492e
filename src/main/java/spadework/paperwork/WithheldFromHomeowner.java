// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a homeowner's file may not carry, and why. Papers of the homeowner and whatever prints them see none of the
 * types, call none of the methods and say none of the words; which paper is a homeowner's stands in {@code PaperKind}.
 * All of it is common practice, no source: no law gives a homeowner the right to it, and each hurts somebody.
 */
public enum WithheldFromHomeowner {
    /** What one line, section or job costs. */
    COST_OF_WORK(
            "a price that is agreed is not bargained again line by line",
            List.of(
                    "pricing.BuildUp",
                    "pricing.CostParts",
                    "pricing.Direct",
                    "pricing.LineCost",
                    "pricing.LinePricing",
                    "pricing.MaterialShares",
                    "pricing.PricedLine",
                    "pricing.PricedSection",
                    "pricing.Pricing",
                    "pricing.Quote",
                    "pricing.UnknownPrices",
                    "pricebook.ItemCost",
                    "pricebook.LineItem#cost",
                    "pricebook.LineItem#subcontract",
                    "pricebook.LineItem#disposal",
                    "contract.PricedChange#figured"),
            List.of("direct cost")),

    /** Wages with what is paid on top of them, and who earns them. */
    WAGES(
            "what somebody earns is between them and the firm",
            List.of(
                    "pricing.CrewHour",
                    "pricebook.Labor",
                    "pricebook.LineItem#labor",
                    "company.CrewPlace",
                    "company.Rates",
                    "company.Slowdown",
                    "company.Wage",
                    "company.Company#rates",
                    "company.Company#machines",
                    "company.Company#wages",
                    "company.Company#crews"),
            List.of("loaded wage")),

    /** How cost becomes price: contingency, overhead, margin or markup. */
    PRICE_RULES(
            "they are the firm's own, and the same for every house",
            List.of("pricing.Selling", "company.PriceRules", "company.ProfitBasis", "company.Company#priceRules"),
            List.of("margin", "markup", "overhead", "contingency")),

    /** What suppliers ask, and what is ordered from whom. */
    SUPPLIER_PRICES(
            "suppliers give them in confidence",
            List.of(
                    "buying.Delivery",
                    "buying.OrderLine",
                    "buying.PurchaseOrder",
                    "buying.PurchaseOrders",
                    "pricebook.Material",
                    "pricebook.LineItem#material"),
            List.of()),

    /** Bids to others, what their jobs really took, and what this one might cost otherwise. */
    OTHER_JOBS(
            "other customers' affairs, and guesses that nobody promised",
            List.of("bids", "feedback", "whatif"),
            List.of()),

    /** How far a figure or a rule of law was looked up, and what it was priced by. */
    DOUBTS(
            "doubt stays in the office, where it is settled before anything is printed",
            List.of(),
            List.of("from memory", "no source", "common practice", "ask counsel", "price book")),

    /** Notes to oneself. Each job has its own words; no paper may say any of them. */
    INTERNAL_NOTES("they were written for nobody else", List.of("job.Job#notes"), List.of());

    private static final String ROOT = "spadework.";

    private final String why;
    private final List<String> places;
    private final List<String> words;

    WithheldFromHomeowner(String why, List<String> places, List<String> words) {
        this.why = why;
        this.places = places;
        this.words = words;
    }

    /** Why it is withheld, as the end of a sentence. */
    public String why() {
        return why;
    }

    /** The words that would tell it, in lower case. */
    public List<String> words() {
        return words;
    }

    /** All words that no file of a homeowner says. */
    public static List<String> allWords() {
        return Arrays.stream(values()).flatMap(one -> one.words.stream()).toList();
    }

    /** Full names of the classes that carry any of it. */
    public static List<String> types() {
        return places().filter(place -> place.contains(".") && !place.contains("#"))
                .map(place -> ROOT + place)
                .toList();
    }

    /** Methods that answer with any of it alone: full name of the class, {@code #}, name. */
    public static List<String> methods() {
        return places().filter(place -> place.contains("#"))
                .map(place -> ROOT + place)
                .toList();
    }

    /** Packages all of whose classes carry it. */
    public static List<String> packages() {
        return places().filter(place -> !place.contains("."))
                .map(place -> ROOT + place)
                .toList();
    }

    private static Stream<String> places() {
        return Arrays.stream(values()).flatMap(one -> one.places.stream());
    }
}
