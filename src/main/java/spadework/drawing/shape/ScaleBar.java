// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.List;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** A bar of a round number of feet, with what is to scale and what is not. */
public final class ScaleBar {
    public static final String FEET = " ft";

    private static final double[] BARS = {1, 2, 5, 10, 20, 50, 100, 200};
    private static final double LONGEST = 75;
    private static final double GAP = 11;
    private static final double ROW = 11;

    private ScaleBar() {}

    /**
     * Draws the bar, the longest that stays under 75 points, with its words beside it in as many rows as they need.
     *
     * @param at where it begins, on the base line of its words
     * @param scale points a foot
     * @param right where the words have to end
     * @return the base line of the last row
     */
    public static double draw(Point at, double scale, String words, double right, DrawingSheet sheet) {
        double feet = BARS[0];
        for (double bar : BARS) {
            feet = bar * scale <= LONGEST ? bar : feet;
        }
        double left = at.x();
        double y = at.y();
        double end = left + feet * scale;
        sheet.draw(new Line(left, y - 3, end, y - 3, Weight.MEDIUM, Role.PLAIN, false));
        for (double x : new double[] {left, end}) {
            sheet.draw(new Line(x, y - 7, x, y + 1, Weight.MEDIUM, Role.PLAIN, false));
        }
        String text = (int) feet + FEET;
        double after = end + 5;
        sheet.draw(new Label(after, y, text, "start", LabelRequest.SMALL, false, Role.PLAIN));
        after += LabelText.width(text, LabelRequest.SMALL) + GAP;
        List<String> rows = LabelText.wrapped(words, LabelRequest.SMALL, right - after);
        for (int i = 0; i < rows.size(); i++) {
            sheet.draw(new Label(after, y + i * ROW, rows.get(i), "start", LabelRequest.SMALL, false, Role.PLAIN));
        }
        return y + (rows.size() - 1) * ROW;
    }
}
