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

    /** Where the heads of the rows end. */
    private static final double FIRST = 71;

    private ProfileTable() {}

    /** Draws the rows and tells where they end. */
    static double draw(ProfileChain chain, ProfileFrame frame, DrawingSheet sheet) {
        List<ProfileStation> stations = ProfileStation.of(chain);
        double top = frame.foot() + 6;
        List<Double> columns = columns(stations, frame);
        for (int i = 0; i < stations.size(); i++) {
            Point at = new Point(frame.at(stations.get(i).feet(), 0).x(), top);
            sheet.line(at.plus(0, -6), at, Weight.THIN, Role.DIMENSION, false);
            sheet.line(at, new Point(columns.get(i), top + LEADERS - 5), Weight.THIN, Role.DIMENSION, false);
        }
        double y = top + LEADERS + ROW / 2;
        List<String> heads =
                List.of(ProfileWords.STATION, ProfileWords.GROUND, ProfileWords.INVERT, ProfileWords.COVER);
        for (int row = 0; row < heads.size(); row++) {
            sheet.draw(label(ProfileFrame.EDGE, y + row * ROW, heads.get(row), "start"));
            for (int i = 0; i < stations.size(); i++) {
                sheet.draw(label(columns.get(i), y + row * ROW, cell(row, stations.get(i)), "middle"));
            }
        }
        double rule = y + (heads.size() - 1) * ROW + 5;
        Point left = new Point(ProfileFrame.EDGE, rule);
        sheet.line(left, new Point(ProfileFrame.WIDTH - ProfileFrame.EDGE, rule), Weight.THIN, Role.DIMENSION, false);
        return reaches(chain, rule + ROW, sheet);
    }

    /** One line a reach: its name, length and slope. */
    private static double reaches(ProfileChain chain, double first, DrawingSheet sheet) {
        double y = first;
        double wide = ProfileFrame.WIDTH - 2 * ProfileFrame.EDGE;
        for (ProfileReach reach : chain.reaches()) {
            String text = reach.label() + ": " + ProfileWords.kind(reach.kind()) + ", "
                    + reach.length().text() + ", " + ProfileWords.slopeText(reach);
            sheet.draw(label(ProfileFrame.EDGE, y, LabelText.cut(text, LabelRequest.SMALL, wide), "start"));
            y += ROW;
        }
        String outlet = ProfileWords.outlet(chain);
        sheet.draw(label(ProfileFrame.EDGE, y, LabelText.cut(outlet, LabelRequest.SMALL, wide), "start"));
        return y + 5;
    }

    private static String cell(int row, ProfileStation station) {
        return switch (row) {
            case 0 -> ProfileWords.station(station.feet());
            case 1 -> ProfileStation.text(station.grades());
            case 2 -> ProfileStation.text(station.inverts());
            default -> station.cover().map(ProfileWords::cover).orElse(ProfileWords.NOT_MEASURED);
        };
    }

    /** The columns' middles: under their stations where there is room, else moved apart. */
    private static List<Double> columns(List<ProfileStation> stations, ProfileFrame frame) {
        List<Double> wanted = new ArrayList<>();
        List<Double> room = new ArrayList<>();
        double wide = Math.min(COLUMN, (ProfileFrame.WIDTH - FIRST) / stations.size());
        for (ProfileStation station : stations) {
            wanted.add(frame.at(station.feet(), 0).x());
            room.add(wide);
        }
        return LabelSpacing.spread(wanted, room, FIRST, ProfileFrame.WIDTH - 4);
    }

    private static Label label(double x, double y, String text, String anchor) {
        return new Label(x, y, text, anchor, LabelRequest.SMALL, false, Role.DIMENSION);
    }
}
