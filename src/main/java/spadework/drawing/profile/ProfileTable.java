// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpacing;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;

/** Below the figure: a column of figures at each station, and between two columns what lies between them. */
public final class ProfileTable {
    private static final double ROW = 13;
    private static final double LEADERS = 20;
    private static final double COLUMN = 82;

    /** Where the heads of the rows end; longer ones go on. */
    private static final double FIRST = 71;

    /** Between the longest head and the first column. */
    private static final double AFTER_HEADS = 6;

    private final ProfileWords words;
    private final DrawingSheet sheet;

    ProfileTable(ProfileWords words, DrawingSheet sheet) {
        this.words = words;
        this.sheet = sheet;
    }

    /** Draws the rows and tells where they end. */
    double draw(ProfileChain chain, ProfileFrame frame) {
        List<ProfileStation> stations = ProfileStation.of(chain);
        double top = frame.foot() + 6;
        List<String> heads = words.heads();
        List<Double> columns = columns(stations, frame, first(heads));
        for (int i = 0; i < stations.size(); i++) {
            Point at = new Point(frame.at(stations.get(i).feet(), 0).x(), top);
            sheet.line(at.plus(0, -6), at, Weight.THIN, Role.DIMENSION, false);
            sheet.line(at, new Point(columns.get(i), top + LEADERS - 5), Weight.THIN, Role.DIMENSION, false);
        }
        double y = top + LEADERS + ROW / 2;
        for (int row = 0; row < heads.size(); row++) {
            sheet.draw(label(ProfileFrame.EDGE, y + row * ROW, heads.get(row), "start"));
            for (int i = 0; i < stations.size(); i++) {
                sheet.draw(label(columns.get(i), y + row * ROW, cell(row, stations.get(i)), "middle"));
            }
        }
        double rule = y + (heads.size() - 1) * ROW + 5;
        Point left = new Point(ProfileFrame.EDGE, rule);
        sheet.line(left, new Point(ProfileFrame.WIDTH - ProfileFrame.EDGE, rule), Weight.THIN, Role.DIMENSION, false);
        return reaches(chain, rule + ROW);
    }

    /** One line a reach: its name, length and slope. */
    private double reaches(ProfileChain chain, double first) {
        double y = first;
        double wide = ProfileFrame.WIDTH - 2 * ProfileFrame.EDGE;
        for (ProfileReach reach : chain.reaches()) {
            String text = reach.label() + ": " + words.kind(reach.kind()) + ", "
                    + reach.length().text() + ", " + words.slopeText(reach);
            sheet.draw(label(ProfileFrame.EDGE, y, LabelText.cut(text, LabelRequest.SMALL, wide), "start"));
            y += ROW;
        }
        String outlet = words.outlet(chain);
        sheet.draw(label(ProfileFrame.EDGE, y, LabelText.cut(outlet, LabelRequest.SMALL, wide), "start"));
        return y + 5;
    }

    private String cell(int row, ProfileStation station) {
        return switch (row) {
            case 0 -> ProfileWords.station(station.feet());
            case 1 -> words.levels(station.grades());
            case 2 -> words.levels(station.inverts());
            default -> station.cover().map(words::cover).orElse(words.notMeasured());
        };
    }

    /** The columns' middles: under their stations where there is room, else moved apart. */
    private static List<Double> columns(List<ProfileStation> stations, ProfileFrame frame, double first) {
        List<Double> wanted = new ArrayList<>();
        List<Double> room = new ArrayList<>();
        double wide = Math.min(COLUMN, (ProfileFrame.WIDTH - first) / stations.size());
        for (ProfileStation station : stations) {
            wanted.add(frame.at(station.feet(), 0).x());
            room.add(wide);
        }
        return LabelSpacing.spread(wanted, room, first, ProfileFrame.WIDTH - 4);
    }

    private static double first(List<String> heads) {
        double widest = heads.stream()
                .mapToDouble(head -> LabelText.width(head, LabelRequest.SMALL))
                .max()
                .orElse(0);
        return Math.max(FIRST, ProfileFrame.EDGE + widest + AFTER_HEADS);
    }

    private static Label label(double x, double y, String text, String anchor) {
        return new Label(x, y, text, anchor, LabelRequest.SMALL, false, Role.DIMENSION);
    }
}
