// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.Digger;
import spadework.job.Texture;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.pricebook.DigKind;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;

/**
 * What a machine digs in an hour, bank cubic yards: bucket × fill × cycles × efficiency ÷ (1 + swell). FM 5-434 ch. 8
 * and Peurifoy (P-04) write it with the seconds of a cycle, 3600 ÷ cycles.
 */
public final class DigPace {
    /** Where the formula stands. */
    public static final String SOURCE = "excavator production, FM 5-434 ch. 8 (P-04, its wording from memory)";

    private DigPace() {}

    /** One machine's pace, cy an hour. */
    public static Worked of(Digger digger, DigKind kind, Percent swell) {
        BigDecimal cycles = kind == DigKind.BULK ? digger.bulkCycles() : digger.wallCycles();
        Listed bucket = new Listed("b", "bucket, heaped", digger.bucket(), Unit.CUBIC_YARD, digger.source());
        Listed fill = new Listed("f", "fill", digger.fill().fraction(), Unit.NONE, digger.source());
        Listed round = new Listed("c", "cycles an hour", cycles, Unit.NONE, digger.source());
        Listed working = new Listed("e", "efficiency", digger.efficiency().fraction(), Unit.NONE, digger.source());
        Listed swelling = new Listed("w", "swell of the soil", swell.fraction(), Unit.NONE, "price book");
        BigDecimal pace = bucket.value()
                .multiply(fill.value())
                .multiply(cycles)
                .multiply(working.value())
                .divide(BigDecimal.ONE.add(swelling.value()), MathContext.DECIMAL64);
        return Worked.of(
                "P",
                "dug in an hour, bank",
                pace,
                Unit.CUBIC_YARD,
                new Formula("b × f × c × e ÷ (1 + w)", SOURCE),
                bucket,
                fill,
                round,
                working,
                swelling);
    }

    /**
     * The book with the pace of the company's machines in its digging items; the same book where the company does not
     * say what its machines do.
     */
    public static PriceBook paced(PriceBook book, Company company, Texture texture) {
        if (company.diggers().isEmpty()) {
            return book;
        }
        Percent swell = book.earthFor(texture).swell();
        return book.pacedBy(List.of(company.diggers(), swell), () -> paced(book, company, swell));
    }

    private static Map<String, LineItem> paced(PriceBook book, Company company, Percent swell) {
        Map<String, LineItem> paced = new HashMap<>();
        for (LineItem item : book.items().values()) {
            digger(company, item)
                    .ifPresent(digger -> paced.put(
                            item.code(),
                            item.paced(
                                    of(digger, item.labor().flatMap(Labor::digs).orElseThrow(), swell)
                                            .value())));
        }
        return paced;
    }

    private static Optional<Digger> digger(Company company, LineItem item) {
        return item.labor()
                .filter(labor -> labor.digs().isPresent())
                .flatMap(Labor::machine)
                .map(company.diggers()::get);
    }
}
