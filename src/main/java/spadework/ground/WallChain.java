// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.job.Corner;
import spadework.job.WallEnd;

/**
 * Walls that follow one another round corners, laid out in plan from the first one. The layout follows from lengths
 * and corners alone.
 *
 * @param turns between each wall and the next; as many as walls where the chain is closed, else one less
 */
record WallChain(List<PlacedStrip> walls, List<WallTurn> turns, boolean closed) {

    WallChain {
        walls = List.copyOf(walls);
        turns = List.copyOf(turns);
    }

    int size() {
        return walls.size();
    }

    /** The turn after a wall; empty at an open end. */
    Optional<WallTurn> turnAfter(int wall) {
        return wall < turns.size() ? Optional.of(turns.get(wall)) : Optional.empty();
    }

    /** The turn before a wall; empty at an open end. */
    Optional<WallTurn> turnBefore(int wall) {
        return wall > 0 ? Optional.of(turns.get(wall - 1)) : closed ? turnAfter(size() - 1) : Optional.empty();
    }

    int next(int wall) {
        return (wall + 1) % size();
    }

    /** The chains of all strips whose walls meet at these corners. */
    static List<WallChain> of(List<Strip> strips, List<Corner> corners) {
        Map<String, Strip> byWall = new HashMap<>();
        strips.forEach(strip -> byWall.put(strip.wall(), strip));
        Map<WallEnd, Corner> at = new HashMap<>();
        for (Corner corner : corners) {
            boolean known = byWall.containsKey(corner.first().wall())
                    && byWall.containsKey(corner.second().wall());
            boolean free = !at.containsKey(corner.first()) && !at.containsKey(corner.second());
            if (known && free && !corner.first().wall().equals(corner.second().wall())) {
                at.put(corner.first(), corner);
                at.put(corner.second(), corner);
            }
        }
        List<WallChain> chains = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Strip strip : strips) {
            if (!seen.contains(strip.wall())) {
                chains.add(walk(first(new WallEnd(strip.wall(), false), at), at, byWall, seen));
            }
        }
        return chains;
    }

    /** The end at which a walk along the chain begins: an open one, or the one asked for where it closes. */
    private static WallEnd first(WallEnd from, Map<WallEnd, Corner> at) {
        WallEnd enter = from;
        while (at.containsKey(enter)) {
            WallEnd before = across(at.get(enter), enter);
            enter = new WallEnd(before.wall(), !before.atEnd());
            if (enter.wall().equals(from.wall())) {
                return from;
            }
        }
        return enter;
    }

    private static WallEnd across(Corner corner, WallEnd end) {
        return corner.first().equals(end) ? corner.second() : corner.first();
    }

    private static WallChain walk(WallEnd begin, Map<WallEnd, Corner> at, Map<String, Strip> byWall, Set<String> seen) {
        List<PlacedStrip> walls = new ArrayList<>();
        List<WallTurn> turns = new ArrayList<>();
        WallEnd enter = begin;
        double x = 0;
        double y = 0;
        int turn = 0;
        while (seen.add(enter.wall())) {
            Strip strip = byWall.get(enter.wall());
            PlacedStrip placed = new PlacedStrip(enter.atEnd() ? strip.reversed() : strip, x, y, turn);
            walls.add(placed);
            WallEnd leave = new WallEnd(enter.wall(), !enter.atEnd());
            Corner corner = at.get(leave);
            if (corner == null) {
                return new WallChain(walls, turns, false);
            }
            WallTurn next = new WallTurn(
                    corner.kind(), byWall.get(corner.first().wall()).footing());
            turns.add(next);
            x = placed.endX();
            y = placed.endY();
            turn = (turn + next.quarters()) % 4;
            enter = across(corner, leave);
        }
        return new WallChain(walls, turns, true);
    }

    /** Whether the last wall ends where the first begins; lengths measured to the inch seldom do. */
    private boolean meetsItself() {
        PlacedStrip last = walls.get(size() - 1);
        return Math.abs(last.endX() - walls.get(0).x()) < 1e-6
                && Math.abs(last.endY() - walls.get(0).y()) < 1e-6;
    }

    /** Part of the chain, from a wall over so many; open unless it is all of a closed one that meets itself. */
    WallChain part(int from, int count) {
        if (count >= size() && (!closed || meetsItself())) {
            return this;
        }
        List<PlacedStrip> some = new ArrayList<>();
        List<WallTurn> between = new ArrayList<>();
        double x = 0;
        double y = 0;
        int turn = 0;
        for (int i = 0; i < Math.min(count, size()); i++) {
            int wall = (from + i) % size();
            PlacedStrip placed = new PlacedStrip(walls.get(wall).strip(), x, y, turn);
            some.add(placed);
            if (i < Math.min(count, size()) - 1) {
                WallTurn next = turns.get(wall);
                between.add(next);
                x = placed.endX();
                y = placed.endY();
                turn = (turn + next.quarters()) % 4;
            }
        }
        return new WallChain(some, between, false);
    }
}
