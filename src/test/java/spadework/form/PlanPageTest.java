// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.UIManager;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;
import spadework.office.files.JobsFolder;

/** The house is drawn by mouse and by keyboard; the lists of the job say the same, and undo takes both back. */
@WindowTest
class PlanPageTest {
    @TempDir
    Path jobs;

    private OnScreen screen;
    private FormRobot hand;
    private JComponent plan;

    @BeforeEach
    void open() throws IOException {
        JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
        screen = new OnScreen();
        hand = new FormRobot(screen, Draft.empty());
        screen.remembered().keep(jobs);
        screen.open(() -> screen.forms().newJob());
        screen.settle();
        GuiActionRunner.execute(() -> screen.session()
                .edit(screen.session()
                        .draft()
                        .typed("/site/house/eastWest", "42 ft")
                        .typed("/site/house/northSouth", "28 ft")));
        GuiActionRunner.execute(() -> screen.job().begin(JobPage.PLAN));
        screen.settle();
        plan = screen.all(JComponent.class, one -> "plan input".equals(one.getName()))
                .get(0);
        screen.waitFor("keyboard on the plan", () -> screen.ask(plan::isFocusOwner));
    }

    @AfterEach
    void close() {
        screen.close();
    }

    private String says(String place) {
        return screen.ask(() -> screen.session().draft().shown(place));
    }

    /** The point of the screen where a place of the house lies, in feet from its corner at the north-west. */
    private Point at(double east, double south) {
        return screen.ask(() -> {
            // As the canvas fits the house: 13 ft of room on each side, above the line of help.
            int help = plan.getFontMetrics(UIManager.getFont("defaultFont")).getHeight() + 10;
            int high = plan.getHeight() - help;
            double scale = Math.min(plan.getWidth() / (42 + 26.0), high / (28 + 26.0));
            Point2D corner = new Point2D.Double((plan.getWidth() - 42 * scale) / 2, (high - 28 * scale) / 2);
            return new Point(
                    (int) Math.round(corner.getX() + east * scale), (int) Math.round(corner.getY() + south * scale));
        });
    }

    private void drag(Point from, Point to) {
        screen.robot().pressMouse(plan, from, MouseButton.LEFT_BUTTON);
        screen.robot().moveMouse(plan, (from.x + to.x) / 2, (from.y + to.y) / 2);
        screen.robot().moveMouse(plan, to);
        screen.robot().releaseMouse(MouseButton.LEFT_BUTTON);
        screen.settle();
    }

    @Test
    void draggingAlongTheOutlineDigsAndCornersSnap() {
        drag(at(0.4, 0), at(41.4, 0.5));
        assertThat(says("/walls/0/faces")).isEqualTo("north");
        assertThat(says("/walls/0/from")).isEqualTo("0 ft");
        assertThat(says("/walls/0/length")).isEqualTo("42 ft");
        drag(at(42, 0.5), at(42, 25.8));
        assertThat(says("/walls/1/faces")).isEqualTo("east");
        assertThat(says("/walls/1/length")).isIn("26 ft", "25 ft 6 in");
        drag(at(42, 26), at(42, 20));
        assertThat(says("/walls/1/length")).as("its end moved").isIn("20 ft", "20 ft 6 in", "19 ft 6 in");
        screen.picture("plan-two-walls");
        GuiActionRunner.execute(() -> screen.session().undo());
        GuiActionRunner.execute(() -> screen.session().undo());
        screen.settle();
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(1);
    }

    /** The file measures from the west corner on the south side, from the north corner on the west side. */
    @Test
    void wallsOnTheSouthAndWestSidesAreMeasuredFromTheirCorners() {
        drag(at(42, 28), at(22, 28));
        assertThat(says("/walls/0/faces")).isEqualTo("south");
        assertThat(says("/walls/0/from")).isIn("21 ft 6 in", "22 ft", "22 ft 6 in");
        drag(at(0, 0.6), at(0, 10));
        assertThat(says("/walls/1/faces")).isEqualTo("west");
        assertThat(says("/walls/1/from")).isEqualTo("0 ft");
        assertThat(says("/walls/1/length")).isIn("9 ft 6 in", "10 ft", "10 ft 6 in");
    }

    @Test
    void groundThatIsDugIsShownBesideItsWall() {
        int bare = color(20, -4);
        assertThat(color(20, 32)).as("nothing is dug").isEqualTo(bare);
        drag(at(0.4, 0), at(41.4, 0.5));
        GuiActionRunner.execute(() -> screen.session()
                .edit(screen.session()
                        .draft()
                        .typed("/walls/0/depth/start", "6 ft")
                        .typed("/walls/0/depth/end", "6 ft")));
        screen.settle();
        assertThat(color(20, -4)).as("beside the wall").isNotEqualTo(bare);
        assertThat(color(20, 32)).as("behind the house").isEqualTo(bare);
        screen.picture("plan-dug-ground");
    }

    /** What the plan shows at a place of the house. */
    private int color(double east, double south) {
        Point at = at(east, south);
        return screen.ask(() -> {
            BufferedImage image = new BufferedImage(plan.getWidth(), plan.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = image.createGraphics();
            plan.paint(pen);
            pen.dispose();
            return image.getRGB(at.x, at.y);
        });
    }

    @Test
    void clickingASideDigsAllOfItThatIsFreeAndTheSelectedWallIsTypedBeside() {
        screen.robot().click(plan, at(20, 28));
        screen.settle();
        assertThat(says("/walls/0/faces")).isEqualTo("south");
        assertThat(says("/walls/0/length")).isEqualTo("42 ft");
        hand.replace(
                screen.all(JTextField.class, f -> "/walls/0/depth/start".equals(f.getName()) && f.isShowing())
                        .get(0),
                "5");
        screen.settle();
        assertThat(says("/walls/0/depth/start")).isEqualTo("5 ft");
    }

    @Test
    void keyboardAloneDigsDrainsAndPlacesAndTheListsSayTheSame() {
        hand.type("20");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(says("/walls/0/length")).isEqualTo("20 ft");
        hand.key(KeyEvent.VK_CONTROL, KeyEvent.VK_RIGHT);
        hand.type("26 6");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(says("/walls/1/faces")).isEqualTo("east");
        assertThat(says("/walls/1/length")).isEqualTo("26 ft 6 in");
        hand.key(KeyEvent.VK_LEFT);
        hand.type("t");
        hand.type("14");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(says("/site/limits/0/kind")).isEqualTo("tree");
        assertThat(says("/site/limits/0/wall")).isEqualTo("B");
        assertThat(says("/site/limits/0/distance")).isEqualTo("14 ft");
        hand.type("s");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(screen.session().draft().rows("/water/downspouts")).isEqualTo(1);
        hand.type("d");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(says("/water/drains/0/along")).contains("B");
        hand.type("o");
        hand.type("60");
        hand.key(KeyEvent.VK_ENTER);
        screen.settle();
        assertThat(says("/water/outlets/0/fromHouse")).isEqualTo("60 ft");
        screen.picture("plan-by-keyboard");
        hand.type("w");
        hand.key(KeyEvent.VK_DELETE);
        screen.settle();
        assertThat(screen.session().draft().rows("/walls")).isEqualTo(1);
        assertThat(screen.ask(() -> plan.getAccessibleContext().getAccessibleDescription()))
                .contains("Wall A", "north", "20 ft");
    }
}
