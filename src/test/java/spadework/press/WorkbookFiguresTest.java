// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.money.Dollars;
import spadework.paperwork.cost.CostSheet;
import spadework.paperwork.cost.CostSheetLine;
import spadework.paperwork.cost.CostSheetSection;
import spadework.paperwork.part.PaymentRow;
import spadework.paperwork.part.PriceRow;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** What the formulas of a workbook give is what the record says, to the cent. */
class WorkbookFiguresTest {
    private static XSSFWorkbook costs;
    private static XSSFWorkbook proposal;

    @BeforeAll
    static void print() {
        costs = printed("cost-sheet");
        proposal = printed("proposal");
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(textBlock = """
            # direct cost and its build-up: 8188.32 × 1.10 = 9007.15, × 1.20 = 10808.58, ÷ 0.88 = 12282.48
            direct_total,     8188.32
            with_contingency, 9007.15
            with_overhead,    10808.58
            price_by_rates,   12282.48
            # lines, sections and what rounding to whole dollars adds
            lines_total,      12282.48
            rounding_total,   0.52
            sections_total,   12283
            job_price,        12283
            sales_tax,        767.69
            job_total,        13050.69
            left_over,        1474.42
            # typed figures have names as well
            contingency_rate, 0.1
            overhead_rate,    0.2
            profit_rate,      0.12
            rounding_step,    1
            minimum_top_up,   0
            """)
    void theCostSheetGivesTheRecordsFigure(String name, double figure) {
        assertThat(WorkbookDump.named(costs, name)).containsExactly(figure);
    }

    @Test
    void everyLineGivesItsDirectCostAndItsPriceToTheCent() {
        List<CostSheetLine> lines = PaperworkFixtures.lines();
        assertThat(WorkbookDump.named(costs, "lines_direct"))
                .isEqualTo(amounts(lines, line -> line.cost().direct()));
        assertThat(WorkbookDump.named(costs, "lines_price")).isEqualTo(amounts(lines, CostSheetLine::price));
    }

    @Test
    void everySectionIsSummedFromItsLinesAndRoundedHalfUp() {
        List<CostSheetSection> sections = PaperworkFixtures.sheet().sections();
        assertThat(WorkbookDump.named(costs, "sections_direct")).isEqualTo(amounts(sections, CostSheetSection::direct));
        assertThat(WorkbookDump.named(costs, "sections_lines")).isEqualTo(amounts(sections, CostSheetSection::lines));
        assertThat(WorkbookDump.named(costs, "sections_rounding"))
                .isEqualTo(amounts(sections, CostSheetSection::rounding));
        assertThat(WorkbookDump.named(costs, "sections_price")).isEqualTo(amounts(sections, CostSheetSection::price));
    }

    @ParameterizedTest(name = "payments of the {0}")
    @ValueSource(strings = {"proposal", "cost-sheet"})
    void paymentsAreSharesToTheCentAndTheLastIsWhatIsLeft(String document) {
        XSSFWorkbook book = document.equals("proposal") ? proposal : costs;
        List<Double> amounts = amounts(PaperworkFixtures.payments(), PaymentRow::amount);
        assertThat(WorkbookDump.named(book, "payments_before")).isEqualTo(amounts.subList(0, 3));
        assertThat(WorkbookDump.named(book, "last_payment")).isEqualTo(amounts.subList(3, 4));
    }

    @Test
    void theProposalAddsItsSectionsAndItsTax() {
        assertThat(WorkbookDump.named(proposal, "section_prices"))
                .isEqualTo(amounts(PaperworkFixtures.proposal().price().rows(), PriceRow::price));
        assertThat(WorkbookDump.named(proposal, "price_before_tax")).containsExactly(12283.0);
        assertThat(WorkbookDump.named(proposal, "sales_tax")).containsExactly(767.69);
        assertThat(WorkbookDump.named(proposal, "job_total")).containsExactly(13050.69);
    }

    @Test
    void aJobWithoutTaxIsPaidInOnePayment() {
        XSSFWorkbook book = printed("proposal", Map.of("proposal", PaperworkFixtures.bareProposal()));
        assertThat(WorkbookDump.named(book, "job_total")).containsExactly(985.0);
        assertThat(WorkbookDump.named(book, "last_payment")).containsExactly(985.0);
        assertThat(book.getSheet("Unit prices")).isNull();
        assertThat(book.getName("tax_rate")).isNull();
    }

    /** 150.00 × 1.10 × 1.20 × 1.125 = 222.75; sections to $5 half up; the minimum of $985 tops up by $710. */
    @Test
    void aMarkupAStepAndAMinimumGiveTheRecordsFigures() {
        CostSheet sheet = PaperworkFixtures.bareSheet();
        XSSFWorkbook book = printed("cost-sheet", Map.of("sheet", sheet));
        assertThat(WorkbookDump.named(book, "sections_lines"))
                .isEqualTo(amounts(sheet.sections(), CostSheetSection::lines));
        assertThat(WorkbookDump.named(book, "sections_price"))
                .isEqualTo(amounts(sheet.sections(), CostSheetSection::price));
        assertThat(WorkbookDump.named(book, "price_by_rates")).containsExactly(222.75);
        assertThat(WorkbookDump.named(book, "job_total")).containsExactly(985.0);
    }

    /** A figure that is wider than its column shows as marks instead of digits. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"proposal", "scope", "certificate", "cost-sheet"})
    void everyFigureFitsItsColumnWithRoomForOneDigitMore(String document) {
        DataFormatter formatter = new DataFormatter(Locale.US);
        formatter.setUseCachedValuesForFormulaCells(true);
        assertThat(WorkbookDump.cells(printed(document)))
                .filteredOn(cell -> cell.getCellType() == CellType.NUMERIC || cell.getCellType() == CellType.FORMULA)
                .filteredOn(cell -> !merged(cell))
                .isNotEmpty()
                .allSatisfy(cell -> assertThat(formatter.formatCellValue(cell).length() + 1)
                        .as(WorkbookDump.place(cell) + " " + formatter.formatCellValue(cell))
                        .isLessThanOrEqualTo(cell.getSheet().getColumnWidth(cell.getColumnIndex()) / 256));
    }

    @Test
    void aQuantityTypedForTheUnknownGivesItsAmount() {
        XSSFWorkbook book = printed("proposal");
        XSSFRow row = book.getSheet("Unit prices").getRow(3);
        row.getCell(2).setCellValue(1.5);
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        assertThat(row.getCell(5).getNumericCellValue())
                .as("1.5 × 187.35 = 281.025")
                .isEqualTo(281.03);
    }

    @Test
    void changingARateChangesThePriceByTheRates() {
        XSSFWorkbook book = printed("cost-sheet");
        CellReference cell = new CellReference(book.getName("profit_rate").getRefersToFormula());
        book.getSheet(cell.getSheetName())
                .getRow(cell.getRow())
                .getCell(cell.getCol())
                .setCellValue(0.25);
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
        assertThat(WorkbookDump.named(book, "price_by_rates")).containsExactly(14411.44);
    }

    @Test
    void everyAmountIsANumberAndEverySumAFormula() {
        assertThat(WorkbookDump.lines(proposal))
                .contains(
                        "Summary!B13 = NUMERIC 46084.0 [[$-409]mmmm d, yyyy]",
                        "Price!C3 = NUMERIC 6844.0 [\"$\"#,##0.00;−\"$\"#,##0.00]",
                        "Price!C7 = NUMERIC 0.0625 [0.00%]",
                        "Price!C9 = NUMERIC 13050.69 [\"$\"#,##0.00;−\"$\"#,##0.00]"
                                + " =ROUND(price_before_tax+sales_tax,2)");
        assertThat(WorkbookDump.lines(costs))
                .contains(
                        "Lines!D3 = NUMERIC 46.5 [#,##0.0;−#,##0.0]",
                        "Lines!N3 = NUMERIC 2677.01 [\"$\"#,##0.00;−\"$\"#,##0.00] =ROUND(D3*M3,2)",
                        "Sections!D4 = NUMERIC 6843.53 [\"$\"#,##0.00;−\"$\"#,##0.00]"
                                + " =ROUND(SUMIF(lines_section,A4,lines_price),2)");
        for (XSSFWorkbook book : List.of(proposal, costs)) {
            assertThat(WorkbookDump.cells(book))
                    .filteredOn(cell -> cell.getCellType() == CellType.STRING)
                    .noneMatch(cell -> cell.getStringCellValue().matches("\\$[0-9,.]+")
                            && !cell.getSheet().getSheetName().equals("Build-up"));
        }
    }

    private static boolean merged(XSSFCell cell) {
        return cell.getSheet().getMergedRegions().stream().anyMatch(region -> region.isInRange(cell));
    }

    private static XSSFWorkbook printed(String document) {
        return printed(document, PaperworkFixtures.model());
    }

    private static XSSFWorkbook printed(String document, Map<String, Object> model) {
        return WorkbookDump.open(WorkbookPress.print(Templates.bundled(), document, model, PaperworkFixtures.ISSUED));
    }

    private static <T> List<Double> amounts(List<T> rows, Function<T, Dollars> amount) {
        return rows.stream()
                .map(amount)
                .map(Dollars::amount)
                .map(BigDecimal::doubleValue)
                .toList();
    }
}
