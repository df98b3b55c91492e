// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.util.List;
import spadework.closeout.OpenEvidence;

/**
 * What was built beside what was agreed.
 *
 * @param ground stone, loads and soil: as agreed and as found
 * @param open what the scope asks for and the record does not hold
 * @param compared all of it in one table
 */
public record BuiltWork(
        List<BuiltWallRow> walls,
        List<BuiltPipeRow> pipes,
        List<Ground> ground,
        List<Test> tests,
        OpenEvidence open,
        List<ComparedRow> compared) {

    public BuiltWork {
        walls = List.copyOf(walls);
        pipes = List.copyOf(pipes);
        ground = List.copyOf(ground);
        tests = List.copyOf(tests);
        compared = List.copyOf(compared);
    }

    /** What the ground took or gave: as agreed, as it came. */
    public record Ground(String what, String agreed, String built) {}

    /** A flow test. */
    public record Test(String on, boolean passed, String what, String by) {}
}
