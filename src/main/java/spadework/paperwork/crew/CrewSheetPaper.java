// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.work.WallWorks;
import spadework.safety.LadderRule;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;
import spadework.trench.TrenchLimits;
import spadework.wording.Wording;

/** Puts the crew's sheet together. */
public final class CrewSheetPaper {
    private static final Wording WORDS = Wording.beside(CrewSheetPaper.class);

    private CrewSheetPaper() {}

    /**
     * The sheet for the agreed work.
     *
     * @param on the day that it carries
     */
    public static CrewSheet of(Dossier dossier, CrewCalendar calendar, LocalDate on) {
        Job job = dossier.job();
        List<WorkDay> open = calendar.openDays();
        return new CrewSheet(
                PaperHeads.of(dossier, on),
                job.site().locateTicket().orElse(""),
                dossier.terms().of("soiltype", job.site().soil().type()),
                new WallWorks(dossier).all(),
                calendar.days().stream()
                        .map(day -> new CrewSheet.Day(
                                day.number(), PrintedDates.words(day.date()), what(day), open.contains(day)))
                        .toList(),
                FindingNotes.forCrew(dossier).stream()
                        .filter(CrewSheetPaper::isForTheTrench)
                        .toList(),
                new CrewSheet.Limits(
                        LadderRule.FROM.text(),
                        LadderRule.WITHIN.text(),
                        LadderRule.ABOVE_EDGE.text(),
                        TrenchLimits.SPOIL_BACK.text()),
                dossier.phrases().deference(),
                CrewLog.of(dossier, calendar));
    }

    private static String what(WorkDay day) {
        Stream<String> named = day.isIdle()
                ? day.waits().stream().map(wait -> WORDS.get("wait." + PaperWords.key(wait.name())))
                : day.steps().stream().map(step -> WORDS.get("step." + PaperWords.key(step.name())));
        return named.collect(Collectors.joining(", "));
    }

    private static boolean isForTheTrench(FindingNote note) {
        return note.severity().equals("stop") || note.severity().equals("must");
    }
}
