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
 * @param calls who answers for the trench, and whom to call
 * @param stops what nobody digs before
 * @param trenches at the walls first, then those of pipes and pits
 * @param edges of the banks by the soil that is found
 * @param plan the days in a row on which the same is done, as one
 * @param form what the competent person looks for each day
 * @param walls of the log, side by side
 * @param log its other parts, that of the whole job first; the days have the form
 */
public record CrewSheet(
        PaperHead head,
        Language language,
        Map<String, String> say,
        List<CrewCall> calls,
        List<CrewStop> stops,
        List<CrewTrench> trenches,
        List<BankEdge> edges,
        List<Day> days,
        List<Stretch> plan,
        DayForm form,
        List<LogGrid> walls,
        List<LogPart> log) {

    public CrewSheet {
        say = Map.copyOf(say);
        calls = List.copyOf(calls);
        stops = List.copyOf(stops);
        trenches = List.copyOf(trenches);
        edges = List.copyOf(edges);
        days = List.copyOf(days);
        plan = List.copyOf(plan);
        walls = List.copyOf(walls);
        log = List.copyOf(log);
    }

    /**
     * A day of the plan.
     *
     * @param on in words
     * @param weekday the same, short
     * @param what is done, or what work waits for
     * @param open whether the trench stands open that day
     * @param places that may stand open; none where the trench does not
     */
    public record Day(int number, String on, String weekday, String what, boolean open, List<DayPlace> places) {

        public Day {
            places = List.copyOf(places);
        }
    }

    /**
     * Days in a row on which the same is done.
     *
     * @param days their numbers
     * @param on their dates, in words
     */
    public record Stretch(String days, String on, String what, boolean open) {}
}
