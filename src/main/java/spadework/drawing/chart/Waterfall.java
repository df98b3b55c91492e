// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Area;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** From a first amount to a last one: a bar for each step that is added, between a bar for each end. */
public final class Waterfall {
    private static final double WIDTH = 430;
    private static final double HEAD = 16;
    private static final double HIGH = 84;
    private static final double NAMES = 18;
    private static final double SIZE = 9;
    private static final double GAP = 10;

    private Waterfall() {}

    /**
     * A bar.
     *
     * @param name under the bar
     * @param amount what it adds; below zero where it takes away; of a whole bar the amount itself
     * @param text the amount as printed
     * @param whole whether it stands on the ground line
     */
    public record Bar(String name, double amount, String text, boolean whole) {}

    /**
     * Draws the chart.
     *
     * @param bars at least one, the first of them whole
     * @param words the chart in words
     */
    public static Scene of(List<Bar> bars, String words) {
        double most = bars.stream().mapToDouble(Bar::amount).max().orElse(1);
        double scale = HIGH / Math.max(most, 1);
        double step = WIDTH / bars.size();
        double ground = HEAD + HIGH;
        List<Shape> shapes = new ArrayList<>();
        double level = 0;
        for (int i = 0; i < bars.size(); i++) {
            Bar bar = bars.get(i);
            double before = bar.whole() ? 0 : level;
            level = before + bar.amount();
            double left = i * step;
            double right = left + step - GAP;
            double top = ground - Math.max(before, level) * scale;
            double foot = Math.min(ground - Math.min(before, level) * scale, ground);
            if (foot - top >= 0.5) {
                shapes.add(new Area(
                        List.of(
                                new Point(left, top),
                                new Point(right, top),
                                new Point(right, foot),
                                new Point(left, foot)),
                        Weight.THIN,
                        Role.WALL));
            }
            double middle = (left + right) / 2;
            shapes.add(new Label(middle, top - 4, bar.text(), "middle", SIZE, true, Role.PLAIN));
            String name = LabelText.cut(bar.name(), SIZE, step - 2);
            shapes.add(new Label(middle, ground + 13, name, "middle", SIZE, false, Role.PLAIN));
            if (i + 1 < bars.size()) {
                double y = ground - level * scale;
                shapes.add(new Line(right, y, right + GAP, y, Weight.THIN, Role.PLAIN, false));
            }
        }
        shapes.add(new Line(0, ground, WIDTH - GAP, ground, Weight.MEDIUM, Role.PLAIN, false));
        return new Scene(WIDTH, ground + NAMES, shapes, words);
    }
}
