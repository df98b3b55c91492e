// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Hatching;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Protection;
import spadework.job.SiteLimit;

/** The ground in a section: grade, the trench's bank and bottom, the shield, the backfill and the heap of spoil. */
final class SectionGround {
    private static final double BESIDE_HIGH = 16;
    private static final double SHIELD_OVER_GRADE = 6;
    private static final double SHIELD_OFF_BANK = 3.5;

    private SectionGround() {}

    static void draw(SectionFrame frame, DrawingSheet sheet) {
        double reach = frame.section().reach().feet();
        Point edge = frame.at(reach, 0);
        Point toe = frame.at(frame.toe(), frame.bottom());
        Point end = new Point(SectionFrame.WIDTH - SectionFrame.EDGE, frame.grade());
        Point farSpoil = frame.at(reach + SectionFrame.SPOIL_BACK_FEET + SectionFrame.SPOIL_WIDE_FEET, 0);
        end = new Point(Math.min(end.x(), farSpoil.x() + 30), end.y());
        sheet.line(frame.at(0, 0), edge, Weight.THIN, Role.GROUND, false);
        sheet.line(edge, end, Weight.MEDIUM, Role.GROUND, false);
        List<Point> bank = frame.bank(0, frame.bottom());
        for (int i = 1; i < bank.size(); i++) {
            sheet.line(bank.get(i - 1), bank.get(i), Weight.MEDIUM, Role.GROUND, false);
        }
        sheet.line(toe, frame.at(frame.projection(), frame.bottom()), Weight.MEDIUM, Role.GROUND, false);
        Hatching.ticks(edge, end, -0.7, 0.9, sheet);
        for (int i = bank.size() - 1; i > 0; i--) {
            ticks(bank.get(i), bank.get(i - 1), sheet);
        }
        if (frame.section().noSoilOn().isEmpty()) {
            spoil(frame, reach, sheet);
        }
        beside(frame, sheet);
        backfill(frame, sheet);
        if (frame.section().bank().protection() == Protection.SHIELDED) {
            shield(frame, sheet);
        }
    }

    /** Short strokes on the side of the ground: of an upright bank, a tread or a slope. */
    private static void ticks(Point from, Point to, DrawingSheet sheet) {
        boolean upright = Math.abs(from.x() - to.x()) < 1e-6;
        boolean level = Math.abs(from.y() - to.y()) < 1e-6;
        if (level) {
            Hatching.ticks(from, to, -0.7, 0.9, sheet);
        } else if (upright) {
            Hatching.ticks(from, to, 0.8, 0.8, sheet);
        } else {
            Hatching.ticks(from, to, 0.2, 1.1, sheet);
        }
    }

    /** What stands before the wall, as an upright line at its distance, where that lies on the sheet. */
    private static void beside(SectionFrame frame, DrawingSheet sheet) {
        for (SiteLimit limit : frame.section().beside()) {
            frame.markOf(limit)
                    .ifPresent(foot ->
                            sheet.line(foot.plus(0, 8), foot.plus(0, -BESIDE_HIGH), Weight.MEDIUM, Role.LIMIT, false));
        }
    }

    private static void spoil(SectionFrame frame, double reach, DrawingSheet sheet) {
        double from = reach + SectionFrame.SPOIL_BACK_FEET;
        double wide = SectionFrame.SPOIL_WIDE_FEET;
        List<Point> heap = List.of(
                frame.at(from, 0),
                frame.at(from + wide * 0.34, -wide * 0.3),
                frame.at(from + wide * 0.62, -wide * 0.3),
                frame.at(from + wide, 0));
        heap(heap, sheet);
    }

    /** The heap, which nobody measures. */
    static void heap(List<Point> corners, DrawingSheet sheet) {
        for (int i = 1; i < corners.size(); i++) {
            sheet.line(corners.get(i - 1), corners.get(i), Weight.MEDIUM, Role.UNMEASURED, false);
        }
        Hatching.fill(corners, sheet);
    }

    /** What is filled again: from the stone, or from the bottom where there is none, up to grade. */
    private static void backfill(SectionFrame frame, DrawingSheet sheet) {
        double stone = frame.section().bed().map(bed -> bed.stone().feet()).orElse(0.0);
        double down = frame.bottom() - stone;
        double clear = 4 / frame.scale();
        if (down > 0) {
            List<Point> filled = new ArrayList<>(List.of(frame.at(clear, 0)));
            filled.addAll(frame.bank(0, down));
            filled.add(frame.at(down > frame.top() ? frame.projection() : clear, down));
            Hatching.fill(filled, sheet);
        }
    }

    /**
     * Two upright plates with struts between, from the trench's bottom to over the grade. How the plate beside the wall
     * stands while somebody works on the wall is its maker's to say, so that one is dotted.
     */
    private static void shield(SectionFrame frame, DrawingSheet sheet) {
        double top = frame.grade() - SHIELD_OVER_GRADE;
        double near = frame.at(frame.projection(), 0).x() + SHIELD_OFF_BANK;
        double far = frame.at(frame.toe(), 0).x() - SHIELD_OFF_BANK;
        double foot = frame.foot() - 2;
        sheet.line(new Point(near, top), new Point(near, foot), Weight.MEDIUM, Role.UNMEASURED, false);
        sheet.line(new Point(far, top), new Point(far, foot), Weight.THICK, Role.SHIELD, false);
        for (double share : new double[] {0.18, 0.5}) {
            double y = frame.grade() + share * (frame.foot() - frame.grade());
            sheet.line(new Point(near, y), new Point(far, y), Weight.MEDIUM, Role.SHIELD, false);
            sheet.line(new Point(near, y + 3), new Point(far, y + 3), Weight.MEDIUM, Role.SHIELD, false);
        }
    }
}
