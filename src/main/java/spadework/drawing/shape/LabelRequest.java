// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Side;

/**
 * Words that want a place on the sheet.
 *
 * @param anchor which part of the words keeps its place if they turn out narrower: start, middle or end
 * @param leader where a thin line to the words begins, when they may stand away from what they name
 * @param inKey what the key says when there is no room
 * @param explained the key says it even when there is room, because the words are short for something
 */
@RecordBuilder
public record LabelRequest(
        String text,
        double size,
        boolean bold,
        Role role,
        String anchor,
        LabelSpot spot,
        Optional<Point> leader,
        String inKey,
        boolean explained)
        implements LabelRequestBuilder.With {

    public static final double SMALL = 9;
    public static final double LARGE = 13;

    /** Small words without a leader; cut with an ellipsis and explained in the key if they are wider than allowed. */
    public static LabelRequest small(String full, double widest, Role role, LabelSpot spot, String inKey) {
        String text = LabelText.cut(full, SMALL, widest);
        boolean cut = !text.equals(full);
        return new LabelRequest(text, SMALL, false, role, "middle", spot, Optional.empty(), inKey, cut);
    }

    public Point target() {
        return spot.target();
    }

    public Rect zone() {
        return spot.zone();
    }

    public double reach() {
        return spot.reach();
    }

    public LabelRequest anchored(String at) {
        return withAnchor(at);
    }

    /** Words beside a side of the house lean toward it. */
    public LabelRequest leaningToward(Side side) {
        return switch (side) {
            case EAST -> anchored("start");
            case WEST -> anchored("end");
            case NORTH, SOUTH -> this;
        };
    }

    public LabelRequest inBold() {
        return withBold(true);
    }

    /** The same words with more freedom, tied to what they name by a line. */
    public LabelRequest withLeader(Point from, Rect widerZone, double longerReach) {
        return withSpot(new LabelSpot(spot.target(), widerZone, longerReach)).withLeader(Optional.of(from));
    }

    public double width() {
        return LabelText.width(text, size, bold);
    }
}
