// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.field.RowsTable;
import spadework.form.field.RowsTableModel;
import spadework.form.page.JobPage;

/** Days and names in the cells of lists are picked, by mouse and by keyboard. */
@WindowTest
class PickingTest {
    @TempDir
    Path folder;

    private static JTable table(OnScreen screen, JobPage page, String list) {
        GuiActionRunner.execute(() -> screen.job().go(page));
        screen.settle();
        new FormRobot(screen, Draft.empty())
                .openGroups(screen.ask(() -> screen.job().page(page)));
        screen.settle();
        return screen.ask(() -> screen.job().page(page).tables().stream()
                .map(RowsTable::table)
                .filter(one -> list.equals(one.getName()))
                .findFirst()
                .orElseThrow());
    }

    private static void click(OnScreen screen, JTable table, int row, String key) {
        int column = screen.ask(() -> {
            RowsTableModel model = (RowsTableModel) table.getModel();
            int at = 0;
            while (!model.column(at).key().equals(key)) {
                at++;
            }
            return at;
        });
        Rectangle cell = screen.ask(() -> {
            Rectangle one = table.getCellRect(row, column, true);
            table.scrollRectToVisible(one);
            ((javax.swing.JComponent) table.getParent().getParent())
                    .scrollRectToVisible(
                            new Rectangle(0, 0, 10, table.getParent().getHeight()));
            return one;
        });
        screen.arrive();
        screen.robot().click(table, new Point(cell.x + cell.width / 2, cell.y + cell.height / 2));
        screen.waitFor(
                "keyboard in the cell",
                () -> screen.ask(() ->
                        table.getSelectedRow() == row && table.getSelectedColumn() == column && table.isFocusOwner()));
    }

    private static void press(OnScreen screen, int key) {
        screen.robot().pressAndReleaseKey(key);
        screen.settle();
    }

    @Test
    void dayInACellIsPickedByKeyboardFromTheCalendar() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            JTable table = table(screen, JobPage.BUILT, "/received");
            click(screen, table, 0, "/on");
            String issued = screen.session().draft().shown("/issued");
            press(screen, KeyEvent.VK_F4);
            screen.waitFor("calendar", () -> isThere(screen, "day " + issued));
            press(screen, KeyEvent.VK_DOWN);
            press(screen, KeyEvent.VK_RIGHT);
            screen.picture("cell-calendar");
            press(screen, KeyEvent.VK_ENTER);
            press(screen, KeyEvent.VK_ENTER);
            assertThat(screen.session().draft().shown("/received/0/on"))
                    .isEqualTo(java.time.LocalDate.parse(issued).plusDays(8).toString());
            assertThat(isThere(screen, "day " + issued)).isFalse();
        }
    }

    @Test
    void dayInACellIsPickedByMouseFromTheCalendar() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            JTable table = table(screen, JobPage.TERMS, "/acceptedStops");
            click(screen, table, 0, "/on");
            press(screen, KeyEvent.VK_F4);
            java.time.LocalDate issued =
                    java.time.LocalDate.parse(screen.session().draft().shown("/issued"));
            String day = issued.withDayOfMonth(20).toString();
            screen.waitFor("calendar", () -> isThere(screen, "day " + day));
            screen.robot().click(label(screen, "day " + day));
            screen.settle();
            assertThat(screen.session().draft().shown("/acceptedStops/0/on")).isEqualTo(day);
        }
    }

    private static boolean isThere(OnScreen screen, String name) {
        return screen.robot().hierarchy().roots().stream().anyMatch(root -> root.isShowing())
                && !screen.robot()
                        .finder()
                        .findAll(one -> name.equals(one.getName()) && one.isShowing())
                        .isEmpty();
    }

    private static JLabel label(OnScreen screen, String name) {
        return (JLabel) screen.robot().finder().find(one -> name.equals(one.getName()) && one.isShowing());
    }

    @Test
    void unitPriceOfAChangeIsPickedWithItsNameAndPrice() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("added-wall-then-closed", folder))) {
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().insertedBlank("/changes/0/unitPrices", 0)));
            screen.settle();
            JTable changes = table(screen, JobPage.CHANGES, "/changes");
            click(screen, changes, 0, "/title");
            JTable table = table(screen, JobPage.CHANGES, "/changes/0/unitPrices");
            click(screen, table, 0, "/price");
            press(screen, KeyEvent.VK_F4);
            screen.waitFor("a list of unit prices", () -> isThere(screen, "picks"));
            JList<?> picks =
                    (JList<?>) screen.robot().finder().find(one -> "picks".equals(one.getName()) && one.isShowing());
            String first = screen.ask(() -> picks.getModel().getElementAt(0).toString());
            assertThat(first).contains("$").contains(" – ");
            screen.picture("cell-unit-prices");
            Rectangle row = screen.ask(() -> picks.getCellBounds(0, 0));
            screen.robot().click(picks, new Point(row.x + 20, row.y + row.height / 2));
            screen.settle();
            assertThat(first)
                    .startsWith(screen.session().draft().shown("/changes/0/unitPrices/0/price") + " – ")
                    .doesNotStartWith(" – ");
        }
    }

    @Test
    void photoOfAnObservationIsPickedByTyping() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            String file = screen.session().draft().shown("/photos/0/file");
            assertThat(file).isNotEmpty();
            JTable table = table(screen, JobPage.PEOPLE, "/observations");
            click(screen, table, screen.session().draft().rows("/observations"), "/photos");
            screen.robot().enterText(file.substring(0, 3));
            screen.settle();
            press(screen, KeyEvent.VK_ENTER);
            int row = screen.session().draft().rows("/observations") - 1;
            assertThat(screen.session().draft().shown("/observations/" + row + "/photos"))
                    .isEqualTo(file);
        }
    }
}
