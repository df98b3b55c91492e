// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.drawing.PlanJob;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.OutletKind;
import spadework.job.Side;
import spadework.job.TeeAt;

/** What keeps clear of words and trees on the plan. */
class PlanClearanceTest {
    /** Half of what two lines of the hatching lie apart, points. */
    private static final double WHITE = 3;

    private static PlanJob house() {
        return PlanJob.house(40, 28)
                .wall("A", Side.NORTH, 0, 40)
                .drain("D1", TeeAt.END, "M1", "A")
                .main("M1", "O1")
                .outlet("O1", OutletKind.DAYLIGHT, "ditch along the east lot line");
    }

    @Test
    void hatchingLeavesTheNameOfTheDrainInWhite() {
        Scene plan = PlanSketch.of(house().job());
        Label name = plan.shapes().stream()
                .filter(shape -> shape instanceof Label label && label.text().equals("D1"))
                .map(Label.class::cast)
                .findFirst()
                .orElseThrow();

        assertThat(hatching(plan))
                .isNotEmpty()
                .noneMatch(line -> crosses(line, LabelText.box(name).grown(WHITE)));
    }

    @Test
    void hatchingLeavesATreeInWhite() {
        Scene plan = PlanSketch.of(house().limit(LimitKind.TREE, "A", 7).job());
        Dot tree = tree(plan);

        assertThat(hatching(plan))
                .noneMatch(line -> crosses(
                        line, Rect.around(new Point(tree.x(), tree.y()), 2 * tree.radius(), 2 * tree.radius())));
    }

    /** A lot line behind a tree: the broken line that ties it to its wall does not point through the tree. */
    @Test
    void noTieStandsInLineWithATree() {
        Job job = house().limit(LimitKind.TREE, "A", 24)
                .limit(LimitKind.PROPERTY_LINE, "A", 38)
                .job();
        Scene plan = PlanSketch.of(job);
        Dot tree = tree(plan);

        List<Line> above = plan.shapes().stream()
                .filter(shape -> shape instanceof Line line
                        && line.role() == Role.BREAK
                        && Math.max(line.y1(), line.y2()) < tree.y() - tree.radius())
                .map(Line.class::cast)
                .toList();

        assertThat(above)
                .isNotEmpty()
                .allMatch(line -> Math.abs((line.x1() + line.x2()) / 2 - tree.x()) > tree.radius());
    }

    private static List<Line> hatching(Scene plan) {
        return plan.shapes().stream()
                .filter(shape -> shape instanceof Line line
                        && line.role() == Role.DUG
                        && Math.abs(line.x1() + line.y1() - line.x2() - line.y2()) < 1e-6)
                .map(Line.class::cast)
                .toList();
    }

    private static boolean crosses(Line line, Rect box) {
        return new Rectangle2D.Double(box.left(), box.top(), box.width(), box.height())
                .intersectsLine(line.x1(), line.y1(), line.x2(), line.y2());
    }

    private static Dot tree(Scene plan) {
        return plan.shapes().stream()
                .filter(shape -> shape instanceof Dot dot && dot.role() == Role.LIMIT && !dot.filled())
                .map(Dot.class::cast)
                .findFirst()
                .orElseThrow();
    }
}
