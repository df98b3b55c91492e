// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import spadework.contract.PricedChange;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.paperwork.contract.ChangeOrderPaper;

/** A homeowner who was promised a price for one more foot of wall reads why an added wall comes to another sum. */
class AddedWallPriceTest {
    private static final Path CLOSED = Path.of("sample-quotes/added-wall-then-closed");

    @Test
    void theChangeOrderSaysBothSumsAndWhy() {
        Bid bid = Samples.bid(CLOSED);
        PricedChange west = bid.dossier().contract().changes().get(0);

        List<String> why =
                ChangeOrderPaper.of(bid.dossier(), west).price().byParts().unfit();

        assertThat(why).hasSize(2);
        assertThat(why.get(0)).contains(west.unfit().get(0).byTheFoot().text(), "more than 6 in shallower");
        assertThat(why.get(1)).contains(west.agreed().price().text(), "it also holds work on the ground");
    }

    /** What is charged by a unit price needs no such sentence. */
    @Test
    void aChangeByUnitPricesSaysNone() {
        Bid bid = Samples.bid(CLOSED);
        PricedChange rock = bid.dossier().contract().changes().get(1);

        assertThat(ChangeOrderPaper.of(bid.dossier(), rock).price().byParts().unfit())
                .isEmpty();
    }

    /** The workbook has the difference of each part in a column of its own, and that column sums to the change. */
    @Test
    void theWorkbookHasTheDifferenceOfEachPart() throws IOException {
        Bid bid = Samples.bid(CLOSED);
        PricedChange west = bid.dossier().contract().changes().get(0);
        byte[] file = Samples.printed(CLOSED).get("for-the-homeowner/change-order-1.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(file))) {
            XSSFSheet price = book.getSheet("Price");
            int head = -1;
            BigDecimal sum = BigDecimal.ZERO;
            int rows = 0;
            for (Row row : price) {
                if (row.getCell(4) != null
                        && row.getCell(4).getCellType() == CellType.STRING
                        && row.getCell(4).getStringCellValue().equals("Difference")) {
                    head = row.getRowNum();
                } else if (head >= 0 && rows < west.sections().size()) {
                    sum = sum.add(BigDecimal.valueOf(row.getCell(4).getNumericCellValue()));
                    rows++;
                }
            }
            assertThat(rows).isEqualTo(west.sections().size());
            assertThat(Dollars.of(sum)).isEqualTo(west.agreed().price());
        }
    }
}
