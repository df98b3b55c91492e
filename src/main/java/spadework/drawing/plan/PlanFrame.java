// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.job.House;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.Wall;
import spadework.place.OutlineSpot;

/**
 * The house on the sheet.
 *
 * @param house the outline, points
 * @param scale points a foot
 * @param sheet the part of the sheet on which the figure lies
 */
public record PlanFrame(House size, Rect house, double scale, Rect sheet) {
    /** Words wider than that are cut. */
    static final double WIDEST_WORDS = 470;

    private static final double LEAST_WIDTH = 70;

    static PlanFrame of(Job job, PlanBands bands, PlanSize room) {
        House size = job.site().house();
        double north = bands.on(Side.NORTH).end();
        double south = bands.on(Side.SOUTH).end();
        double west = bands.on(Side.WEST).end();
        double east = bands.on(Side.EAST).end();
        double across = Math.max(LEAST_WIDTH, room.width() - west - east);
        double height = Math.min(room.mostHeight(), Math.max(room.leastHeight(), room.figure() - north - south));
        double scale = Math.min(across / longest(job, true), height / longest(job, false));
        double wide = size.eastWest().feet() * scale;
        double high = size.northSouth().feet() * scale;
        double left = west + (across - wide) / 2;
        Rect house = new Rect(left, north, left + wide, north + high);
        return new PlanFrame(size, house, scale, new Rect(0, 0, room.width(), north + high + south));
    }

    /** Feet along the sheet that must fit: the house, and a wall that reaches beyond it. */
    static double longest(Job job, boolean across) {
        House size = job.site().house();
        double feet = across ? size.eastWest().feet() : size.northSouth().feet();
        for (Wall wall : job.walls()) {
            if (OutlineSpot.isAcross(wall.faces()) == across) {
                feet = Math.max(feet, OutlineSpot.endOf(wall).feet());
            }
        }
        return feet;
    }

    /** A spot on the sheet, that many points outside the house. */
    Point at(OutlineSpot spot, double out) {
        double along = spot.feet() * scale;
        return switch (spot.side()) {
            case NORTH -> new Point(house.left() + along, house.top() - out);
            case SOUTH -> new Point(house.left() + along, house.bottom() + out);
            case EAST -> new Point(house.right() + out, house.top() + along);
            case WEST -> new Point(house.left() - out, house.top() + along);
        };
    }

    /** The part of the sheet outside the house on that side, that many points away and further. */
    Rect outside(Side side, double out) {
        Rect inner = sheet.grown(-2);
        return switch (side) {
            case NORTH -> new Rect(inner.left(), inner.top(), inner.right(), house.top() - out);
            case SOUTH -> new Rect(inner.left(), house.bottom() + out, inner.right(), inner.bottom());
            case EAST -> new Rect(house.right() + out, inner.top(), inner.right(), inner.bottom());
            case WEST -> new Rect(inner.left(), inner.top(), house.left() - out, inner.bottom());
        };
    }
}
