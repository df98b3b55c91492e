// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JTree;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;

/** Filling in: what is typed, what is wrong with it, what it costs, and taking it back. */
@WindowTest
class FillingTest {

    @TempDir
    Path folder;

    private Path file;
    private OnScreen screen;
    private FormRobot hand;

    @BeforeEach
    void open() throws IOException {
        file = SampleCopies.of("block-basement-to-swale", folder);
        screen = OnScreen.job(file);
        hand = new FormRobot(screen, Draft.empty());
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private void go(JobPage page) {
        GuiActionRunner.execute(() -> screen.job().go(page));
        screen.settle();
    }

    private JTextComponent field(String format) {
        return screen.all(JTextComponent.class, f -> format.equals(f.getName()) && f.isShowing())
                .get(0);
    }

    private String says(String format) {
        return screen.ask(field(format)::getText);
    }

    private void retype(String format, String words) {
        JTextComponent field = field(format);
        // Not by a click: one that comes late would take the selection away again.
        screen.focus(field);
        GuiActionRunner.execute(field::selectAll);
        hand.type(words);
    }

    private List<String> wrongs() {
        return screen.all(JTextArea.class, a -> "wrong".equals(a.getName()) && a.isShowing()).stream()
                .map(area -> screen.ask(area::getText))
                .toList();
    }

    private JTable table(String list) {
        return screen.all(JTable.class, t -> list.equals(t.getName()) && t.isShowing())
                .get(0);
    }

    private String label(String name) {
        return screen.ask(
                screen.all(JLabel.class, l -> name.equals(l.getName())).get(0)::getText);
    }

    @Test
    void wrongLengthIsToldInTheWindowsWordsStaysAndIsFixedByAButton() {
        retype("/site/house/eastWest", "42 feat");
        screen.settle();
        assertThat(screen.session().faults()).singleElement().satisfies(fault -> {
            assertThat(fault.place().pointer()).isEqualTo("/site/house/eastWest");
            assertThat(wrongs())
                    .containsExactly("\"42 feat\" does not fit here. What fits: " + fault.allowed() + ". W"
                            + fault.fix().substring(1) + ".");
            assertThat(fault.found()).isEqualTo("\"42 feat\"");
        });
        assertThat(says("/site/house/eastWest")).isEqualTo("42 feat");
        assertThat(screen.session().draft().shown("/site/house/eastWest")).isEqualTo("42 feat");
        screen.picture("wrong-length");
        GuiActionRunner.execute(() -> screen.job().saving().save());
        screen.settle();
        assertThat(file).content().contains("\"eastWest\": \"42 feat\"");
        hand.press(screen.job(), "fix 42 ft");
        screen.settle();
        assertThat(screen.session().faults()).isEmpty();
        assertThat(says("/site/house/eastWest")).isEqualTo("42 ft");
        assertThat(wrongs()).containsExactly("");
    }

    @Test
    void aBareNumberIsInTheUnitOfItsFieldWhileItIsTypedAndShowsItOnLeaving() {
        retype("/site/house/eastWest", "42");
        screen.settle();
        assertThat(screen.session().faults()).isEmpty();
        assertThat(screen.session().draft().shown("/site/house/eastWest")).isEqualTo("42 ft");
        assertThat(says("/site/house/eastWest")).isEqualTo("42");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        screen.settle();
        assertThat(says("/site/house/eastWest")).isEqualTo("42 ft");
    }

    @Test
    void lengthTakesAnySpellingAndShowsBackTidilyOnLeaving() {
        retype("/site/house/eastWest", "42'6\"");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        screen.settle();
        assertThat(says("/site/house/eastWest")).isEqualTo("42 ft 6 in");
        assertThat(screen.session().faults()).isEmpty();
    }

    @Test
    void totalFollowsAMeasureAndTellsWhatItChangedBy() {
        String before = screen.session().total().orElseThrow().text();
        go(JobPage.WALLS);
        retype("/walls/0/digging/handShare", "40%");
        screen.settle();
        String after = screen.ask(
                screen.all(JButton.class, b -> "total".equals(b.getName())).get(0)::getText);
        assertThat(after)
                .isNotEqualTo(before)
                .isEqualTo(screen.session().total().orElseThrow().text());
        assertThat(label("change")).startsWith("+$").endsWith(" by the last edit");
        GuiActionRunner.execute(() -> screen.session().undo());
        screen.settle();
        assertThat(screen.session().total().orElseThrow().text()).isEqualTo(before);
        assertThat(label("change")).startsWith("−$");
        assertThat(says("/walls/0/digging/handShare")).isEqualTo("10%");
    }

    @Test
    void aWordIsUndoneAndRedoneAsAWhole() {
        go(JobPage.PEOPLE);
        retype("/title", "Front wall");
        retype("/number", "77");
        GuiActionRunner.execute(() -> screen.session().undo());
        assertThat(says("/number")).isEqualTo("2026-014");
        assertThat(says("/title")).isEqualTo("Front wall");
        GuiActionRunner.execute(() -> screen.session().undo());
        assertThat(says("/title")).isEqualTo("Back and side basement walls");
        assertThat(label("saved")).isEqualTo("Saved");
        GuiActionRunner.execute(() -> screen.session().redo());
        assertThat(says("/title")).isEqualTo("Front wall");
        assertThat(label("saved")).isEqualTo("Not saved");
    }

    @Test
    void rowsAreDoubledMovedPastedAndTakenOut() {
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        screen.robot().click(walls);
        hand.press(screen.job(), "/walls duplicate");
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(3);
        int copy = screen.ask(walls::getSelectedRow);
        assertThat(screen.session().draft().shown("/walls/" + copy + "/label"))
                .as("the copy has a label of its own")
                .isEqualTo("C");
        hand.press(screen.job(), "/walls out");
        GuiActionRunner.execute(() -> walls.changeSelection(1, 0, false, false));
        hand.press(screen.job(), "/walls up");
        assertThat(screen.session().draft().shown("/walls/0/label")).isEqualTo("B");
        hand.press(screen.job(), "/walls down");
        screen.settle();
        assertThat(screen.session().history().isSaved()).as("as it was").isTrue();

        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(
                        new StringSelection("C\tfront wall\tSouth\t0 ft\t42'\t4'8\"\t\tblock\n"
                                + "D\t\"west \"\"long\"\" wall\"\twest\tnone\t28\t5 ft\t5 ft\tblock\n"),
                        null);
        GuiActionRunner.execute(() -> walls.clearSelection());
        hand.press(screen.job(), "/walls paste");
        screen.settle();
        Draft pasted = screen.session().draft();
        assertThat(pasted.rows("/walls")).isEqualTo(4);
        assertThat(pasted.shown("/walls/2/faces")).isEqualTo("south");
        assertThat(pasted.shown("/walls/2/length")).isEqualTo("42 ft");
        assertThat(pasted.shown("/walls/2/depth/start")).isEqualTo("4 ft 8 in");
        assertThat(pasted.shown("/walls/3/where")).isEqualTo("west \"long\" wall");
        assertThat(pasted.shown("/walls/3/from")).as("wrong, and kept").isEqualTo("none");
        assertThat(pasted.shown("/walls/3/length")).as("a bare number").isEqualTo("28 ft");
        assertThat(wrongs()).anySatisfy(described -> assertThat(described).contains("\"none\" does not fit here"));
        GuiActionRunner.execute(() -> screen.session().undo());
        assertThat(screen.session().draft().rows("/walls"))
                .as("one paste is one step")
                .isEqualTo(2);
    }

    @Test
    void typingBelowTheLastRowMakesARowAndLosesNoLetter() {
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        GuiActionRunner.execute(() -> walls.changeSelection(2, 1, false, false));
        screen.focus(walls);
        hand.type("front wall");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        hand.type("so");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        hand.type("26'6");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        screen.settle();
        Draft typed = screen.session().draft();
        assertThat(typed.rows("/walls")).isEqualTo(3);
        assertThat(typed.shown("/walls/2/label")).isEqualTo("C");
        assertThat(typed.shown("/walls/2/where")).isEqualTo("front wall");
        assertThat(typed.shown("/walls/2/faces")).isEqualTo("south");
        assertThat(typed.shown("/walls/2/length")).isEqualTo("26 ft 6 in");
    }

    /** A fast hand is ahead of a busy window; the toolkit drops keys that come while the keyboard changes cells. */
    @Test
    void whatIsTypedWhileTheWindowIsBusyReachesItsCells() throws AWTException {
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        GuiActionRunner.execute(() -> walls.changeSelection(2, 1, false, false));
        screen.focus(walls);
        CountDownLatch typedAll = new CountDownLatch(1);
        SwingUtilities.invokeLater(() -> {
            try {
                typedAll.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        });
        Robot keys = new Robot();
        for (int key : new int[] {
            KeyEvent.VK_F,
            KeyEvent.VK_R,
            KeyEvent.VK_O,
            KeyEvent.VK_N,
            KeyEvent.VK_T,
            KeyEvent.VK_TAB,
            KeyEvent.VK_S,
            KeyEvent.VK_O,
            KeyEvent.VK_TAB,
            KeyEvent.VK_TAB,
            KeyEvent.VK_2,
            KeyEvent.VK_6,
            KeyEvent.VK_SPACE,
            KeyEvent.VK_6,
            KeyEvent.VK_ENTER
        }) {
            keys.keyPress(key);
            keys.keyRelease(key);
            keys.delay(3);
        }
        typedAll.countDown();
        screen.arrive();
        screen.settle();
        Draft typed = screen.session().draft();
        assertThat(typed.shown("/walls/2/where")).isEqualTo("front");
        assertThat(typed.shown("/walls/2/faces")).isEqualTo("south");
        assertThat(typed.shown("/walls/2/length")).isEqualTo("26 ft 6 in");
    }

    @Test
    void escapeTakesBackTheRowThatTypingMade() {
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        Draft before = screen.session().draft();
        GuiActionRunner.execute(() -> walls.changeSelection(2, 1, false, false));
        screen.focus(walls);
        hand.type("fro");
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(3);
        screen.robot().pressAndReleaseKey(KeyEvent.VK_ESCAPE);
        screen.settle();
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(before.rows("/walls"));
    }

    @Test
    void tabLeavesAListAtItsEnd() {
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        GuiActionRunner.execute(
                () -> walls.changeSelection(walls.getRowCount() - 1, walls.getColumnCount() - 1, false, false));
        screen.focus(walls);
        screen.robot().pressAndReleaseKey(KeyEvent.VK_TAB);
        screen.waitFor(() -> !screen.ask(walls::isFocusOwner));
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(2);
    }

    @Test
    void gravestFaultLeadsToItsField() {
        GuiActionRunner.execute(
                () -> screen.session().edit(screen.session().draft().typed("/walls/1/condition/bow", "much")));
        screen.settle();
        JButton gravest =
                screen.all(JButton.class, b -> "gravest".equals(b.getName())).get(0);
        assertThat(screen.ask(gravest::getText)).startsWith("To fix – Wall B, Bow inward: \"much\" does not fit here.");
        screen.robot().click(gravest);
        screen.arrive();
        JTextComponent bow = field("/walls/0/condition/bow");
        screen.waitFor(() -> screen.ask(bow::isFocusOwner));
        assertThat(says("/walls/0/condition/bow")).isEqualTo("much");
        assertThat(screen.ask(table("/walls")::getSelectedRow)).isEqualTo(1);
    }

    @Test
    void whatLooksLikeMarkupIsShownAsTyped() {
        GuiActionRunner.execute(() -> screen.session()
                .edit(screen.session()
                        .draft()
                        .typed("/walls/0/where", "<html><h1>big</h1>")
                        .typed("/site/soil/texture", "<html><h1>loud</h1>")));
        screen.settle();
        go(JobPage.WALLS);
        JTable walls = table("/walls");
        int plain = screen.ask(
                () -> walls.prepareRenderer(walls.getCellRenderer(1, 1), 1, 1).getPreferredSize().height);
        int marked = screen.ask(
                () -> walls.prepareRenderer(walls.getCellRenderer(0, 1), 0, 1).getPreferredSize().height);
        assertThat(marked).as("a heading would be taller").isEqualTo(plain);
        JButton gravest =
                screen.all(JButton.class, b -> "gravest".equals(b.getName())).get(0);
        assertThat(screen.ask(() -> gravest.getPreferredSize().height)).isLessThan(40);
    }

    @Test
    void priceBookIsSearchedByWordsAndEnterTakesTheItem() {
        GuiActionRunner.execute(() -> screen.job().lookUp());
        screen.arrive();
        JTextField words = screen.all(JTextField.class, f -> "book words".equals(f.getName()))
                .get(0);
        screen.robot().click(words);
        hand.type("break asphalt");
        screen.robot().pressAndReleaseKey(KeyEvent.VK_ENTER);
        screen.settle();
        int row = screen.session().draft().rows("/items") - 1;
        assertThat(screen.session().draft().shown("/items/" + row + "/code")).isEqualTo("ASPH-OUT");
        assertThat(screen.session().draft().shown("/items/" + row + "/quantity"))
                .isEqualTo("1 sy");
        assertThat(screen.session().draft().shown("/items/" + row + "/reason"))
                .as("only the contractor knows")
                .isEmpty();
    }

    @Test
    void pressingTheTotalOpensItsWorkingAndALineOpensItsOwn() throws IOException {
        screen.robot()
                .click(screen.all(JButton.class, b -> "total".equals(b.getName()))
                        .get(0));
        screen.settle();
        JTree tree = screen.all(JTree.class, t -> "working".equals(t.getName())).get(0);
        assertThat(screen.ask(
                        () -> tree.getSelectionPath().getLastPathComponent().toString()))
                .startsWith("Total $25,172.00");
        go(JobPage.PRICE);
        JTable lines = table("lines");
        GuiActionRunner.execute(() -> lines.setRowSelectionInterval(0, 0));
        screen.arrive();
        String all = screen.ask(() -> {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < tree.getRowCount(); i++) {
                text.append(tree.getPathForRow(i).getLastPathComponent()).append('\n');
            }
            return text.toString();
        });
        assertThat(all).contains("5.9 cy × $125.78 = $742.10", "Wall A, Length");
        screen.picture("working-of-a-line");
        assertThat(Files.exists(file)).isTrue();
    }
}
