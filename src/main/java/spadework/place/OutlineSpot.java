// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import spadework.job.House;
import spadework.job.HousePlace;
import spadework.job.Side;
import spadework.job.Wall;

/**
 * A place along the outline of the house.
 *
 * @param feet from the west corner on the north and south sides, from the north corner on the east and west sides
 */
public record OutlineSpot(Side side, double feet) {

    public static OutlineSpot startOf(Wall wall) {
        return new OutlineSpot(wall.faces(), wall.from().feet());
    }

    public static OutlineSpot endOf(Wall wall) {
        return new OutlineSpot(wall.faces(), wall.from().plus(wall.length()).feet());
    }

    public static OutlineSpot of(HousePlace place) {
        return new OutlineSpot(place.side(), place.from().feet());
    }

    /** Length of a side of the house, feet. */
    public static double sideFeet(House house, Side side) {
        return isAcross(side) ? house.eastWest().feet() : house.northSouth().feet();
    }

    /** True for the sides that run from left to right on the sheet. */
    public static boolean isAcross(Side side) {
        return side == Side.NORTH || side == Side.SOUTH;
    }

    /** How far round the house it lies, feet clockwise from the north-west corner. */
    public double clockwise(House house) {
        double eastWest = house.eastWest().feet();
        double northSouth = house.northSouth().feet();
        return switch (side) {
            case NORTH -> feet;
            case EAST -> eastWest + feet;
            case SOUTH -> eastWest + northSouth + (eastWest - feet);
            case WEST -> 2 * eastWest + northSouth + (northSouth - feet);
        };
    }

    /** The shorter way round the house to another spot, feet. */
    public double wayTo(OutlineSpot other, House house) {
        double round = 2 * (house.eastWest().feet() + house.northSouth().feet());
        double way = Math.abs(clockwise(house) - other.clockwise(house));
        return Math.min(way, round - way);
    }
}
