// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.takeoff.CrossSection.Bed;
import spadework.takeoff.FabricRule;

/** The drain in a section: stone as dots, the pipe on its bedding, fabric over the top. */
public final class SectionDrain {
    private static final double APART = 4.8;
    private static final double[] RADII = {1.1, 0.8, 1.3, 0.9};
    private static final double TURN_UP_FEET = FabricRule.TURN_UP.feet();
    private static final double OFF_COVER = 5.4;

    private SectionDrain() {}

    static void draw(SectionFrame frame, Bed bed, DrawingSheet sheet) {
        Point pipe = pipe(frame, bed);
        double radius = bed.pipeOutside().feet() / 2 * frame.scale();
        stone(frame, bed, pipe, radius, sheet);
        sheet.draw(new Dot(pipe.x(), pipe.y(), radius, Weight.MEDIUM, Role.DRAIN, false));
        fabric(frame, bed, sheet);
    }

    /** The pipe's middle: half-way across the trench's bottom, on its bedding. */
    static Point pipe(SectionFrame frame, Bed bed) {
        double out = frame.projection() + frame.section().bottomWidth().feet() / 2;
        double up = bed.bedding().feet() + bed.pipeOutside().feet() / 2;
        return frame.at(out, frame.bottom() - up);
    }

    /** Staggered rows, a little uneven, so that they read as stone and not as a grid. */
    private static void stone(SectionFrame frame, Bed bed, Point pipe, double pipeRadius, DrawingSheet sheet) {
        double head = frame.foot() - bed.stone().feet() * frame.scale();
        double footing = frame.at(0, frame.top()).y();
        int row = 0;
        for (double y = frame.foot() - 2.4; y > head + 2.2; y -= APART * 0.8) {
            double left = y < footing - 1
                    ? frame.face() + OFF_COVER + 2
                    : frame.at(frame.projection(), 0).x() + 2.4;
            double right =
                    frame.at(frame.bank((y - frame.grade()) / frame.scale()), 0).x() - 2.4;
            int column = 0;
            for (double x = left + (row % 2) * APART / 2; x < right; x += APART) {
                int turn = (row * 5 + column * 3) % RADII.length;
                Point at = new Point(x + (turn - 1.5) * 0.3, y + (turn % 2) * 0.5 - 0.25);
                double radius = RADII[turn];
                boolean nearCove = y > footing - 7
                        && y < footing + 1
                        && x < frame.at(0.4, 0).x();
                if (at.distanceTo(pipe) > pipeRadius + radius + 1 && !nearCove) {
                    sheet.draw(new Dot(at.x(), at.y(), radius, Weight.THIN, Role.STONE, false));
                }
                column++;
            }
            row++;
        }
    }

    /** Over the top only, turned up 6 in at the wall and at the bank. */
    private static void fabric(SectionFrame frame, Bed bed, DrawingSheet sheet) {
        double down = frame.bottom() - bed.stone().feet();
        double higher = down - TURN_UP_FEET;
        double in = down > frame.top() ? frame.projection() : 0;
        Point wall = frame.at(in, down).plus(OFF_COVER, 0);
        Point bank = frame.at(frame.bank(down), down);
        Point bankUp = frame.at(frame.bank(higher), higher);
        double off = frame.slope() == 0 ? -2.5 : 0;
        sheet.line(wall.plus(0, -TURN_UP_FEET * frame.scale()), wall, Weight.MEDIUM, Role.FABRIC, false);
        sheet.line(wall, bank.plus(off, 0), Weight.MEDIUM, Role.FABRIC, false);
        sheet.line(bank.plus(off, 0), bankUp.plus(off - (off == 0 ? 2.5 : 0), 0), Weight.MEDIUM, Role.FABRIC, false);
    }
}
