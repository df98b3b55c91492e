// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.crew;

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

/** Crews by day: a row for each crew, a column for each working day, a bar as wide as the part of the day it works. */
public final class CrewChart {
    /** Width of a landscape page without its margins, in points. */
    private static final double WIDTH = 700;

    private static final double NAMES = 90;
    private static final double HEAD = 30;
    private static final double ROW = 13;
    private static final double WIDEST_DAY = 40;
    private static final double SIZE = 8;
    private static final double PAD = 2;
    private static final String WEATHER = "weather";

    private CrewChart() {}

    /**
     * A day.
     *
     * @param number from 1
     * @param date short, as {@code 9/7}
     * @param bars one after the other
     */
    public record Day(int number, String date, List<Bar> bars) {
        public Day {
            bars = List.copyOf(bars);
        }
    }

    /**
     * Part of a day in which a crew works.
     *
     * @param crew its row, from 0
     * @param from where it begins, as a part of the day, 0 to 1
     * @param to where it ends
     */
    public record Bar(int crew, double from, double to) {}

    /**
     * Draws the chart.
     *
     * @param crews names of the rows
     * @param spare days kept for weather, drawn open behind the others
     * @param words the chart in words
     */
    public static Scene of(List<String> crews, List<Day> days, int spare, String words) {
        double step = Math.min(WIDEST_DAY, (WIDTH - NAMES - 1) / Math.max(1, days.size() + spare));
        double right = NAMES + step * (days.size() + spare);
        double bottom = HEAD + ROW * crews.size();
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            day(shapes, days.get(i), NAMES + i * step, step);
        }
        if (spare > 0) {
            double middle = NAMES + (days.size() + spare / 2.0) * step;
            shapes.add(new Label(middle, 23, WEATHER, "middle", SIZE - 1, false, Role.PLAIN));
        }
        for (int row = 0; row <= crews.size(); row++) {
            double y = HEAD + row * ROW;
            shapes.add(new Line(0, y, right, y, Weight.THIN, Role.SOIL, false));
            if (row < crews.size()) {
                String name = LabelText.cut(crews.get(row), SIZE + 1, NAMES - PAD);
                shapes.add(new Label(0, y + ROW - 3.5, name, "start", SIZE + 1, false, Role.PLAIN));
            }
        }
        for (int i = 0; i <= days.size() + spare; i++) {
            double x = NAMES + i * step;
            shapes.add(new Line(x, HEAD, x, bottom, Weight.THIN, Role.SOIL, false));
        }
        return new Scene(WIDTH, bottom + 2, shapes, words);
    }

    private static void day(List<Shape> shapes, Day day, double x, double step) {
        double middle = x + step / 2;
        shapes.add(new Label(middle, 12, Integer.toString(day.number()), "middle", SIZE + 1, true, Role.PLAIN));
        if (LabelText.width(day.date(), SIZE - 1) < step) {
            shapes.add(new Label(middle, 23, day.date(), "middle", SIZE - 1, false, Role.PLAIN));
        }
        for (Bar bar : day.bars()) {
            double from = x + step * bar.from();
            double to = x + step * bar.to();
            double top = HEAD + bar.crew() * ROW + PAD;
            double foot = HEAD + (bar.crew() + 1) * ROW - PAD;
            shapes.add(new Area(
                    List.of(new Point(from, top), new Point(to, top), new Point(to, foot), new Point(from, foot)),
                    Weight.THIN,
                    Role.WALL));
        }
    }
}
