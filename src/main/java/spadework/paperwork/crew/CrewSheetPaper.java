// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.work.FinishWork;
import spadework.paperwork.work.TrenchWork;
import spadework.paperwork.work.WallWork;
import spadework.paperwork.work.WallWorks;
import spadework.safety.LadderRule;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;
import spadework.trench.TrenchLimits;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Puts the crew's sheet together. */
public final class CrewSheetPaper {
    private static final Wording WORDS = Wording.beside(CrewSheetPaper.class);

    /** Sentences that stand on every sheet and name no figure of the job. */
    private static final List<String> PLAIN = List.of(
            "title",
            "log-title",
            "page",
            "of",
            "job",
            "utility",
            "soil",
            "emergency",
            "before-work",
            "wall",
            "length",
            "trench",
            "bank",
            "finish",
            "day",
            "date",
            "what-we-do",
            "trench-open",
            "hold-points",
            "hold-points-are",
            "day-sheet",
            "day-sheet-look",
            "name",
            "time",
            "soil-types",
            "hazards",
            "done",
            "signature",
            "log",
            "log-fill-in",
            "what",
            "planned",
            "found",
            "days",
            "job-number",
            "for",
            "contact",
            "where",
            "call");

    private final Dossier dossier;
    private final Language language;

    private CrewSheetPaper(Dossier dossier) {
        this.dossier = dossier;
        this.language = dossier.company().letterhead().crewLanguage();
    }

    /**
     * The sheet for the agreed work.
     *
     * @param on the day that it carries
     */
    public static CrewSheet of(Dossier dossier, CrewCalendar calendar, LocalDate on) {
        CrewSheetPaper paper = new CrewSheetPaper(dossier);
        List<WorkDay> open = calendar.openDays();
        return new CrewSheet(
                PaperHeads.of(dossier, on),
                paper.language,
                paper.say(on),
                new WallWorks(dossier).all().stream().map(paper::wall).toList(),
                calendar.days().stream()
                        .map(day -> new CrewSheet.Day(
                                day.number(), paper.language.day(day.date()), paper.what(day), open.contains(day)))
                        .toList(),
                FindingNotes.forCrew(dossier).stream()
                        .filter(note -> note.severity().equals("stop"))
                        .map(CrewSheetPaper::stop)
                        .toList(),
                CrewLog.of(dossier, calendar));
    }

    private Map<String, String> say(LocalDate on) {
        Job job = dossier.job();
        Map<String, String> say = new TreeMap<>();
        PLAIN.forEach(key -> say.put(key, WORDS.in(language).get("sheet." + key)));
        say.put("issued", language.day(on));
        say.put(
                "marks",
                job.site()
                        .locateTicket()
                        .map(ticket -> WORDS.in(language).get("sheet." + "ticket", ticket))
                        .orElseGet(() -> WORDS.in(language).get("sheet." + "no-ticket")));
        String soil = WORDS.in(language)
                .get("soil." + PaperWords.key(job.site().soil().type().name()));
        say.put("soil-type", WORDS.in(language).get("sheet." + "soil-type", soil));
        say.put(
                "limits",
                WORDS.in(language)
                        .get(
                                "sheet." + "limits",
                                LadderRule.WITHIN.text(),
                                LadderRule.FROM.text(),
                                LadderRule.ABOVE_EDGE.text(),
                                TrenchLimits.SPOIL_BACK.text()));
        say.put(
                "deference",
                WORDS.in(language).get("sheet." + "deference", dossier.phrases().deference()));
        return say;
    }

    private CrewWall wall(WallWork wall) {
        TrenchWork trench = wall.trench();
        String deep = WORDS.in(language)
                .get("wall." + (trench.hand() ? "by-hand" : "dug"), trench.depth(), trench.bottomWidth());
        String bank = WORDS.in(language).get("bank." + trench.protection(), trench.slope());
        return new CrewWall(wall.label(), wall.where(), wall.length(), deep, bank, finish(wall.finish()));
    }

    private String finish(FinishWork finish) {
        return finish.wetFilm().isEmpty()
                ? WORDS.in(language).get("finish." + finish.system(), finish.material())
                : WORDS.in(language)
                        .get(
                                finish.coats() == 1 ? "finish." + "coat" : "finish." + "coats",
                                finish.wetFilm(),
                                finish.coats());
    }

    private static String stop(FindingNote note) {
        return Stream.of(note.what(), note.action(), note.accepted())
                .filter(text -> !text.isEmpty())
                .map(CrewSheetPaper::sentence)
                .collect(Collectors.joining(" "));
    }

    private static String sentence(String text) {
        String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return begun.matches("(?s).*[.!?:]") ? begun : begun + ".";
    }

    private String what(WorkDay day) {
        Stream<String> named = day.isIdle()
                ? day.waits().stream().map(wait -> WORDS.in(language).get("wait." + PaperWords.key(wait.name())))
                : day.steps().stream().map(step -> WORDS.in(language).get("step." + PaperWords.key(step.name())));
        return named.collect(Collectors.joining(", "));
    }
}
