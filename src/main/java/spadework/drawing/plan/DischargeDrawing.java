// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.Optional;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.LabelRequest;
import spadework.drawing.shape.LabelSpot;
import spadework.drawing.shape.LabelText;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Outlet;
import spadework.job.Side;
import spadework.place.OutlineSpot;

/** The discharge pipe of a sump: as long as it was measured where the sheet has room for it, else broken. */
final class DischargeDrawing {
    private static final double WIDEST = 90;

    /** What can be told from the sump's own square, points. */
    private static final double SHORTEST = 12;

    private DischargeDrawing() {}

    /** Where the pipe ends on the sheet; where it leads to was not measured, so it leads away from the house. */
    static Point end(Outlet outlet, Point sump, Side side, double scale) {
        return OutletDrawing.outward(sump, side, length(outlet, scale));
    }

    private static double length(Outlet outlet, double scale) {
        double indoors = OutletDrawing.isIndoors(outlet) ? OutletDrawing.INDOORS : 0;
        double most = indoors + OutletDrawing.DISCHARGE;
        double measured = measured(outlet) * scale;
        return measured >= indoors + SHORTEST && measured <= most ? measured : most;
    }

    private static double measured(Outlet outlet) {
        return outlet.discharge().orElseThrow().feet();
    }

    /** The mark on a pipe that is not as long on the sheet as it was measured. */
    static Optional<BreakMark> mark(Outlet outlet, Point sump, Side side, double scale) {
        double drawn = length(outlet, scale);
        return BreakMark.isToScale(drawn, measured(outlet) * scale)
                ? Optional.empty()
                : Optional.of(BreakMark.between(from(sump, side), end(outlet, sump, side, scale)));
    }

    private static Point from(Point sump, Side side) {
        return OutletDrawing.outward(sump, side, OutletDrawing.RADIUS);
    }

    static void draw(Outlet outlet, Point sump, Side side, PlanFrame frame, PlanWords words, DrawingSheet sheet) {
        Point from = from(sump, side);
        Point end = end(outlet, sump, side, frame.scale());
        Optional<BreakMark> mark = mark(outlet, sump, side, frame.scale());
        mark.ifPresent(broken -> {
            sheet.line(from, broken.before(), Weight.MEDIUM, Role.MAIN, false);
            broken.draw(sheet);
            sheet.wish(figure(outlet, from.toward(end, 0.5), side, frame, words));
        });
        sheet.line(mark.map(BreakMark::after).orElse(from), end, Weight.MEDIUM, Role.MAIN, true);
    }

    private static LabelRequest figure(Outlet outlet, Point middle, Side side, PlanFrame frame, PlanWords words) {
        String text = outlet.discharge().orElseThrow().text();
        double half = LabelText.width(text, LabelRequest.SMALL) / 2;
        Point target = OutlineSpot.isAcross(side) ? middle.plus(half + 6, 0) : middle.plus(0, -11);
        return LabelRequest.small(
                text,
                WIDEST,
                Role.MAIN,
                new LabelSpot(target, frame.sheet().grown(-2), 60),
                words.discharge(outlet.label(), text));
    }
}
