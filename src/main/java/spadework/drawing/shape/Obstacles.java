// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.shape.Shape.Dot;
import spadework.drawing.shape.Shape.Label;

/**
 * What is drawn near the place where words are wanted. A crowded sheet has thousands of shapes and each word tries
 * thousands of places, so far shapes are left out once and the shape that was in the way last is asked first.
 */
final class Obstacles {
    private final List<Shape> near = new ArrayList<>();
    private final List<Rect> bounds = new ArrayList<>();
    private final List<Rect> uncrossed = new ArrayList<>();
    private int lastHit;
    private int lastCrossed;

    /**
     * Looks over what is drawn.
     *
     * @param field all places that the words may take
     */
    Obstacles(Rect field, List<Shape> drawn) {
        Rect wide = field.grown(OccupiedArea.CLEAR);
        for (Shape shape : drawn) {
            Rect around = OccupiedArea.bounds(shape);
            if (around.meets(wide)) {
                near.add(shape);
                bounds.add(around);
            }
            if (shape instanceof Label label) {
                uncrossed.add(LabelText.box(label).grown(OccupiedArea.CLEAR));
            }
            if (shape instanceof Dot dot && dot.role() == Shape.Role.LIMIT && !dot.filled()) {
                uncrossed.add(OccupiedArea.bounds(dot));
            }
        }
    }

    /** True if words in that box would touch none of the shapes. */
    boolean leave(Rect box) {
        Rect wide = box.grown(OccupiedArea.CLEAR);
        if (lastHit < near.size() && isHit(lastHit, wide)) {
            return false;
        }
        for (int i = 0; i < near.size(); i++) {
            if (isHit(i, wide)) {
                lastHit = i;
                return false;
            }
        }
        return true;
    }

    private boolean isHit(int shape, Rect wide) {
        return bounds.get(shape).meets(wide) && OccupiedArea.touches(near.get(shape), wide);
    }

    /** True if a line between the two points would run through none of the labels and none of the trees. */
    boolean leaveLine(Point a, Point b) {
        if (lastCrossed < uncrossed.size() && uncrossed.get(lastCrossed).isCrossedBy(a, b)) {
            return false;
        }
        for (int i = 0; i < uncrossed.size(); i++) {
            if (uncrossed.get(i).isCrossedBy(a, b)) {
                lastCrossed = i;
                return false;
            }
        }
        return true;
    }
}
