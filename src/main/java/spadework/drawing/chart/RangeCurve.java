// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Line;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** How many of a hundred outcomes lie at or under each amount, as a rising line; and where one amount lies. */
public final class RangeCurve {
    private static final double WIDTH = 260;
    private static final double LEFT = 30;
    private static final double HEAD = 16;
    private static final double HIGH = 84;
    private static final double SIZE = 9;
    private static final int PARTS = 4;

    private RangeCurve() {}

    /**
     * An amount on the line below.
     *
     * @param at the amount
     * @param text as printed
     */
    public record Mark(double at, String text) {}

    /**
     * Draws the chart.
     *
     * @param outcomes in rising order, at least two
     * @param here the amount that is marked
     * @param ends the least and the greatest amount
     * @param words the chart in words
     */
    public static Scene of(List<Double> outcomes, Mark here, List<Mark> ends, String words) {
        double low = Math.min(outcomes.get(0), here.at());
        double high = Math.max(outcomes.get(outcomes.size() - 1), here.at());
        double scale = (WIDTH - LEFT - 10) / Math.max(high - low, 1);
        double ground = HEAD + HIGH;
        List<Shape> shapes = new ArrayList<>();
        for (int part = 0; part <= PARTS; part++) {
            double y = ground - HIGH * part / PARTS;
            shapes.add(new Line(LEFT, y, WIDTH, y, Weight.THIN, Role.LIMIT, false));
            shapes.add(new Label(LEFT - 4, y + 3, 100 * part / PARTS + "%", "end", SIZE, false, Role.PLAIN));
        }
        double x = LEFT + (outcomes.get(0) - low) * scale;
        double y = ground;
        for (int i = 0; i < outcomes.size(); i++) {
            double nextX = LEFT + (outcomes.get(i) - low) * scale;
            double nextY = ground - HIGH * (i + 1) / outcomes.size();
            shapes.add(new Line(x, y, nextX, nextY, Weight.MEDIUM, Role.WALL, false));
            x = nextX;
            y = nextY;
        }
        double at = LEFT + (here.at() - low) * scale;
        shapes.add(new Line(at, HEAD, at, ground, Weight.MEDIUM, Role.PLAIN, false));
        String anchor = at > (LEFT + WIDTH) / 2 ? "end" : "start";
        shapes.add(new Label(at, HEAD - 4, here.text(), anchor, SIZE, true, Role.PLAIN));
        for (Mark end : ends) {
            double place = LEFT + (end.at() - low) * scale;
            String side = place > (LEFT + WIDTH) / 2 ? "end" : "start";
            shapes.add(new Label(place, ground + 13, end.text(), side, SIZE, false, Role.PLAIN));
        }
        return new Scene(WIDTH, ground + 18, shapes, words);
    }
}
