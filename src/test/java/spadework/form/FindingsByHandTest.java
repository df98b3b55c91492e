// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;
import spadework.form.view.FoundItem;

/** What was found: grouped by who has to act, counted in the bar below, gone to and fixed by a button. */
@WindowTest
class FindingsByHandTest {
    @TempDir
    Path folder;

    private OnScreen screen;
    private FormRobot hand;

    @BeforeEach
    void open() throws IOException {
        screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder));
        hand = new FormRobot(screen, Draft.empty());
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private void write(String pointer, String typed) {
        GuiActionRunner.execute(
                () -> screen.session().edit(screen.session().draft().typed(pointer, typed)));
        screen.settle();
    }

    private JList<?> list() {
        return screen.all(JList.class, one -> "found".equals(one.getName())).get(0);
    }

    private List<FoundItem> shown() {
        JList<?> list = list();
        return screen.ask(() -> IntStream.range(0, list.getModel().getSize())
                .mapToObj(row -> (FoundItem) list.getModel().getElementAt(row))
                .toList());
    }

    private void click(int row) {
        JList<?> list = list();
        Rectangle cell = screen.ask(() -> {
            list.ensureIndexIsVisible(row);
            return list.getCellBounds(row, row);
        });
        screen.still();
        screen.robot().click(list, new Point(cell.x + 30, cell.y + cell.height - 12));
        screen.waitFor("row " + row, () -> screen.ask(list::getSelectedIndex) == row);
        screen.settle();
    }

    private <T extends JComponent> T named(Class<T> kind, String name) {
        return screen.all(kind, one -> name.equals(one.getName())).get(0);
    }

    @Test
    void likelyFixIsWrittenFromTheFinding() {
        write("/site/soil/texture", "silty cley");
        hand.press(screen.job(), "count fix");
        screen.settle();
        assertThat(shown()).allMatch(item -> item.group() == FoundItem.Group.FIX);
        click(0);
        screen.picture("finding-to-fix");
        hand.press(screen.job(), "found fix silty clay");
        screen.settle();
        assertThat(screen.session().draft().shown("/site/soil/texture")).isEqualTo("silty clay");
        assertThat(screen.session().faults()).isEmpty();
    }

    @Test
    void findingIsGoneToByMouseAndByKeyboard() {
        write("/walls/1/condition/bow", "much");
        hand.press(screen.job(), "count fix");
        click(0);
        hand.press(screen.job(), "found found.go");
        screen.arrive();
        JTextField bow = screen.all(JTextField.class, one -> "/walls/0/condition/bow".equals(one.getName()))
                .get(0);
        screen.waitFor("keyboard in the field", () -> screen.ask(bow::isFocusOwner));
        GuiActionRunner.execute(() -> screen.job().go(JobPage.PRICE));
        screen.focus(list());
        hand.key(KeyEvent.VK_ENTER);
        screen.waitFor("keyboard in the field again", () -> screen.ask(bow::isFocusOwner));
    }

    @Test
    void barCountsByWhoHasToActAndShowsThemAlone() {
        JButton crew = named(JButton.class, "count crew");
        String said = screen.ask(crew::getText);
        assertThat(said).matches("[1-9]\\d* for the crew");
        hand.press(screen.job(), "count crew");
        screen.settle();
        screen.picture("findings-for-the-crew");
        assertThat(shown())
                .hasSize(Integer.parseInt(said.replaceAll("\\D", "")))
                .allMatch(item -> item.group() == FoundItem.Group.CREW);
        assertThat(screen.ask(named(JToggleButton.class, "found crew")::isSelected))
                .isTrue();
        hand.press(screen.job(), "found all");
        screen.settle();
        assertThat(shown()).extracting(FoundItem::group).contains(FoundItem.Group.OFFICE);
        assertThat(screen.ask(named(JButton.class, "count fix")::isVisible))
                .as("nothing is to fix")
                .isFalse();
    }

    @Test
    void barSaysTheFootAndTheDaysAndNothingOverlaps() {
        write("/items/0/code", "ASPH-OUT");
        write("/items/0/quantity", "1 sy");
        write("/items/0/section", "ground");
        write("/items/0/reason", "over the trench");
        assertThat(screen.session().faults()).isEmpty();
        // 68 ft of wall: 42 ft and 26 ft
        BigDecimal total = screen.session().total().orElseThrow().amount();
        String foot =
                total.divide(new BigDecimal("68"), 2, RoundingMode.HALF_UP).toPlainString();
        assertThat(screen.ask(named(JLabel.class, "figures")::getText))
                .isEqualTo("$" + foot + " a foot, 13 working days");
        assertThat(screen.ask(named(JLabel.class, "change")::getText)).endsWith(" by the last edit");
        screen.picture("bar");
        List<Rectangle> places = screen.ask(() -> List.of(
                named(JButton.class, "total").getBounds(),
                named(JLabel.class, "change").getBounds(),
                named(JLabel.class, "figures").getBounds(),
                named(JButton.class, "gravest").getBounds(),
                named(JLabel.class, "saved").getBounds()));
        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i).x)
                    .as("place " + i)
                    .isGreaterThanOrEqualTo(places.get(i - 1).x + places.get(i - 1).width);
        }
        assertThat(screen.ask(() -> named(JLabel.class, "change").getPreferredSize().width))
                .isLessThanOrEqualTo(places.get(1).width);
    }

    @Test
    void oneKeyShowsTheMarginAndHidesIt() {
        JLabel margin = named(JLabel.class, "margin");
        assertThat(screen.ask(margin::isShowing)).isFalse();
        hand.key(KeyEvent.VK_F8);
        screen.waitFor("the margin", () -> screen.ask(margin::isShowing));
        assertThat(screen.ask(margin::getText)).matches("margin \\d+(\\.\\d+)?%");
        screen.picture("bar-with-margin");
        hand.key(KeyEvent.VK_F8);
        screen.waitFor("no margin", () -> !screen.ask(margin::isShowing));
        assertThat(screen.ask(margin::getText)).isEmpty();
    }
}
