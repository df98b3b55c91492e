// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;
import java.util.Map;
import spadework.paperwork.part.PaperHead;
import spadework.wording.Language;

/**
 * What the crew carries to the trench, in the crew's language. It holds no money.
 *
 * @param say the sentences that stand on every sheet, by key
 * @param stops what stopped the work and was accepted in writing
 */
public record CrewSheet(
        PaperHead head,
        Language language,
        Map<String, String> say,
        List<CrewWall> walls,
        List<Day> days,
        List<String> stops,
        List<LogPart> log) {

    public CrewSheet {
        say = Map.copyOf(say);
        walls = List.copyOf(walls);
        days = List.copyOf(days);
        stops = List.copyOf(stops);
        log = List.copyOf(log);
    }

    /**
     * A day of the plan.
     *
     * @param on in words
     * @param what is done, or what work waits for
     * @param open whether the trench stands open that day
     */
    public record Day(int number, String on, String what, boolean open) {}
}
