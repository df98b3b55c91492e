// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.List;
import java.util.stream.Stream;

/**
 * All steps of the work, numbered through: before anybody digs, wall by wall, then pipes and ground.
 *
 * @param walls in the job's order
 */
public record ScopeSteps(List<ScopeStep> before, List<WallSteps> walls, List<ScopeStep> pipes) {

    public ScopeSteps {
        before = List.copyOf(before);
        walls = List.copyOf(walls);
        pipes = List.copyOf(pipes);
    }

    /** Every step, in order. */
    public List<ScopeStep> all() {
        return Stream.of(before.stream(), walls.stream().flatMap(wall -> wall.steps().stream()), pipes.stream())
                .flatMap(steps -> steps)
                .toList();
    }

    /** The page of the wall with that label. */
    public WallSteps ofWall(String label) {
        return walls.stream()
                .filter(wall -> wall.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no wall " + label));
    }
}
