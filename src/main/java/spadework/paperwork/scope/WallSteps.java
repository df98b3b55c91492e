// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.List;
import spadework.paperwork.part.FindingNote;

/**
 * The page of a wall.
 *
 * @param label of the wall
 * @param notes what the rules noticed about this wall and no step says
 */
public record WallSteps(String label, List<ScopeStep> steps, List<FindingNote> notes) {

    public WallSteps {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }
}
