// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.JTable;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The bar behind a figure is as long as the figure's share of the greatest one. */
class ShareBarCellTest {
    private static final int WIDE = 100;

    private final ShareBarCell cell = new ShareBarCell(row -> row == 0 ? 1 : row == 1 ? 0.25 : -3);
    private final JTable table = new JTable(3, 1);

    @BeforeEach
    void color() {
        UIManager.put("Spadework.water", new Color(0x1F6F8B));
    }

    @AfterEach
    void noColor() {
        UIManager.put("Spadework.water", null);
    }

    /** How many columns of the picture have the bar. */
    private int barred(int row) {
        cell.getTableCellRendererComponent(table, "", false, false, row, 0);
        cell.setSize(WIDE, 20);
        BufferedImage image = new BufferedImage(WIDE, 20, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        cell.paint(pen);
        pen.dispose();
        int ground = image.getRGB(WIDE / 2, 0);
        int columns = 0;
        for (int x = 0; x < WIDE; x++) {
            columns += image.getRGB(x, 10) == ground ? 0 : 1;
        }
        return columns;
    }

    @Test
    void barIsAsLongAsTheShare() {
        assertThat(barred(0)).isEqualTo(WIDE);
        assertThat(barred(1)).isEqualTo(WIDE / 4);
    }

    @Test
    void lessThanNothingHasNoBar() {
        assertThat(barred(2)).isZero();
    }

    @Test
    void rowsThatWereSortedKeepTheirShare() {
        table.setAutoCreateRowSorter(true);
        table.setValueAt("a", 2, 0);
        table.setValueAt("b", 1, 0);
        table.setValueAt("c", 0, 0);
        table.getRowSorter().toggleSortOrder(0);
        assertThat(table.convertRowIndexToModel(2)).isZero();
        assertThat(barred(2)).isEqualTo(WIDE);
    }
}
