// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import spadework.job.LimitKind;
import spadework.job.Side;

/**
 * Something that stands before a side of the house.
 *
 * @param fromFeet where the wall or walls begin before which it stands
 * @param toFeet where they end
 * @param distance from the wall, in words
 */
public record PlanLimit(
        LimitKind kind, Side side, double fromFeet, double toFeet, double distanceFeet, String distance) {

    /** A lot line and what lies behind it stand beyond every outlet of their side: no water leaves the lot on paper. */
    boolean isFar() {
        return kind == LimitKind.PROPERTY_LINE || kind == LimitKind.NEIGHBOR_FOOTING;
    }

    boolean isTree() {
        return kind == LimitKind.TREE;
    }

    String text(PlanWords words) {
        return words.limit(kind, distance);
    }

    /** True if both are one line on the ground. */
    boolean isSameLineAs(PlanLimit other) {
        return !isTree() && kind == other.kind && side == other.side && distance.equals(other.distance);
    }

    PlanLimit joinedWith(PlanLimit other) {
        return new PlanLimit(
                kind, side, Math.min(fromFeet, other.fromFeet), Math.max(toFeet, other.toFeet), distanceFeet, distance);
    }
}
