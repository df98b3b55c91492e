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
    private static final double SAMPLE = 24;
    private static final double AFTER = 5;
    private static final double APART = 16;

    private SectionLegend() {}

    /**
     * Draws it.
     *
     * @param y the base line of its words
     * @param scale points a foot
     */
    static void draw(double y, double scale, DrawingSheet sheet) {
        ScaleBar.draw(SectionFrame.EDGE, y, scale, SectionWords.SCALE, sheet);
        double x = sample(FROM, y, Role.WALL, SectionWords.MEASURED, sheet);
        sample(x, y, Role.UNMEASURED, SectionWords.UNMEASURED, sheet);
    }

    private static double sample(double x, double y, Role role, String words, DrawingSheet sheet) {
        sheet.line(new Point(x, y - 3), new Point(x + SAMPLE, y - 3), Weight.MEDIUM, role, false);
        double text = x + SAMPLE + AFTER;
        sheet.draw(new Label(text, y, words, "start", LabelRequest.SMALL, false, Role.PLAIN));
        return text + LabelText.width(words, LabelRequest.SMALL) + APART;
    }
}
