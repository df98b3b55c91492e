// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.JobPricing;
import spadework.job.Jobs;
import spadework.measure.Length;
import spadework.press.template.Templates;
import spadework.pricebook.Books;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Retirement;

/** Prices past their day and items that were given up are told, at the date that the papers carry: 2026-08-10. */
class BookRulesTest {

    @ParameterizedTest(name = "{0} good until {1}")
    @CsvSource(textBlock = """
            STONE-MACH, 2026-08-09, price-stale
            STONE-MACH, 2026-08-10,
            AC-LIFT,    2026-08-09,
            """)
    void stalePriceIsToldWhereTheJobUsesIt(String code, LocalDate until, String text) {
        List<Finding> found = check(code, Optional.of(until), Optional.empty());
        assertThat(found).extracting(Finding::id).isEqualTo(text == null ? List.of() : List.of(text));
        assertThat(found).extracting(Finding::severity).allMatch(Severity.ADVISE::equals);
    }

    @ParameterizedTest(name = "retired {0}")
    @CsvSource(textBlock = """
            2026-08-10, false
            2026-08-11, true
            """)
    void retiredItemIsNotChosenFromItsDayOn(LocalDate on, boolean chosen) {
        PriceBook book = with("STONE-MACH", Optional.empty(), Optional.of(new Retirement(on, "not sold")));
        Job job = Jobs.job();
        assertThat(book.on(job.issued()).get("STONE-MACH").standard()).isEqualTo(chosen);
        assertThat(book.on(job.issued()).get("STONE-MACH").name())
                .isEqualTo(Books.standard().get("STONE-MACH").name());
    }

    @ParameterizedTest(name = "named, retired {0}")
    @CsvSource(textBlock = """
            2026-08-10, item-retired
            2026-08-11,
            """)
    void retiredItemThatAJobStillUsesIsTold(LocalDate on, String text) {
        assertThat(check("STONE-MACH", Optional.empty(), Optional.of(new Retirement(on, "not sold"))))
                .extracting(Finding::id)
                .isEqualTo(text == null ? List.of() : List.of(text));
    }

    /** Without {@code on}: the item is used as if the job named it. */
    private static List<Finding> check(String code, Optional<LocalDate> until, Optional<Retirement> retired) {
        Phrases phrases = new Phrases(Templates.bundled().words("words/findings.properties"));
        List<Finding> found = new BookRules().check(new Facts(Jobs.job(), with(code, until, retired)));
        found.forEach(finding ->
                assertThat(phrases.what(finding) + phrases.action(finding)).doesNotContain("{"));
        return found;
    }

    private static PriceBook with(String code, Optional<LocalDate> until, Optional<Retirement> retired) {
        PriceBook book = Books.standard();
        LineItem i = book.get(code);
        LineItem changed = new LineItem(
                i.identity(),
                new ItemUse(i.follows(), i.standard(), i.unknown(), Optional.empty()),
                i.cost(),
                i.film(),
                i.pipe(),
                new ItemUpkeep(i.source(), until, retired, List.of(), i.notes()));
        Map<String, LineItem> items = new HashMap<>(book.items());
        items.put(code, changed);
        return new PriceBook(
                book.title(),
                book.dated(),
                items,
                book.assemblies(),
                book.earth(),
                book.stoneTonsPerCubicYard(),
                book.truckCubicYards());
    }

    /** An item that a job names and needs none of costs it nothing, however old its price. */
    @ParameterizedTest(name = "{0} of it: told {1}")
    @CsvSource({"0, false", "1, true"})
    void itemOfWhichNothingIsNeededIsNotTold(BigDecimal quantity, boolean text) {
        Job j = Jobs.job();
        Job job = new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                j.work(),
                new JobPricing(
                        List.of(new ExtraItem("TIE-PATCH", Optional.of(quantity), "A", "test")),
                        j.priceChanges(),
                        j.taxClass()),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
        PriceBook book = with("TIE-PATCH", Optional.of(LocalDate.of(2026, 8, 9)), Optional.empty());
        assertThat(new BookRules().check(new Facts(job, book)))
                .extracting(Finding::id)
                .isEqualTo(text ? List.of("price-stale") : List.of());
    }

    /** A wall 4 ft deep: 70 ft of it are 327 sf with waste, less than a roll of 422 sf, and longer than its 65 ft. */
    @ParameterizedTest(name = "{0} ft of wall")
    @CsvSource({"65, false", "70, true"})
    void rollsThatAreTooShortForTheirWallsAreTold(double feet, boolean told) {
        Job job = Jobs.job(Jobs.deep(4).withLength(Length.ofFeet(feet)));

        List<Finding> found = new BookRules().check(new Facts(job, Books.standard()));

        assertThat(found)
                .extracting(
                        Finding::id,
                        finding -> finding.values().get("priced"),
                        finding -> finding.values().get("rolls"))
                .isEqualTo(told ? List.of(tuple("rolls-short", "1", "2")) : List.of());
    }
}
