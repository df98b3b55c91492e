// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.ScaleBar;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** The line under a section: its scale, and which lines were measured and which have only their usual size. */
final class SectionLegend {
    private static final double FROM = 162;
    private static final double ROW = 13;
    private static final double SAMPLE = 24;
    private static final double AFTER = 5;
    private static final double APART = 16;

    private SectionLegend() {}

    /**
     * Draws it and tells where its last row stands.
     *
     * @param y the base line of its words
     * @param scale points a foot
     */
    static double draw(double y, double scale, SectionWords words, DrawingSheet sheet) {
        Point left = new Point(SectionFrame.EDGE, y);
        ScaleBar.draw(left, scale, words.scale(), FROM, sheet);
        Point next = sample(new Point(FROM, y), Role.WALL, words.measured(), sheet);
        double end = next.x() + SAMPLE + AFTER + LabelText.width(words.unmeasured(), LabelRequest.SMALL);
        Point at = end > SectionFrame.WIDTH - SectionFrame.EDGE ? new Point(FROM, y + ROW) : next;
        sample(at, Role.UNMEASURED, words.unmeasured(), sheet);
        return at.y();
    }

    private static Point sample(Point at, Role role, String words, DrawingSheet sheet) {
        double x = at.x();
        double y = at.y();
        sheet.line(new Point(x, y - 3), new Point(x + SAMPLE, y - 3), Weight.MEDIUM, role, false);
        double text = x + SAMPLE + AFTER;
        sheet.draw(new Label(text, y, words, "start", LabelRequest.SMALL, false, Role.PLAIN));
        return new Point(text + LabelText.width(words, LabelRequest.SMALL) + APART, y);
    }
}
