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
 * @param trenches at the walls first, then those of pipes and pits
 * @param plan the days in a row on which the same is done, as one
 * @param stops what stopped the work and was accepted in writing
 */
public record CrewSheet(
        PaperHead head,
        Language language,
        Map<String, String> say,
        List<CrewTrench> trenches,
        List<Day> days,
        List<Stretch> plan,
        List<String> stops,
        List<LogPart> log) {

    public CrewSheet {
        say = Map.copyOf(say);
        trenches = List.copyOf(trenches);
        days = List.copyOf(days);
        plan = List.copyOf(plan);
        stops = List.copyOf(stops);
        log = List.copyOf(log);
    }

    /**
     * A day of the plan.
     *
     * @param on in words
     * @param weekday the same, short
     * @param what is done, or what work waits for
     * @param open whether the trench stands open that day
     */
    public record Day(int number, String on, String weekday, String what, boolean open) {}

    /**
     * Days in a row on which the same is done.
     *
     * @param days their numbers
     * @param on their dates, in words
     */
    public record Stretch(String days, String on, String what, boolean open) {}
}
