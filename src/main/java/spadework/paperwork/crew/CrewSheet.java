// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.List;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.PaperHead;
import spadework.paperwork.work.WallWork;

/**
 * What the crew carries to the trench. It holds no money.
 *
 * @param locateTicket of the utility marking; empty where there is none yet
 * @param soilType for the trench, as the job has it
 * @param notes what stops the work, and what must be done at the trench
 * @param limits what the rules of trenches ask for at every trench
 * @param deference the sentence that leaves the last word to local code and the competent person
 */
public record CrewSheet(
        PaperHead head,
        String locateTicket,
        String soilType,
        List<WallWork> walls,
        List<Day> days,
        List<FindingNote> notes,
        Limits limits,
        String deference,
        List<LogPart> log) {

    public CrewSheet {
        walls = List.copyOf(walls);
        days = List.copyOf(days);
        notes = List.copyOf(notes);
        log = List.copyOf(log);
    }

    /**
     * Depths and distances, in words.
     *
     * @param ladderFrom depth from which a ladder stands in the trench
     * @param ladderWithin how far anybody walks to it at the most
     * @param ladderAbove how far it reaches above the edge at the least
     * @param spoilBack how far soil and machines stay back
     */
    public record Limits(String ladderFrom, String ladderWithin, String ladderAbove, String spoilBack) {}

    /**
     * A day of the plan.
     *
     * @param on in words
     * @param what is done, or what work waits for
     * @param open whether the trench stands open that day
     */
    public record Day(int number, String on, String what, boolean open) {}
}
