// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.form.field.RowsTable;
import spadework.form.page.FormPage;
import spadework.form.page.JobPage;
import spadework.form.page.PagesOnDemand;
import spadework.form.view.ScenePanel;

/** How pages behave under the hand: the wheel, rare groups, messages, drawings, and when they are built. */
@WindowTest
class PageBehaviorTest {
    @TempDir
    Path folder;

    private static FormPage go(OnScreen screen, JobPage page) {
        GuiActionRunner.execute(() -> screen.job().go(page));
        screen.settle();
        return screen.ask(() -> screen.job().page(page));
    }

    private static int top(OnScreen screen, Component in) {
        return screen.ask(
                () -> ((JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, in)).getViewPosition().y);
    }

    private static JTable table(OnScreen screen, FormPage page, String list) {
        return screen.ask(() -> page.tables().stream()
                .map(RowsTable::table)
                .filter(one -> list.equals(one.getName()))
                .findFirst()
                .orElseThrow());
    }

    @Test
    void wheelOverAListScrollsTheListAndAtItsEndThePage() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormPage page = go(screen, JobPage.WATER);
            JTable drains = table(screen, page, "/water/drains");
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.wheel(drains, new Point(30, 5), 2);
            int moved = top(screen, page);
            assertThat(moved).as("nothing to scroll in the list: the page goes").isPositive();
            GuiActionRunner.execute(() -> {
                Draft draft = screen.session().draft();
                for (int i = 0; i < 14; i++) {
                    draft = draft.insertedBlank("/excluded", 0);
                }
                screen.session().edit(draft);
            });
            FormPage terms = go(screen, JobPage.TERMS);
            JTable list = table(screen, terms, "/excluded");
            GuiActionRunner.execute(() -> ((JComponent) list.getParent())
                    .scrollRectToVisible(
                            new Rectangle(0, 0, 10, list.getParent().getHeight())));
            screen.settle();
            int before = top(screen, terms);
            int at = top(screen, list);
            hand.wheel(list.getParent(), new Point(20, 20), 1);
            assertThat(top(screen, list)).as("the list scrolls").isGreaterThan(at);
            assertThat(top(screen, terms)).as("and the page does not").isEqualTo(before);
            for (int i = 0; i < 30 && top(screen, terms) == before; i++) {
                hand.wheel(list.getParent(), new Point(20, 20), 2);
            }
            assertThat(top(screen, terms))
                    .as("at the end of the list the page goes")
                    .isGreaterThan(before);
        }
    }

    @Test
    void rareGroupSaysWhatIsInItOpensByClickAndKeyboardAndIsRemembered() throws IOException {
        Path file = SampleCopies.of("block-basement-to-swale", folder);
        try (OnScreen screen = OnScreen.job(file)) {
            FormPage page = go(screen, JobPage.PEOPLE);
            GuiActionRunner.execute(() ->
                    screen.session().edit(screen.session().draft().typed("/customer/mailing/city", "Marrowbrook")));
            screen.settle();
            JButton heading = heading(screen, page, "open mailing");
            assertThat(screen.ask(() -> heading.getAccessibleContext().getAccessibleName()))
                    .contains("City");
            assertThat(screen.all(JTextArea.class, one -> "in mailing".equals(one.getName()) && one.isShowing()))
                    .extracting(JTextArea::getText)
                    .singleElement()
                    .asString()
                    .contains("City");
            JTextField city = screen.all(JTextField.class, one -> "/customer/mailing/city".equals(one.getName()))
                    .get(0);
            assertThat(screen.ask(city::isShowing)).isFalse();
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.press(page, "open mailing");
            screen.settle();
            assertThat(screen.ask(city::isShowing)).isTrue();
            screen.focus(heading);
            hand.key(KeyEvent.VK_SPACE);
            screen.settle();
            assertThat(screen.ask(city::isShowing)).isFalse();
            hand.key(KeyEvent.VK_SPACE);
            screen.settle();
            assertThat(screen.remembered().openGroups()).containsExactly("people.mailing");
            GuiActionRunner.execute(() -> screen.job().reveal("/customer/mailing/zip"));
            screen.settle();
            assertThat(screen.ask(city::isShowing)).isTrue();
        }
    }

    @Test
    void goingToAPlaceInAClosedGroupOpensIt() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().reveal("/customer/mailing/zip"));
            screen.settle();
            screen.waitFor(
                    "the keyboard in the field",
                    () -> screen.all(
                                            JTextField.class,
                                            one -> "/customer/mailing/zip".equals(one.getName()) && one.isFocusOwner())
                                    .size()
                            == 1);
        }
    }

    private static JButton heading(OnScreen screen, FormPage page, String name) {
        return screen.all(
                        JButton.class, one -> name.equals(one.getName()) && SwingUtilities.isDescendingFrom(one, page))
                .get(0);
    }

    @Test
    void nothingMovesWhenAMessageComesOrGoes() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormPage page = go(screen, JobPage.PEOPLE);
            Map<String, Rectangle> before = places(screen, page);
            GuiActionRunner.execute(() -> screen.job().notice().say("Something has to be known. ".repeat(12)));
            screen.settle();
            assertThat(places(screen, page)).isEqualTo(before);
            FormRobot hand = new FormRobot(screen, Draft.empty());
            JTextField issued = screen.all(JTextField.class, one -> "/issued".equals(one.getName()) && one.isShowing())
                    .get(0);
            hand.replace(issued, "no day");
            screen.settle();
            screen.picture("message-and-fault");
            assertThat(screen.session().faults()).isNotEmpty();
            assertThat(places(screen, page)).isEqualTo(before);
            hand.press(screen.job(), "notice.away");
            screen.settle();
            assertThat(places(screen, page)).isEqualTo(before);
        }
    }

    private static Map<String, Rectangle> places(OnScreen screen, FormPage page) {
        return screen.ask(() -> {
            Map<String, Rectangle> places = new LinkedHashMap<>();
            page.entries().stream()
                    .map(entry -> entry.control())
                    .filter(JComponent::isShowing)
                    .forEach(control -> places.put(
                            control.getName(), new Rectangle(control.getLocationOnScreen(), control.getSize())));
            screen.job();
            return places;
        });
    }

    @Test
    void sectionIsZoomedByWheelKeysAndButtonsAndMovedByHand() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().show(SidePane.DRAWING));
            screen.settle();
            ScenePanel section = screen.all(ScenePanel.class, one -> "section".equals(one.getName()))
                    .get(0);
            FormRobot hand = new FormRobot(screen, Draft.empty());
            hand.wheel(section, new Point(80, 60), -2);
            double near = screen.ask(section::zoomed);
            assertThat(near).isGreaterThan(1.3);
            screen.picture("section-zoomed");
            screen.robot().click(section);
            hand.key(KeyEvent.VK_MINUS);
            screen.settle();
            assertThat(screen.ask(section::zoomed)).isLessThan(near);
            hand.press(screen.job(), "section larger");
            screen.settle();
            assertThat(screen.ask(section::zoomed)).isGreaterThan(1);
            hand.press(screen.job(), "section all");
            screen.settle();
            assertThat(screen.ask(section::zoomed)).isEqualTo(1);
        }
    }

    @Test
    void everyPlaceOfTheFormatIsFoundBeforeItsPageIsBuilt() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            for (String place : FileSchema.job().places()) {
                if (!place.matches("/\\$schema|/format")) {
                    JobPage page = PagesOnDemand.holding(place).orElseThrow(() -> new AssertionError(place));
                    assertThat(screen.ask(() -> screen.job().page(page).holds(place)))
                            .as(place + " on " + page)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void pagesNobodyWentToAreNotBuilt() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            assertThat(screen.all(FormPage.class, page -> true)).hasSize(1);
            GuiActionRunner.execute(() -> screen.job().go(JobPage.WATER));
            assertThat(screen.all(FormPage.class, page -> true)).hasSize(2);
            assertThat(screen.all(JScrollPane.class, JScrollPane::isShowing)).isNotEmpty();
        }
    }

    @Test
    void windowOpensWhereAndAsLargeAsItWasLeft() throws IOException {
        Path job = SampleCopies.of("block-basement-to-swale", folder);
        Rectangle left = new Rectangle(60, 40, 1100, 660);
        try (OnScreen screen = OnScreen.job(job)) {
            GuiActionRunner.execute(() -> screen.job().setBounds(left));
            screen.settle();
            JobWindow first = screen.job();
            GuiActionRunner.execute(first::leave);
            screen.waitFor("the end of the first window", () -> !screen.ask(first::isDisplayable));
            screen.open(() -> screen.forms().openJob(job));
            screen.settle();
            assertThat(screen.ask(() -> screen.job().getBounds())).isEqualTo(left);
        }
    }

    @Test
    void whatLiesBesideThePageGivesWayAndComesWhenAskedFor() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            GuiActionRunner.execute(() -> screen.job().setSize(800, 600));
            screen.settle();
            ScenePanel section = screen.all(ScenePanel.class, one -> "section".equals(one.getName()))
                    .get(0);
            FormPage page = go(screen, JobPage.WALLS);
            assertThat(screen.ask(page::getWidth)).as("the page has the window").isGreaterThan(740);
            GuiActionRunner.execute(() -> screen.job().show(SidePane.DRAWING));
            screen.settle();
            assertThat(screen.ask(section::getWidth)).isGreaterThan(240);
        }
    }
}
