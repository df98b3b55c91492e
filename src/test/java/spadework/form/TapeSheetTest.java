// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.files.JobsFolder;

/** An invented tape sheet goes by keyboard alone from an empty window to the proposal; values and keys are counted. */
@WindowTest
class TapeSheetTest {
    private static final int MOST_VALUES = 45;
    private static final int MOST_KEYS = 350;
    private static final int MOST_VALUES_TO_PRICE = 12;

    @TempDir
    Path jobs;

    private OnScreen screen;
    private int values;
    private int keys;
    private int toPrice;

    @BeforeEach
    void open() throws IOException {
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
        Files.copy(Path.of("sample-quotes", "fennimarsh-mark.jpg"), jobs.resolve("fennimarsh-mark.jpg"));
        screen = new OnScreen();
        screen.remembered().keep(jobs);
        screen.open(() -> screen.forms().newJob());
        screen.settle();
    }

    @AfterEach
    void close() {
        screen.close();
    }

    @Test
    void newJobStartsAsAUsualOneAndSaysWhatItAssumes() {
        screen.picture("new-job");
        assertThat(screen.session().draft().shown("/walls/0/kind")).isEqualTo("block");
        assertThat(screen.session().draft().shown("/number")).isEqualTo("2026-001");
    }

    @Test
    void tapeSheetByKeyboardAloneBecomesAProposal() throws IOException {
        Path proposal = jobs.resolve("proposal.pdf");
        screen.asked().target = Optional.of(proposal);
        wall(0, "42", "4 8", "5 6", "back wall", "n", "14", "c");
        screen.settle();
        screen.picture("tape-one-wall");
        wall(1, "26", "5 6", "4", "side wall", "e", "6", "c");
        field("/water/drains/0/startInvert", "92.48");
        field("/water/drains/0/endInvert", "92.12");
        field("/water/mains/0/length", "64");
        field("/water/mains/0/trench/depth", "3 6");
        field("/water/outlets/0/what", "swale");
        field("/water/outlets/0/level", "91.2");
        cell("/water/downspouts", 0, 0, "610");
        cell("/water/downspouts", 1, 0, "560");
        field("/water/roofLines/0/length", "78");
        field("/site/soil/texture", "silty clay");
        field("/site/soil/seepage", "d");
        field("/site/rain/intensity", "5.9");
        field("/site/rain/source", "NOAA Atlas 14");
        field("/customer/names/0", "Ida Wrenfield");
        field("/site/address/street", "418 Quillfeather Lane");
        field("/site/address/city", "Marrowbrook");
        field("/site/address/zip", "43099");
        field("/site/house/eastWest", "42");
        field("/site/house/northSouth", "28");
        field("/schedule/earliestStart", "9/14/26");
        field("/schedule/latestFinish", "10/9/26");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_T);
        values++;
        screen.settle();
        screen.picture("tape-decided");
        assertThat(screen.session().faults()).isEmpty();
        assertThat(screen.session().draft().shown("/site/soil/texture")).isEqualTo("silty clay");
        assertThat(screen.session().draft().shown("/corners/0/second")).isEqualTo("B start");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        screen.settle();
        cell("/items", 0, 0, "asph");
        cell("/items", 0, 3, "over the trench");
        assertThat(screen.session().draft().shown("/items/0/code")).isEqualTo("ASPH-OUT");
        assertThat(screen.session().draft().shown("/items/0/quantity")).isEqualTo("1 sy");
        screen.picture("tape-price");
        press(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        screen.settle();
        screen.picture("tape-papers");
        goTo("proposal save");
        press(KeyEvent.VK_SPACE);
        screen.settle();
        assertThat(proposal).isNotEmptyFile();
        System.out.printf("tape sheet: %d values, %d keystrokes, first price after %d values%n", values, keys, toPrice);
        assertThat(toPrice).isBetween(1, MOST_VALUES_TO_PRICE);
        assertThat(values).isLessThanOrEqualTo(MOST_VALUES);
        assertThat(keys).isLessThanOrEqualTo(MOST_KEYS);
    }

    private void wall(int row, String... said) {
        for (int column = 0; column < said.length; column++) {
            cell("/walls", row, column, said[column]);
        }
        for (int column = said.length; column < said.length + 3; column++) {
            cell("/walls", row, column, "n");
        }
    }

    private void field(String name, String typed) {
        goTo(name);
        value(typed);
    }

    private void cell(String list, int row, int column, String typed) {
        walk(list + " " + row + ", " + column, owner -> {
            JTable table =
                    owner instanceof JTable own ? own : (JTable) SwingUtilities.getAncestorOfClass(JTable.class, owner);
            return table != null
                    && list.equals(table.getName())
                    && table.getSelectedRow() == row
                    && table.getSelectedColumn() == column;
        });
        value(typed);
    }

    private void goTo(String name) {
        walk(name, owner -> name.equals(owner.getName()));
    }

    /** Presses Tab until the keyboard is there. */
    private void walk(String where, Predicate<Component> there) {
        int steps = 0;
        while (!screen.ask(() -> there.test(owner()))) {
            assertThat(steps++)
                    .as(() -> "steps to " + where + " from " + screen.ask(TapeSheetTest::owner))
                    .isLessThan(20);
            String before = screen.ask(TapeSheetTest::place);
            press(KeyEvent.VK_TAB);
            screen.waitFor("Tab on the way to " + where, () -> !before.equals(screen.ask(TapeSheetTest::place)));
        }
    }

    /** Where the keyboard is, to the cell. */
    private static String place() {
        Component owner = owner();
        JTable table =
                owner instanceof JTable own ? own : (JTable) SwingUtilities.getAncestorOfClass(JTable.class, owner);
        return (table == null ? "" : table.getSelectedRow() + ", " + table.getSelectedColumn() + " of ")
                + System.identityHashCode(table == null ? owner : table);
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** Presses a key, others held. */
    private void press(int... chord) {
        for (int i = 0; i < chord.length - 1; i++) {
            screen.robot().pressKey(chord[i]);
        }
        screen.robot().pressAndReleaseKey(chord[chord.length - 1]);
        for (int i = chord.length - 2; i >= 0; i--) {
            screen.robot().releaseKey(chord[i]);
        }
        screen.arrive();
        keys++;
    }

    private void value(String typed) {
        if (toPrice == 0) {
            screen.settle();
            toPrice = screen.session().total().isPresent() ? values : 0;
        }
        screen.robot().enterText(typed);
        screen.arrive();
        keys += typed.length();
        values++;
    }
}
