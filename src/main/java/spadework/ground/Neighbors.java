// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.CornerKind;

/** Which walls of a chain have trenches that meet otherwise than their corners say. */
final class Neighbors {
    private final Chain chain;
    private final boolean[] meets;
    private final List<Block> widest;
    private final boolean alike;

    private Neighbors(Chain chain) {
        this.chain = chain;
        this.meets = new boolean[chain.closed() ? chain.size() : Math.max(0, chain.size() - 1)];
        this.widest = new ArrayList<>();
        for (int i = 0; i < chain.size(); i++) {
            widest.add(widest(i));
        }
        Strip first = chain.walls().get(0).strip();
        this.alike = chain.walls().stream().allMatch(wall -> first.isLike(wall.strip()));
    }

    /** The parts of the chain that have to be looked at together; none where the signed sum is exact. */
    static List<Chain> parts(Chain chain) {
        Neighbors neighbors = new Neighbors(chain);
        neighbors.compare();
        return neighbors.joined();
    }

    private void compare() {
        for (int i = 0; i < chain.size(); i++) {
            for (int j = i + 1; j < chain.size(); j++) {
                boolean next = j == i + 1;
                boolean closing = chain.closed() && i == 0 && j == chain.size() - 1;
                if (!next && !closing && meet(i, j)) {
                    join(i, j);
                }
            }
            Optional<Turn> turn = chain.turnAfter(i);
            if (turn.isPresent() && turn.get().kind() == CornerKind.INSIDE && !isExact(i, chain.next(i))) {
                meets[i] = true;
            }
        }
    }

    private boolean meet(int i, int j) {
        if (!widest.get(i).meets(widest.get(j))) {
            return false;
        }
        Placed one = chain.walls().get(i);
        Placed other = chain.walls().get(j);
        boolean facing = Math.floorMod(one.turn() - other.turn(), 4) == 2
                && one.out(other.x(), other.y()) > 1e-9
                && other.out(one.x(), one.y()) > 1e-9;
        return facing || !alike;
    }

    /** The strip at its widest, with the corners that an outside turn adds at its ends. */
    private Block widest(int i) {
        Placed wall = chain.walls().get(i);
        Strip strip = wall.strip();
        double before = chain.turnBefore(i)
                .filter(turn -> turn.kind() == CornerKind.OUTSIDE)
                .map(turn -> reach(Math.floorMod(i - 1, chain.size())))
                .orElse(0.0);
        double after = chain.turnAfter(i)
                .filter(turn -> turn.kind() == CornerKind.OUTSIDE)
                .map(turn -> reach(chain.next(i)))
                .orElse(0.0);
        return Block.before(wall, -before, strip.length() + after, 0, reach(i));
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
                && isLongEnough(first, reach(j), chain.turnBefore(i), Math.floorMod(i - 1, chain.size()))
                && isLongEnough(second, reach(i), chain.turnAfter(j), chain.next(j));
    }

    private boolean isLongEnough(Strip strip, double needed, Optional<Turn> farTurn, int farWall) {
        if (farTurn.isPresent() && farTurn.get().kind() == CornerKind.INSIDE) {
            return strip.length() >= needed + reach(farWall);
        }
        if (farTurn.isPresent() && alike) {
            return true;
        }
        return strip.length() >= needed;
    }

    private void join(int i, int j) {
        int there = j - i;
        boolean around = chain.closed() && chain.size() - there < there;
        int from = around ? j : i;
        int steps = around ? chain.size() - there : there;
        for (int k = 0; k < steps; k++) {
            meets[(from + k) % meets.length] = true;
        }
    }

    /** Runs of walls that meet, each with the wall before and the wall after it. */
    private List<Chain> joined() {
        List<Chain> parts = new ArrayList<>();
        int n = chain.size();
        int begin = 0;
        if (chain.closed()) {
            while (begin < n && (meets[begin] || meets[(begin + 1) % n] || meets[(begin + 2) % n])) {
                begin++;
            }
            if (begin == n) {
                return List.of(chain.part(0, n));
            }
        }
        int k = 0;
        while (k < meets.length) {
            if (!meets[(begin + k) % n]) {
                k++;
                continue;
            }
            int last = k;
            while (last + 1 < meets.length
                    && (meets[(begin + last + 1) % n]
                            || (last + 2 < meets.length && meets[(begin + last + 2) % n])
                            || (last + 3 < meets.length && meets[(begin + last + 3) % n]))) {
                last++;
            }
            int from = Math.max(0, k - 1);
            int to = last + 2;
            int walls = chain.closed() ? to - from + 1 : Math.min(n - 1, to) - from + 1;
            parts.add(chain.part(chain.closed() ? begin + from : from, walls));
            k = last + 1;
        }
        return parts;
    }
}
