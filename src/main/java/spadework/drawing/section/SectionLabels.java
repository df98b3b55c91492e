// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.section;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Callout;
import spadework.drawing.shape.DrawingSheet;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Shape.Line;
import spadework.takeoff.CrossSection;

/** What the parts of a section are called: a column beside the trench, and two names under the house. */
public final class SectionLabels {
    private static final double WIDEST = 168;
    private static final double APART = 5;
    private static final double BESIDE_BANK = 8;

    private SectionLabels() {}

    /** Draws the names and tells where they end. */
    static double draw(SectionFrame frame, WallCovering covering, DrawingSheet sheet) {
        List<Callout> column = column(frame, covering);
        double widest = column.stream().mapToDouble(Callout::width).max().orElse(0);
        double far = SectionFrame.WIDTH - SectionFrame.EDGE - widest;
        double left =
                Math.min(far, frame.at(frame.bank(frame.bottom() * 0.35), 0).x() + 34);
        double top = lowest(frame, left);
        double y = top;
        List<Line> leaders = new ArrayList<>();
        column.add(0, bank(frame, left));
        column.replaceAll(callout -> callout.leftOf(left - BESIDE_BANK));
        for (Callout callout : Callout.untangled(column, left, top, APART)) {
            y = callout.draw(left, y, leaders, sheet) + APART;
        }
        return Math.max(y, house(frame, leaders, sheet));
    }

    /** Where the bank has gone far enough back for words that begin there. */
    private static double lowest(SectionFrame frame, double left) {
        double out = (left - BESIDE_BANK - frame.face()) / frame.scale();
        double down = frame.within(out);
        return frame.grade() + 14 + Math.max(0, down * frame.scale());
    }

    private static List<Callout> column(SectionFrame frame, WallCovering covering) {
        CrossSection section = frame.section();
        double stone = section.bed().map(bed -> bed.stone().feet()).orElse(0.0);
        double fill = Math.max(0, frame.bottom() - stone);
        List<Callout> column = new ArrayList<>();
        column.add(callout(backfill(frame, fill * 0.42), SectionWords.BACKFILL));
        column.add(callout(
                SectionHouse.coverAt(frame, Math.min(frame.top(), fill) * 0.6),
                capital(covering.material()) + ",",
                covering.promise()));
        if (section.bed().isEmpty()) {
            column.add(callout(
                    frame.at(frame.toe() - section.bottomWidth().feet() / 2, frame.bottom()), SectionWords.NO_DRAIN));
            return column;
        }
        CrossSection.Bed bed = section.bed().get();
        column.add(callout(frame.at(across(frame, fill, 0.7), fill), SectionWords.FABRIC));
        double middle = frame.bottom() - stone / 2;
        column.add(callout(
                frame.at(across(frame, middle, 0.86), middle),
                SectionWords.stone(bed.stone().text())));
        column.add(callout(SectionDrain.pipe(frame, bed), SectionWords.pipe(bed.pipeOutside(), bed.bedding())));
        return column;
    }

    /** The bank is pointed at where it lies left of the words. */
    private static Callout bank(SectionFrame frame, double left) {
        CrossSection section = frame.section();
        double out = (left - BESIDE_BANK - frame.face()) / frame.scale();
        double seen = frame.within(out);
        double down = Math.max(frame.bottom() * 0.22, seen);
        Point target = frame.at(frame.bank(down), down);
        String soil = SectionWords.soil(section.bank()) + SectionWords.engineer(section.trenchDepth());
        String inTheWay = SectionWords.inTheWay(section.bank());
        return inTheWay.isEmpty()
                ? callout(target, SectionWords.bank(section.bank()), soil)
                : callout(target, SectionWords.bank(section.bank()), soil + ";", inTheWay);
    }

    private static Point backfill(SectionFrame frame, double down) {
        return frame.at(across(frame, down, 0.72), down);
    }

    private static double across(SectionFrame frame, double down, double share) {
        return frame.projection() + (frame.bank(down) - frame.projection()) * share;
    }

    private static double house(SectionFrame frame, List<Line> leaders, DrawingSheet sheet) {
        CrossSection section = frame.section();
        Callout footing = callout(
                frame.at(
                        -SectionFrame.WALL_FEET / 2,
                        frame.bottom() - section.footing().thickness().feet() * 0.3),
                SectionWords.footing(section.footing()));
        double y = footing.draw(SectionFrame.EDGE, frame.foot() + 20, leaders, sheet) + APART;
        return SectionHouse.floor(frame)
                .map(down -> callout(SectionHouse.floorEnd(frame, down).plus(4, 0), SectionWords.FLOOR)
                        .draw(SectionFrame.EDGE, frame.foot() + 6, leaders, sheet))
                .map(end -> Math.max(end + APART, y))
                .orElse(y);
    }

    private static Callout callout(Point target, String... texts) {
        return Callout.of(target, WIDEST, texts);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
