// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.measure.Figures;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.ItemPrice;
import spadework.safety.PaidWork;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/**
 * Findings that cost money, each with the line item that carries it or, where no line of the job does, with what the
 * book would ask. For the contractor only.
 *
 * @param findings all that were handed over, in their order
 * @param open says at once what is not priced; empty where every finding has its line
 * @param twice what is measured and priced, and put in by hand once more
 */
record PaidFindings(List<Finding> findings, Optional<Finding> open, List<Finding> twice) {
    /** The finding that says what is not priced. */
    static final String UNPRICED = "work-unpriced";

    /** The finding that says what is priced twice. */
    static final String TWICE = "trench-priced-twice";

    private static final String PRACTICE = "common practice, no source";

    static PaidFindings of(List<Finding> found, Job job, Company company, PriceBook book, Takeoff takeoff) {
        Map<Finding, Map<String, String>> paid = new LinkedHashMap<>();
        List<Missing> missing = new ArrayList<>();
        List<Finding> twice = new ArrayList<>();
        PaidWork.askedBy(found).forEach((work, asking) -> {
            Optional<TakeoffLine> line = line(work, asking, job, takeoff);
            Map<String, String> described = line.map(carries -> paid(work, asking, carries, book, takeoff))
                    .orElseGet(() -> {
                        missing.add(Missing.of(work, asking, job, company, book, takeoff));
                        return missing.get(missing.size() - 1).described();
                    });
            asking.forEach(finding -> paid.put(finding, withPlace(finding, work, described, takeoff)));
            twice.addAll(twice(work, asking, book, takeoff));
        });
        return new PaidFindings(
                found.stream()
                        .map(finding -> with(finding, paid.getOrDefault(finding, Map.of())))
                        .toList(),
                open(missing),
                twice);
    }

    /** The items that carry it; where it was measured by itself, the one that follows what was measured. */
    private static Map<String, String> paid(
            PaidWork work, List<Finding> asking, TakeoffLine carries, PriceBook book, Takeoff takeoff) {
        if (measured(work, asking, takeoff).isPresent()) {
            return Map.of("paidBy", named(book, carries.code()));
        }
        return Map.of(
                "paidBy",
                work.items().stream()
                        .filter(code -> takeoff.lines().stream()
                                .anyMatch(line -> line.code().equals(code)
                                        && line.quantity().signum() > 0))
                        .map(code -> named(book, code))
                        .collect(Collectors.joining("; ")));
    }

    /** What was measured for one finding by itself is named, so that no other line of its item is counted with it. */
    private static Map<String, String> withPlace(
            Finding finding, PaidWork work, Map<String, String> described, Takeoff takeoff) {
        Optional<String> own = measured(work, List.of(finding), takeoff)
                .filter(line -> described.containsKey("paidBy"))
                .flatMap(TakeoffLine::from)
                .map(Quantity::label);
        Map<String, String> all = new LinkedHashMap<>(described);
        own.ifPresent(label -> all.put("paidFor", label));
        return all;
    }

    /** The line that carries the work: enough of the usual item, or any of one that may stand in for it. */
    private static Optional<TakeoffLine> line(PaidWork work, List<Finding> asking, Job job, Takeoff takeoff) {
        Optional<TakeoffLine> measured = measured(work, asking, takeoff);
        if (measured.isPresent()) {
            return measured;
        }
        BigDecimal asked = work.asked().of(job, takeoff, asking);
        for (String code : work.items()) {
            List<TakeoffLine> lines = takeoff.lines().stream()
                    .filter(line -> line.code().equals(code) && line.quantity().signum() > 0)
                    .toList();
            BigDecimal priced = lines.stream().map(TakeoffLine::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
            boolean usual = code.equals(work.items().get(0));
            if (!lines.isEmpty() && (!usual || priced.compareTo(asked) >= 0)) {
                return Optional.of(lines.get(0));
            }
        }
        return Optional.empty();
    }

    /** What the takeoff has priced for every finding that asks. */
    private static Optional<TakeoffLine> measured(PaidWork work, List<Finding> asking, Takeoff takeoff) {
        Optional<TakeoffLine> first = Optional.empty();
        for (Finding finding : asking) {
            Optional<TakeoffLine> line = takeoff.lines().stream()
                    .filter(one ->
                            one.quantity().signum() > 0 && work.measured().test(finding, one))
                    .findFirst();
            if (line.isEmpty()) {
                return Optional.empty();
            }
            first = first.or(() -> line);
        }
        return first;
    }

    /** Work that the takeoff has priced as it measured it and that a line put in by hand prices once more. */
    private static List<Finding> twice(PaidWork work, List<Finding> asking, PriceBook book, Takeoff takeoff) {
        List<TakeoffLine> byHand = takeoff.lines().stream()
                .filter(line -> line.from().isEmpty() && work.items().contains(line.code()))
                .filter(line -> line.quantity().signum() > 0)
                .toList();
        return byHand.stream()
                .flatMap(line -> measured(work, asking, takeoff).stream()
                        .map(priced -> new Finding(
                                TWICE,
                                Severity.MUST,
                                asking.get(0).about(),
                                Map.of("measured", named(book, priced.code()), "item", named(book, line.code())),
                                PRACTICE)))
                .toList();
    }

    private static String named(PriceBook book, String code) {
        return book.find(code).map(item -> code + ", " + item.name()).orElse(code);
    }

    private static Finding with(Finding finding, Map<String, String> paid) {
        if (paid.isEmpty()) {
            return finding;
        }
        Map<String, String> values = new LinkedHashMap<>(finding.values());
        values.putAll(paid);
        return finding.withValues(values);
    }

    private static Optional<Finding> open(List<Missing> missing) {
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        Dollars sum = Dollars.total(
                missing.stream().flatMap(one -> one.asks().stream()).toList());
        String items = missing.stream().map(Missing::words).collect(Collectors.joining("; "));
        return Optional.of(
                new Finding(UNPRICED, Severity.MUST, "", Map.of("items", items, "sum", sum.text()), PRACTICE));
    }

    /**
     * Work that no line pays for.
     *
     * @param count how much of the usual item is not priced
     * @param takes the same with its unit
     * @param asks what that would be sold for; empty where the book has no such item
     */
    private record Missing(String item, BigDecimal count, String takes, Optional<Dollars> asks) {

        static Missing of(
                PaidWork work, List<Finding> asking, Job job, Company company, PriceBook book, Takeoff takeoff) {
            String code = work.items().get(0);
            BigDecimal priced = takeoff.lines().stream()
                    .filter(line -> line.code().equals(code))
                    .map(TakeoffLine::quantity)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal missing = work.asked().of(job, takeoff, asking).subtract(priced);
            Optional<LineItem> item = book.find(code);
            return new Missing(
                    named(book, code),
                    missing,
                    item.map(known -> Figures.withUnit(missing, known.unit())).orElse(missing.toPlainString()),
                    item.map(known -> ItemPrice.of(known, missing, company, book)));
        }

        Map<String, String> described() {
            return asks.map(amount -> Map.of(
                            "unpaid", item, "count", count.toPlainString(), "takes", takes, "asks", amount.text()))
                    .orElseGet(() -> Map.of("unpaid", item, "takes", takes));
        }

        String words() {
            return item + ", " + takes
                    + asks.map(amount -> ": " + amount.text()).orElse("");
        }
    }
}
