// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;

/**
 * A trench or a hole as the crew finds it on its sheet.
 *
 * @param label of the wall, the pipe or the outlet
 * @param where it is
 * @param length empty for a hole
 * @param trench how deep and how wide, and whether a ladder stands in it
 * @param bank what keeps it from falling in
 * @param finish what goes on the wall; empty away from walls
 * @param beside what is close to it, one a line
 */
public record CrewTrench(
        String label, String where, String length, String trench, String bank, String finish, List<String> beside) {

    public CrewTrench {
        beside = List.copyOf(beside);
    }
}
