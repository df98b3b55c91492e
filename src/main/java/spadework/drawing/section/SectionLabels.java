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

    private final SectionFrame frame;
    private final SectionWords words;

    SectionLabels(SectionFrame frame, SectionWords words) {
        this.frame = frame;
        this.words = words;
    }

    /** Draws the names and tells where they end. */
    double draw(WallCovering covering, DrawingSheet sheet) {
        List<Callout> column = column(covering);
        double widest = column.stream().mapToDouble(Callout::width).max().orElse(0);
        double far = SectionFrame.WIDTH - SectionFrame.EDGE - widest;
        double left =
                Math.min(far, frame.at(frame.bank(frame.bottom() * 0.35), 0).x() + 34);
        double top = lowest(left);
        double y = top;
        List<Line> leaders = new ArrayList<>();
        column.add(0, bank(left));
        column.replaceAll(callout -> callout.leftOf(left - BESIDE_BANK));
        for (Callout callout : Callout.untangled(column, left, top, APART)) {
            y = callout.draw(left, y, leaders, sheet) + APART;
        }
        return Math.max(y, house(leaders, sheet));
    }

    /** Where the bank has gone far enough back for words that begin there. */
    private double lowest(double left) {
        double out = (left - BESIDE_BANK - frame.face()) / frame.scale();
        double down = frame.within(out);
        return frame.grade() + 14 + Math.max(0, down * frame.scale());
    }

    private List<Callout> column(WallCovering covering) {
        CrossSection section = frame.section();
        double stone = section.bed().map(bed -> bed.stone().feet()).orElse(0.0);
        double fill = Math.max(0, frame.bottom() - stone);
        List<Callout> column = new ArrayList<>();
        column.add(callout(backfill(fill * 0.42), words.backfill()));
        column.add(callout(
                SectionHouse.coverAt(frame, Math.min(frame.top(), fill) * 0.6),
                SectionWords.capital(covering.material()) + ",",
                words.promise(covering)));
        if (section.bed().isEmpty()) {
            column.add(
                    callout(frame.at(frame.toe() - section.bottomWidth().feet() / 2, frame.bottom()), words.noDrain()));
            return column;
        }
        CrossSection.Bed bed = section.bed().get();
        column.add(callout(frame.at(across(fill, 0.7), fill), words.fabric()));
        double middle = frame.bottom() - stone / 2;
        column.add(callout(
                frame.at(across(middle, 0.86), middle), words.stone(bed.stone().text())));
        column.add(callout(SectionDrain.pipe(frame, bed), words.pipe(bed.pipeOutside(), bed.bedding())));
        return column;
    }

    /** The bank is pointed at where it lies left of the words. */
    private Callout bank(double left) {
        CrossSection section = frame.section();
        double out = (left - BESIDE_BANK - frame.face()) / frame.scale();
        double seen = frame.within(out);
        double down = Math.max(frame.bottom() * 0.22, seen);
        Point target = frame.at(frame.bank(down), down);
        String soil = words.soil(section.bank()) + words.engineer(section.trenchDepth());
        String inTheWay = words.inTheWay(section.bank());
        return inTheWay.isEmpty()
                ? callout(target, words.bank(section.bank()), soil)
                : callout(target, words.bank(section.bank()), soil + ";", inTheWay);
    }

    private Point backfill(double down) {
        return frame.at(across(down, 0.72), down);
    }

    private double across(double down, double share) {
        return frame.projection() + (frame.bank(down) - frame.projection()) * share;
    }

    private double house(List<Line> leaders, DrawingSheet sheet) {
        CrossSection section = frame.section();
        Callout footing = callout(
                frame.at(
                        -SectionFrame.WALL_FEET / 2,
                        frame.bottom() - section.footing().thickness().feet() * 0.3),
                words.footing(section.footing()));
        double y = footing.draw(SectionFrame.EDGE, frame.foot() + 20, leaders, sheet) + APART;
        return SectionHouse.floor(frame)
                .map(down -> callout(SectionHouse.floorEnd(frame, down).plus(4, 0), words.floor())
                        .draw(SectionFrame.EDGE, frame.foot() + 6, leaders, sheet))
                .map(end -> Math.max(end + APART, y))
                .orElse(y);
    }

    private static Callout callout(Point target, String... texts) {
        return Callout.of(target, WIDEST, texts);
    }
}
