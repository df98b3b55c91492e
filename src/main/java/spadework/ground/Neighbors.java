// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.CornerKind;

/**
 * Which walls of a chain have trenches that meet otherwise than their corners say. Looked at are pieces: the strip in
 * front of each wall and the rectangle at each outside corner. A place that no two pieces cover is counted right by the
 * signed sum, so only walls whose pieces meet have to be cut level together; two such groups may share a wall, as long
 * as nothing of one meets anything of the other.
 */
final class Neighbors {
    private final WallChain chain;
    private final List<Piece> pieces = new ArrayList<>();
    private final boolean alike;

    /** By the wall before it: whether a corner lies within a group. */
    private final boolean[] meets;

    /** By wall: whether the corners on both its sides lie within one group. */
    private final boolean[] bound;

    /** A strip, or a corner's rectangle, at its widest; {@code from} and {@code to} are its walls. */
    private record Piece(Block block, int from, int to) {}

    private Neighbors(WallChain chain) {
        this.chain = chain;
        this.meets = new boolean[chain.turns().size()];
        this.bound = new boolean[chain.size()];
        for (int i = 0; i < chain.size(); i++) {
            addPieces(i);
        }
        Strip first = chain.walls().get(0).strip();
        this.alike = chain.walls().stream().allMatch(wall -> first.isLike(wall.strip()));
    }

    private void addPieces(int i) {
        PlacedStrip wall = chain.walls().get(i);
        double length = wall.strip().length();
        pieces.add(new Piece(Block.before(wall, 0, length, 0, reach(i)), i, i));
        chain.turnAfter(i)
                .filter(turn -> turn.kind() == CornerKind.OUTSIDE)
                .ifPresent(turn -> pieces.add(new Piece(
                        Block.before(wall, length, length + reach(chain.next(i)), 0, reach(i)), i, chain.next(i))));
    }

    /** The parts of the chain that have to be looked at together; none where the signed sum is exact. */
    static List<WallChain> parts(WallChain chain) {
        Neighbors neighbors = new Neighbors(chain);
        neighbors.compare();
        return neighbors.joined();
    }

    private void compare() {
        for (int i = 0; i < pieces.size(); i++) {
            for (int k = i + 1; k < pieces.size(); k++) {
                if (meet(pieces.get(i), pieces.get(k))) {
                    join(pieces.get(i), pieces.get(k));
                }
            }
        }
        for (int i = 0; i < chain.size(); i++) {
            Optional<WallTurn> turn = chain.turnAfter(i);
            if (turn.isPresent() && turn.get().kind() == CornerKind.INSIDE && !isExact(i, chain.next(i))) {
                meets[i] = true;
            }
        }
    }

    private boolean meet(Piece one, Piece other) {
        return one.block().meets(other.block()) && !isCorner(one, other) && (!alike || isFacing(one, other));
    }

    /** Strips of two walls with a corner between them: their corner's own term speaks for what they share. */
    private boolean isCorner(Piece one, Piece other) {
        boolean strips = one.from() == one.to() && other.from() == other.to();
        return strips && (isNext(one.from(), other.from()) || isNext(other.from(), one.from()));
    }

    private boolean isNext(int wall, int other) {
        return chain.turnAfter(wall).isPresent() && chain.next(wall) == other;
    }

    private boolean isFacing(Piece one, Piece other) {
        return isFacing(one.from(), other.from())
                || isFacing(one.from(), other.to())
                || isFacing(one.to(), other.from())
                || isFacing(one.to(), other.to());
    }

    private boolean isFacing(int i, int j) {
        PlacedStrip one = chain.walls().get(i);
        PlacedStrip other = chain.walls().get(j);
        return Math.floorMod(one.turn() - other.turn(), 4) == 2
                && one.out(other.x(), other.y()) > 1e-9
                && other.out(one.x(), one.y()) > 1e-9;
    }

    private double reach(int i) {
        Strip strip = chain.walls().get(i).strip();
        return strip.reach(strip.highest());
    }

    /** Whether the rectangle that an inside corner takes away is really dug by both walls. */
    private boolean isExact(int i, int j) {
        Strip first = chain.walls().get(i).strip();
        Strip second = chain.walls().get(j).strip();
        boolean level = first.isLevel() && second.isLevel() && Math.abs(first.highest() - second.highest()) < 1e-9;
        return level
                && chain.turnBefore(i)
                        .map(turn -> isLongEnough(first, reach(j), turn, Math.floorMod(i - 1, chain.size())))
                        .orElse(first.length() >= reach(j))
                && chain.turnAfter(j)
                        .map(turn -> isLongEnough(second, reach(i), turn, chain.next(j)))
                        .orElse(second.length() >= reach(i));
    }

    private boolean isLongEnough(Strip strip, double needed, WallTurn farTurn, int farWall) {
        if (farTurn.kind() == CornerKind.INSIDE) {
            return strip.length() >= needed + reach(farWall);
        }
        return alike || strip.length() >= needed;
    }

    /** Joins all walls from one piece to the other, the shorter way where the chain is closed. */
    private void join(Piece one, Piece other) {
        int n = chain.size();
        int there = Math.floorMod(other.to() - one.from(), n);
        int back = Math.floorMod(one.to() - other.from(), n);
        boolean around = chain.closed() && back < there;
        int from = around ? other.from() : one.from();
        int steps = around ? back : there;
        for (int k = 0; k < steps; k++) {
            meets[(from + k) % n] = true;
            if (k > 0) {
                bound[(from + k) % n] = true;
            }
        }
    }

    /** Runs of corners within one group. */
    private List<WallChain> joined() {
        List<WallChain> parts = new ArrayList<>();
        int n = chain.size();
        int begin = 0;
        if (chain.closed()) {
            while (begin < n && bound[begin]) {
                begin++;
            }
            if (begin == n) {
                return List.of(chain.part(0, n));
            }
        }
        int corners = meets.length;
        int k = 0;
        while (k < corners) {
            if (!meets[(begin + k) % n]) {
                k++;
                continue;
            }
            int last = k;
            while (last + 1 < corners && meets[(begin + last + 1) % n] && bound[(begin + last + 1) % n]) {
                last++;
            }
            int walls = last - k + 2;
            parts.add(walls > n ? chain.part(0, n) : chain.part((begin + k) % n, walls));
            k = last + 1;
        }
        return parts;
    }
}
