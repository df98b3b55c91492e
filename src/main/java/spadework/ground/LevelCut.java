// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import spadework.job.CornerKind;

/**
 * The strips of a chain cut level at one height: the rectangle of each piece of a strip, the rectangle that an outside
 * corner adds, and the footings that stand in them. Every edge moves in a straight line with the height until a top is
 * reached.
 */
final class LevelCut {
    private final WallChain chain;
    private final double height;
    private final List<Dug> dug = new ArrayList<>();
    private final List<Block> footings = new ArrayList<>();
    private double signed;

    /** A rectangle with the walls that it is dug from; for a corner both, else one twice. */
    private record Dug(Block block, int first, int second) {}

    LevelCut(WallChain chain, double height) {
        this.chain = chain;
        this.height = height;
        for (int i = 0; i < chain.size(); i++) {
            strip(i);
            int wall = i;
            chain.turnAfter(i).ifPresent(turn -> corner(wall, turn));
        }
    }

    private void strip(int i) {
        PlacedStrip wall = chain.walls().get(i);
        Strip strip = wall.strip();
        double inner = height < strip.footing() ? strip.projection() : 0;
        double far = strip.reach(height);
        if (inner > 0) {
            footings.add(Block.before(wall, 0, strip.length(), 0, inner));
        }
        for (int k = 1; k < strip.tops().size(); k++) {
            Top a = strip.tops().get(k - 1);
            Top b = strip.tops().get(k);
            double from = a.height() > height ? a.at() : b.height() > height ? crossing(a, b) : b.at();
            double to = b.height() > height ? b.at() : a.height() > height ? crossing(a, b) : a.at();
            if (to > from) {
                dug.add(new Dug(Block.before(wall, from, to, 0, far), i, i));
                signed += (to - from) * (far - inner);
            }
        }
    }

    private double crossing(Top a, Top b) {
        return a.at() + (b.at() - a.at()) * (height - a.height()) / (b.height() - a.height());
    }

    private void corner(int i, WallTurn turn) {
        int j = chain.next(i);
        PlacedStrip one = chain.walls().get(i);
        Strip first = one.strip();
        Strip second = chain.walls().get(j).strip();
        if (height >= Math.max(first.topAt(true), second.topAt(false))) {
            return;
        }
        double w1 = first.reach(height);
        double w2 = second.reach(height);
        boolean beside = height < turn.footing();
        double block = w1 * w2 - (beside ? first.projection() * second.projection() : 0);
        if (turn.kind() == CornerKind.INSIDE) {
            signed -= block;
            return;
        }
        signed += block;
        double end = first.length();
        dug.add(new Dug(Block.before(one, end, end + w2, 0, w1), i, j));
        if (beside) {
            footings.add(Block.before(one, end, end + second.projection(), 0, first.projection()));
        }
    }

    /** Areas of all strips, with the corners added and taken away; square feet. */
    double signed() {
        return signed;
    }

    /** Where the rectangles have their edges along one axis; sorted by how they came to be, so that cuts compare. */
    double[] edges(boolean alongX) {
        List<Double> edges = new ArrayList<>();
        for (Dug each : dug) {
            edges.add(alongX ? each.block().x0() : each.block().y0());
            edges.add(alongX ? each.block().x1() : each.block().y1());
        }
        for (Block each : footings) {
            edges.add(alongX ? each.x0() : each.y0());
            edges.add(alongX ? each.x1() : each.y1());
        }
        for (PlacedStrip wall : chain.walls()) {
            edges.add(alongX ? wall.x() : wall.y());
            edges.add(alongX ? wall.endX() : wall.endY());
        }
        return edges.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Ground that is dug at this height, each place once, without footings and house; square feet. */
    double union() {
        double[] xs = distinct(edges(true));
        double[] ys = distinct(edges(false));
        double area = 0;
        for (int i = 1; i < xs.length; i++) {
            double x = (xs[i - 1] + xs[i]) / 2;
            for (int k = 1; k < ys.length; k++) {
                double y = (ys[k - 1] + ys[k]) / 2;
                if (isDug(x, y)) {
                    area += (xs[i] - xs[i - 1]) * (ys[k] - ys[k - 1]);
                }
            }
        }
        return area;
    }

    private static double[] distinct(double[] values) {
        double[] sorted = java.util.Arrays.stream(values).sorted().toArray();
        int kept = 0;
        for (double value : sorted) {
            if (kept == 0 || value - sorted[kept - 1] > 1e-9) {
                sorted[kept++] = value;
            }
        }
        return java.util.Arrays.copyOf(sorted, kept);
    }

    private boolean isDug(double x, double y) {
        for (Block footing : footings) {
            if (footing.holds(x, y)) {
                return false;
            }
        }
        for (Dug each : dug) {
            if (each.block().holds(x, y) && isReached(each, x, y)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a place can be dug from there without going through a wall. */
    private boolean isReached(Dug each, double x, double y) {
        PlacedStrip wall = chain.walls().get(each.first());
        if (each.first() == each.second()) {
            return isClear(wall, x, y);
        }
        PlacedStrip other = chain.walls().get(each.second());
        double along = wall.along(x, y) - wall.strip().length();
        double out = wall.out(x, y);
        double hair = 1e-7;
        double besideX = wall.endX() + wall.outX() * hair + wall.alongX() * along;
        double besideY = wall.endY() + wall.outY() * hair + wall.alongY() * along;
        double beforeX = wall.endX() + wall.outX() * out + wall.alongX() * hair;
        double beforeY = wall.endY() + wall.outY() * out + wall.alongY() * hair;
        return (isClear(other, besideX, besideY) && isClear(wall, x, y))
                || (isClear(wall, beforeX, beforeY) && isClear(other, x, y));
    }

    /** Whether no wall that is parallel to this one stands between it and the place. */
    private boolean isClear(PlacedStrip wall, double x, double y) {
        double out = wall.out(x, y);
        for (PlacedStrip between : chain.walls()) {
            if ((between.turn() - wall.turn()) % 2 == 0 && between.spans(between.along(x, y))) {
                double at = wall.out(between.x(), between.y());
                if (at > 1e-9 && at < out - 1e-9) {
                    return false;
                }
            }
        }
        return true;
    }
}
