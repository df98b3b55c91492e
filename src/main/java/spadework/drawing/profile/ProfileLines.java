// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.profile;

import java.util.List;
import java.util.Locale;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.measure.Length;

/** The figure of a profile: the levels at its side, the ground, each pipe with bottom and top, and the outlet. */
public final class ProfileLines {
    private static final double MARK = 1.6;

    private ProfileLines() {}

    static void draw(ProfileChain chain, ProfileFrame frame, DrawingSheet sheet) {
        axis(frame, sheet);
        double feet = 0;
        for (ProfileReach reach : chain.reaches()) {
            double end = feet + reach.length().feet();
            pipe(reach, feet, end, frame, sheet);
            ground(reach, feet, frame, sheet);
            feet = end;
        }
        chain.outletLevel().ifPresent(level -> outlet(chain.feet(), level.feet(), frame, sheet));
    }

    private static void axis(ProfileFrame frame, DrawingSheet sheet) {
        double x = ProfileFrame.LEFT - 6;
        sheet.line(new Point(x, ProfileFrame.TOP), new Point(x, frame.foot()), Weight.THIN, Role.DIMENSION, false);
        int decimals = frame.step() < 0.5 ? 2 : frame.step() < 1 ? 1 : 0;
        double lowest = Math.ceil(frame.low() / frame.step()) * frame.step();
        for (double level = lowest; level <= frame.high(); level += frame.step()) {
            double y = frame.at(0, level).y();
            sheet.line(new Point(x - 3, y), new Point(x, y), Weight.THIN, Role.DIMENSION, false);
            String text = String.format(Locale.ROOT, "%." + decimals + "f", level);
            sheet.draw(new Label(x - 6, y + 3, text, "end", LabelRequest.SMALL, false, Role.DIMENSION));
        }
    }

    /** Bottom and top of the pipe; without both levels only the known end is marked. */
    private static void pipe(ProfileReach reach, double start, double end, ProfileFrame frame, DrawingSheet sheet) {
        Role role = role(reach.kind());
        if (reach.isLeveled()) {
            Point from = frame.at(start, reach.startInvert().orElseThrow().feet());
            Point to = frame.at(end, reach.endInvert().orElseThrow().feet());
            sheet.pipe(List.of(from, to), Weight.MEDIUM, role, false);
            double up = -reach.insideDiameter().feet() * frame.upright();
            sheet.line(from.plus(0, up), to.plus(0, up), Weight.THIN, role, false);
        }
        reach.startInvert().ifPresent(level -> mark(level, start, role, frame, sheet));
        reach.endInvert().ifPresent(level -> mark(level, end, role, frame, sheet));
    }

    /** From corner to corner: at a corner the ground can stand higher or lower than straight between the ends. */
    private static void ground(ProfileReach reach, double start, ProfileFrame frame, DrawingSheet sheet) {
        List<GroundPoint> ground = reach.ground();
        for (int i = 1; i < ground.size(); i++) {
            Point from = at(ground.get(i - 1), start, frame);
            Point to = at(ground.get(i), start, frame);
            sheet.line(from, to, Weight.MEDIUM, Role.GROUND, false);
            Hatching.ticks(from, to, -0.7, 0.9, sheet);
        }
        double end = start + reach.length().feet();
        reach.startGrade().ifPresent(level -> mark(level, start, Role.GROUND, frame, sheet));
        reach.between().forEach(point -> mark(point.level(), start + point.at().feet(), Role.GROUND, frame, sheet));
        reach.endGrade().ifPresent(level -> mark(level, end, Role.GROUND, frame, sheet));
    }

    private static Point at(GroundPoint point, double start, ProfileFrame frame) {
        return frame.at(start + point.at().feet(), point.level().feet());
    }

    private static void mark(Length level, double station, Role role, ProfileFrame frame, DrawingSheet sheet) {
        Point at = frame.at(station, level.feet());
        sheet.draw(new Dot(at.x(), at.y(), MARK, Weight.THIN, role, true));
    }

    /** A short level line beyond the pipe's end, with the mark of water under it. */
    private static void outlet(double station, double level, ProfileFrame frame, DrawingSheet sheet) {
        Point at = frame.at(station, level);
        for (int i = 0; i < 3; i++) {
            sheet.line(at.plus(3 + i * 3, i * 3), at.plus(27 - i * 3, i * 3), Weight.THIN, Role.WATER, false);
        }
    }

    private static Role role(ProfileReach.Kind kind) {
        return switch (kind) {
            case DRAIN -> Role.DRAIN;
            case MAIN -> Role.MAIN;
            case ROOF_LINE -> Role.ROOF_LINE;
        };
    }
}
