// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.Condition;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.JobPricing;
import spadework.job.Jobs;
import spadework.job.LimitKind;
import spadework.job.PitPlace;
import spadework.job.Seepage;
import spadework.job.SiteLimit;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Surface;
import spadework.job.Texture;
import spadework.job.Wall;
import spadework.job.WaterJob;
import spadework.measure.Length;
import spadework.money.Dollars;
import spadework.press.template.Templates;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.ItemPrice;
import spadework.safety.Checks;
import spadework.safety.Facts;
import spadework.safety.PaidWork;
import spadework.schedule.DayQuantities;

/** A finding that costs money names the line item that carries it, or what the book would ask. */
class PaidFindingsTest {
    private static final PriceBook BOOK = Books.standard();
    private static final Phrases PHRASES = new Phrases(Templates.bundled().words("words/findings.properties"));

    private static PaidFindings of(Job job, PriceBook book) {
        return PaidFindings.of(
                Checks.of(new Facts(job, book)),
                job,
                Books.company(),
                book,
                DayQuantities.takeoff(job, Books.company(), book));
    }

    private static Finding finding(PaidFindings found, String id) {
        return found.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Job with(Job j, ExtraItem... items) {
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                j.work(),
                new JobPricing(List.of(items), j.priceChanges(), j.taxClass()),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }

    private static ExtraItem item(String code, int quantity, String section) {
        return new ExtraItem(code, Optional.of(BigDecimal.valueOf(quantity)), section, "test");
    }

    private static Job job(String finding) {
        Wall wall = Jobs.wall();
        Soil wet = new Soil(Texture.LOAM, Seepage.DAMP, SoilType.B);
        return switch (finding) {
            case "lead-paint" ->
                Jobs.job(
                        Jobs.builtIn(Jobs.site(), Optional.of(1950)),
                        Jobs.water(),
                        Jobs.with(
                                wall,
                                new Condition(
                                        Surface.COATED,
                                        Length.ZERO,
                                        false,
                                        false,
                                        Optional.of(Length.ZERO),
                                        false,
                                        Optional.of(true),
                                        Set.of())));
            case "engineer-bow" ->
                Jobs.job(Jobs.with(
                        wall,
                        new Condition(
                                Surface.BARE,
                                Length.ZERO,
                                false,
                                false,
                                Optional.of(Length.ofInches(2)),
                                false,
                                Optional.of(true),
                                Set.of())));
            case "roots" ->
                Jobs.job(
                        Jobs.with(
                                Jobs.site(),
                                new SiteLimit(
                                        LimitKind.TREE, "A", Length.ofFeet(9), Optional.of(Length.ofInches(12)), "")),
                        Jobs.water(),
                        wall);
            case "hand-dig-zone" ->
                Jobs.job(
                        Jobs.with(
                                Jobs.site(),
                                new SiteLimit(LimitKind.UTILITY, "A", Length.ofFeet(4), Optional.empty(), "gas")),
                        Jobs.water(),
                        wall);
            case "water-in-trench" -> Jobs.job(Jobs.with(Jobs.site(), wet), Jobs.water(), wall);
            case "shield" -> Jobs.job(Jobs.protectedBy(wall, spadework.job.Protection.SHIELDED));
            case "sump-discharge-trench", "sump-lead", "sump-riser", "sump" ->
                new WaterJob()
                        .sump(18.0, 24.0, 8.0, 40.0, 25.0, 12.0)
                        .pitAt(PitPlace.OUTSIDE)
                        .build();
            default -> Jobs.job();
        };
    }

    /** What no line pays for is asked for by the book; once a line stands, that line is named. */
    @ParameterizedTest(name = "{0}: {1}, {2} {3}")
    @CsvSource(textBlock = """
            lead-paint,            LEAD-SAFE,    1,  ea
            engineer-bow,          ENG-VISIT,    1,  ea
            roots,                 TREE-CARE,    1,  ea
            water-in-trench,       U-PUMP,       1,  day
            sump-lead,             SUMP-LEAD,    1,  ea
            sump-riser,            SUMP-RISER,   1,  ea
            """)
    void openUntilALineCarriesIt(String id, String code, int quantity, String unit) {
        LineItem item = BOOK.get(code);
        Dollars asks = ItemPrice.of(item, BigDecimal.valueOf(quantity), Books.company(), BOOK);
        PaidFindings open = of(job(id), BOOK);
        assertThat(finding(open, id).values())
                .containsEntry("unpaid", code + ", " + item.name())
                .containsEntry("asks", asks.text());
        assertThat(finding(open, id).values().get("takes"))
                .startsWith(Integer.toString(quantity))
                .endsWith(unit);
        assertThat(PHRASES.paid(finding(open, id)).orElseThrow()).contains(code, asks.text());
        assertThat(open.open().orElseThrow().severity()).isEqualTo(Severity.MUST);
        assertThat(PHRASES.what(open.open().get()) + PHRASES.action(open.open().get()))
                .contains(code);

        Job priced = with(
                job(id),
                item(
                        code,
                        quantity,
                        item.section().label().equals("wall")
                                ? "A"
                                : item.section().label()));
        PaidFindings carried = of(priced, BOOK);
        assertThat(finding(carried, id).values())
                .containsEntry("paidBy", code + ", " + item.name())
                .doesNotContainKey("unpaid");
        assertThat(PHRASES.paid(finding(carried, id)).orElseThrow())
                .contains(code)
                .doesNotContain("$");
    }

    private static PriceBook without(String code) {
        Map<String, LineItem> items = new HashMap<>(BOOK.items());
        items.remove(code);
        return new PriceBook(
                BOOK.title(),
                BOOK.dated(),
                items,
                BOOK.assemblies(),
                BOOK.earth(),
                BOOK.stoneTonsPerCubicYard(),
                BOOK.truckCubicYards());
    }

    /** The takeoff digs and prices the trench of a discharge pipe: it is not asked for once more. */
    @Test
    void dischargeTrenchThatTheTakeoffPricesIsPaid() {
        PaidFindings found = of(job("sump-discharge-trench"), BOOK);
        assertThat(finding(found, "sump-discharge-trench").values().get("paidBy"))
                .startsWith("TRENCH-PIPE,");
        assertThat(found.open().orElseThrow().values().get("items")).doesNotContain("DISCH-TRENCH");
        assertThat(found.twice()).isEmpty();
    }

    /** A book without an item for pipe trenches leaves it open: all 40 ft, or what a line by hand leaves of them. */
    @Test
    void dischargeTrenchThatNothingPricesIsAskedFor() {
        PriceBook book = without("TRENCH-PIPE");
        assertThat(finding(of(job("sump-discharge-trench"), book), "sump-discharge-trench")
                        .values())
                .containsEntry("takes", "40.0 ft")
                .containsEntry(
                        "unpaid", "DISCH-TRENCH, " + BOOK.get("DISCH-TRENCH").name());
        Job some = with(job("sump-discharge-trench"), item("DISCH-TRENCH", 15, "drain"));
        assertThat(finding(of(some, book), "sump-discharge-trench").values()).containsEntry("takes", "25.0 ft");
        Job all = with(job("sump-discharge-trench"), item("DISCH-TRENCH", 40, "drain"));
        assertThat(finding(of(all, book), "sump-discharge-trench").values().get("paidBy"))
                .startsWith("DISCH-TRENCH,");
        assertThat(of(all, book).twice()).isEmpty();
    }

    @Test
    void dischargeTrenchThatIsPricedTwiceIsTold() {
        Job job = with(job("sump-discharge-trench"), item("DISCH-TRENCH", 40, "drain"));
        Finding twice = of(job, BOOK).twice().get(0);
        assertThat(twice.id()).isEqualTo("trench-priced-twice");
        assertThat(PHRASES.what(twice)).contains("TRENCH-PIPE", "DISCH-TRENCH");
        assertThat(PHRASES.action(twice)).contains("DISCH-TRENCH");
    }

    /** Standard items carry what stands on every job. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(textBlock = """
            inspection-holds, PERMIT
            daily-inspection, SAFE-CHECK
            locate-keep,      LOCATE-811
            outlet-guard,     OUT-GUARD
            hand-dig-zone,    LOCATE-811
            shield,           SHIELD-FT
            sump,             SUMP-ELEC
            """)
    void standardItemsCarryIt(String id, String code) {
        assertThat(finding(of(job(id), BOOK), id).values().get("paidBy")).startsWith(code + ",");
    }

    /** An engineer sees several walls on one visit; lead-safe work is done at each. */
    @Test
    void onceOrEach() {
        Finding lead = new Finding("lead-paint", Severity.MUST, "A", Map.of(), "x");
        Finding other = new Finding("lead-paint", Severity.MUST, "B", Map.of(), "x");
        Finding bow = new Finding("engineer-bow", Severity.STOP, "A", Map.of(), "x");
        Finding crack = new Finding("engineer-crack", Severity.STOP, "B", Map.of(), "x");
        Job job = Jobs.job();
        PaidFindings found = PaidFindings.of(
                List.of(lead, other, bow, crack),
                job,
                Books.company(),
                BOOK,
                DayQuantities.takeoff(job, Books.company(), BOOK));
        assertThat(found.findings())
                .extracting(f -> f.values().get("takes"))
                .containsExactly("2 ea", "2 ea", "1 ea", "1 ea");
        assertThat(found.open().orElseThrow().values().get("items")).contains("LEAD-SAFE", "ENG-VISIT");
        Dollars sum = ItemPrice.of(BOOK.get("LEAD-SAFE"), BigDecimal.valueOf(2), Books.company(), BOOK)
                .plus(ItemPrice.of(BOOK.get("ENG-VISIT"), BigDecimal.ONE, Books.company(), BOOK));
        assertThat(found.open().get().values()).containsEntry("sum", sum.text());
    }

    @Test
    void bookWithoutTheItemSaysSo() {
        Finding roots = finding(of(job("roots"), without("TREE-CARE")), "roots");
        assertThat(roots.values()).containsEntry("unpaid", "TREE-CARE").doesNotContainKey("asks");
        assertThat(PHRASES.paid(roots).orElseThrow()).contains("the price book has no TREE-CARE");
    }

    @Test
    void findingsThatCostNothingStayAsTheyAre() {
        Job job = Jobs.job();
        List<Finding> found = Checks.of(new Facts(job, BOOK));
        List<Finding> described = of(job, BOOK).findings();
        assertThat(described)
                .extracting(Finding::id)
                .isEqualTo(found.stream().map(Finding::id).toList());
        Finding plain = finding(of(job, BOOK), "spoil-back");
        assertThat(found).contains(plain);
        assertThat(PHRASES.paid(plain)).isEmpty();
        assertThat(of(job, BOOK).open()).isEmpty();
    }

    /** Every code of the table is in the bundled book. */
    @Test
    void everyItemOfTheTableIsInTheBook() {
        List<String> codes = new ArrayList<>();
        PaidWork.ALL.forEach(work -> codes.addAll(work.items()));
        codes.addAll(Arrays.asList("SHIELD-DAY", "VAC-LOCATE"));
        assertThat(BOOK.items()).containsKeys(codes.toArray(String[]::new));
    }
}
