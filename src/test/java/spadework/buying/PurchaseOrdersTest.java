// SPDX-License-Identifier: Apache-2.0
package spadework.buying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.money.Dollars;
import spadework.office.Outcome;
import spadework.office.buying.PurchaseOrdering;
import spadework.paperwork.Dossier;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.pricebook.WorkStep;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;
import spadework.schedule.Steps;
import spadework.takeoff.Purchase;

/** What is bought for a job is ordered once, by whole packages, in time. */
class PurchaseOrdersTest {
    /** Inches of a column's character in the widest of the usual faces, as in the test of all workbooks. */
    private static final double WIDEST_CHARACTER = 0.0866;

    @TempDir
    private Path out;

    static List<Path> papered() {
        return Samples.papered();
    }

    private static CrewCalendar calendar(Dossier dossier) {
        return CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
    }

    private static List<PurchaseOrder> orders(Dossier dossier) {
        return PurchaseOrders.of(dossier.book(), dossier.takeoff(), calendar(dossier));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void everyPurchaseIsOrderedOnce(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        Map<String, BigDecimal> ordered = new TreeMap<>();
        Dollars total = Dollars.ZERO;
        for (PurchaseOrder order : orders(dossier)) {
            order.deliveries()
                    .forEach(delivery -> delivery.lines()
                            .forEach(line -> ordered.merge(line.code(), line.packages(), BigDecimal::add)));
            total = total.plus(order.total());
        }
        Map<String, BigDecimal> bought = new TreeMap<>();
        Dollars cost = Dollars.ZERO;
        for (Purchase purchase : dossier.takeoff().purchases()) {
            bought.put(purchase.code(), purchase.packages());
            Dollars each =
                    dossier.book().get(purchase.code()).material().orElseThrow().cost();
            cost = cost.plus(each.exact().times(purchase.packages()).toCents(RoundingMode.HALF_UP));
        }
        assertThat(ordered).isEqualTo(bought).isNotEmpty();
        assertThat(total).isEqualTo(cost);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void everythingComesBeforeTheFirstDayOnWhichItIsUsed(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        CrewCalendar calendar = calendar(dossier);
        for (PurchaseOrder order : orders(dossier)) {
            for (Delivery delivery : order.deliveries()) {
                assertThat(delivery.on().getDayOfWeek()).isNotIn(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
                assertThat(delivery.orderBy()).isBeforeOrEqualTo(delivery.on());
                for (OrderLine line : delivery.lines()) {
                    if (line.code().equals("SOD")) {
                        assertThat(delivery.on()).isEqualTo(calendar.last(WorkStep.RESTORE));
                        continue;
                    }
                    LocalDate used = dossier.takeoff().lines().stream()
                            .filter(one -> one.code().equals(line.code()))
                            .map(one -> calendar.first(Steps.of(
                                    dossier.book().get(line.code()),
                                    one.section().kind())))
                            .min(LocalDate::compareTo)
                            .orElseThrow();
                    assertThat(delivery.on()).as(line.code()).isBefore(used);
                }
            }
        }
    }

    private static LocalDate comes(String sample, String code) {
        return orders(Samples.bid(Path.of("sample-quotes", sample)).dossier()).stream()
                .flatMap(order -> order.deliveries().stream())
                .filter(delivery ->
                        delivery.lines().stream().anyMatch(line -> line.code().equals(code)))
                .map(Delivery::on)
                .findFirst()
                .orElseThrow();
    }

    /** A walk is broken out on the first day of digging and poured on the last days: nobody needs concrete before. */
    @Test
    void concreteComesWhenItIsPoured() {
        String sample = "poured-basement-with-sump";
        assertThat(comes(sample, "CONC-NEW"))
                .isEqualTo(comes(sample, "TOPSOIL"))
                .isAfter(comes(sample, "PIPE-PERF4"));
    }

    /** Cut sod dries out on its pallet: it comes once the ground under it is graded. */
    @Test
    void sodComesAfterTheGroundIsGraded() {
        String sample = "crawl-space-between-houses";
        CrewCalendar calendar =
                calendar(Samples.bid(Path.of("sample-quotes", sample)).dossier());
        assertThat(comes(sample, "SOD")).isEqualTo(calendar.last(WorkStep.RESTORE));
        assertThat(comes(sample, "TOPSOIL")).isBefore(calendar.first(WorkStep.RESTORE));
    }

    /** Three tarps lie on site and each serves two jobs: two are bought, and the order says where the third is. */
    @Test
    void whatServesSeveralJobsIsCountedOnSiteAsWell() {
        Dossier dossier =
                Samples.bid(Path.of("sample-quotes/poured-basement-with-sump")).dossier();
        OrderLine tarps = orders(dossier).stream()
                .flatMap(order -> order.deliveries().stream())
                .flatMap(delivery -> delivery.lines().stream())
                .filter(line -> line.code().equals("SPOIL-TARP"))
                .findFirst()
                .orElseThrow();
        assertThat(tarps.packages()).isEqualByComparingTo("2");
        assertThat(tarps.onSite().orElseThrow()).isEqualByComparingTo("3");
    }

    /** Printed on any day, the papers of the same agreed work are the same. */
    @Test
    void orderCarriesTheDayOfTheAgreedWorkWhereNoneIsSaid() throws IOException {
        Path sample = Path.of("sample-quotes/added-wall-then-closed");
        Outcome outcome = new PurchaseOrdering(Samples.office()).orders(sample, out);
        Path first = ((Outcome.Printed) outcome).files().get(0);
        assertThat(PageText.all(Files.readAllBytes(first)))
                .as("the second change order is of that day")
                .contains("Purchase order 1 · August 8, 2026");
    }

    /** Sample 1 starts on Monday, September 14, 2026, after Labor Day; stone has a lead of one working day. */
    @Test
    void leadIsCountedInWorkingDays() {
        Dossier dossier =
                Samples.bid(Path.of("sample-quotes/block-basement-to-swale")).dossier();
        CrewCalendar calendar = calendar(dossier);
        PurchaseOrder stone = orders(dossier).get(0);
        assertThat(stone.supplier()).isEqualTo("Wickham Stone Yard");
        Delivery delivery = stone.deliveries().get(0);
        assertThat(delivery.lines().get(0).number()).isEqualTo("57-WASHED");
        assertThat(delivery.orderBy()).isEqualTo(calendar.before(delivery.on(), 1));
        LocalDate monday = LocalDate.of(2026, 9, 14);
        assertThat(calendar.before(monday, 1)).isEqualTo(LocalDate.of(2026, 9, 11));
        assertThat(calendar.before(LocalDate.of(2026, 9, 8), 1))
                .as("Labor Day is no working day")
                .isEqualTo(LocalDate.of(2026, 9, 4));
        assertThat(calendar.before(monday, 0)).isEqualTo(monday);
        assertThat(calendar.before(LocalDate.of(2026, 9, 13), 0)).isEqualTo(LocalDate.of(2026, 9, 11));
    }

    /** All orders of a sample, printed: their pages and their workbooks as text. */
    private List<String> printed(String sample, String kind) throws IOException {
        Outcome outcome = new PurchaseOrdering(Samples.office()).orders(Path.of("sample-quotes", sample), out);
        List<String> texts = new ArrayList<>();
        for (Path file : ((Outcome.Printed) outcome).files()) {
            if (file.toString().endsWith(kind)) {
                byte[] bytes = Files.readAllBytes(file);
                texts.add((kind.equals(".pdf")
                                ? PageText.all(bytes)
                                : String.join(" ", WorkbookDump.texts(WorkbookDump.open(bytes))))
                        .replaceAll("\\s+", " "));
            }
        }
        return texts;
    }

    /** The job has the basin, the pump, four downspouts into R1, and no line for the lead or the riser of the sump. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {".pdf", ".xlsx"})
    void orderOfASumpSaysItsSizesAndWhatNobodyCounted(String kind) throws IOException {
        List<String> orders = printed("poured-basement-with-sump", kind);
        assertThat(orders)
                .filteredOn(order -> order.contains("Sump basin"))
                .singleElement()
                .satisfies(order -> assertThat(order)
                        .contains("S1: basin of at least 1 ft 6 in across and 2 ft 6 in deep, inside.")
                        .contains("S1: pump that delivers 25 gpm or more against 12 ft of head.")
                        .contains("Nobody has counted these yet.")
                        .contains("Tees in roof line R1, where downspouts DS1, DS2, DS3, DS4 come in.")
                        .contains("the order has its run of 38 ft. The rise of 7 ft 6 in out of the basin, its elbows")
                        // Sold, and so counted: what is ordered is not asked for again.
                        .contains("Tee and lead into the sump", "Riser")
                        .doesNotContain("Tee, solid pipe, and seal from the footing drain into S1.")
                        .doesNotContain("Riser up to the grade and a fastened cover for the basin of S1."));
        assertThat(orders)
                .filteredOn(order -> !order.contains("Sump basin"))
                .isNotEmpty()
                .noneMatch(order -> order.contains("Not on this order") || order.contains("Sizes"));
    }

    @Test
    void orderWithoutASumpHasNoWordOfOne() throws IOException {
        assertThat(printed("stone-wall-engineer-first", ".pdf"))
                .isNotEmpty()
                .noneMatch(order -> order.contains("basin") || order.contains("Not on this order"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {".pdf", ".xlsx"})
    void pageAndWorkbookSayTheSameToTheSupplier(String kind) throws IOException {
        assertThat(printed("block-basement-to-swale", kind))
                .isNotEmpty()
                .allSatisfy(order -> assertThat(order)
                        .contains("Nell Tarrow at (614) 555-0143", "If yours differ, tell us before you deliver.")
                        .contains("Call before you come", "nothing is set down within 2 ft of an open trench")
                        .contains("Delivery checked by", "For Fennimarsh Wall & Drain LLC", "Printed name")
                        .doesNotContain("Key to the cells"));
    }

    /** Landscape: drawn together by no more than a tenth. */
    @Test
    void workbookPrintsInLettersThatCanBeReadWithItsHeadsOnEveryPage() throws IOException {
        Outcome outcome =
                new PurchaseOrdering(Samples.office()).orders(Path.of("sample-quotes/poured-basement-with-sump"), out);
        for (Path file : ((Outcome.Printed) outcome).files()) {
            if (file.toString().endsWith(".xlsx")) {
                try (XSSFWorkbook book = WorkbookDump.open(Files.readAllBytes(file))) {
                    XSSFSheet sheet = book.getSheetAt(0);
                    int head = sheet.getRepeatingRows().getFirstRow();
                    double characters = 0;
                    for (int i = 0; i < sheet.getRow(head).getLastCellNum(); i++) {
                        characters += sheet.getColumnWidth(i) / 256.0;
                    }
                    double room = 11 - sheet.getMargin(PageMargin.LEFT) - sheet.getMargin(PageMargin.RIGHT);
                    assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
                    assertThat(room / (characters * WIDEST_CHARACTER)).isGreaterThan(0.9);
                    assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
                }
            }
        }
    }

    @Test
    void ordersArePrintedForTheOfficeAlone() throws IOException, InterruptedException {
        Path sample = Path.of("sample-quotes/block-basement-to-swale");
        Outcome outcome = new PurchaseOrdering(Samples.office()).orders(sample, LocalDate.of(2026, 8, 20), out);
        List<Path> files = ((Outcome.Printed) outcome).files();
        List<PurchaseOrder> orders = orders(Samples.bid(sample).dossier());
        assertThat(files)
                .hasSize(2 * orders.size())
                .allMatch(file -> file.getParent().endsWith("kept"));
        List<byte[]> books = new ArrayList<>();
        for (Path file : files) {
            byte[] content = Files.readAllBytes(file);
            if (file.toString().endsWith(".pdf")) {
                assertThat(VeraPdf.failedRules(content)).isEmpty();
            } else {
                books.add(content);
            }
        }
        assertThat(PageText.all(Files.readAllBytes(files.get(0))))
                .contains(
                        "To Wickham Stone Yard",
                        "57-WASHED STONE-MACH",
                        orders.get(0).total().text());
        for (int i = 0; i < books.size(); i++) {
            assertThat(WorkbookDump.named(WorkbookDump.open(books.get(i)), "order_total"))
                    .containsExactly(orders.get(i).total().amount().doubleValue());
        }
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbooks cannot be worked out again");
        assertThat(new Recalculation(program.get(), out).figures(books))
                .isEqualTo(books.stream().map(Recalculation::shown).toList());
    }
}
