// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.Job;
import spadework.job.LimitKind;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.work.DigWork;
import spadework.paperwork.work.DigWorks;
import spadework.paperwork.work.FinishWork;
import spadework.paperwork.work.TrenchWork;
import spadework.paperwork.work.WallWork;
import spadework.paperwork.work.WallWorks;
import spadework.safety.LadderRule;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;
import spadework.trench.SpoilRoom;
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
            "place",
            "guards",
            "another",
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
        List<CrewSheet.Day> days = calendar.days().stream()
                .map(day -> new CrewSheet.Day(
                        day.number(),
                        paper.language.day(day.date()),
                        paper.language.weekday(day.date()),
                        paper.what(day),
                        open.contains(day)))
                .toList();
        return new CrewSheet(
                PaperHeads.of(dossier, on),
                paper.language,
                paper.say(on),
                Stream.concat(
                                new WallWorks(dossier).all().stream().map(paper::wall),
                                DigWorks.of(dossier.job()).stream().map(paper::dig))
                        .toList(),
                days,
                paper.plan(days),
                FindingNotes.forCrew(dossier).stream()
                        .filter(note -> note.severity().equals("stop"))
                        .map(CrewSheetPaper::stop)
                        .toList(),
                CrewLog.of(dossier, calendar));
    }

    private List<CrewSheet.Stretch> plan(List<CrewSheet.Day> days) {
        List<CrewSheet.Stretch> plan = new ArrayList<>();
        for (int from = 0; from < days.size(); ) {
            CrewSheet.Day first = days.get(from);
            int to = from;
            while (to + 1 < days.size()
                    && days.get(to + 1).what().equals(first.what())
                    && days.get(to + 1).open() == first.open()) {
                to++;
            }
            CrewSheet.Day last = days.get(to);
            plan.add(
                    from == to
                            ? new CrewSheet.Stretch(
                                    Integer.toString(first.number()), first.weekday(), first.what(), first.open())
                            : new CrewSheet.Stretch(
                                    WORDS.in(language).get("plan.days", first.number(), last.number()),
                                    WORDS.in(language).get("plan.on", first.weekday(), last.weekday()),
                                    first.what(),
                                    first.open()));
            from = to + 1;
        }
        return plan;
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

    private CrewTrench wall(WallWork wall) {
        TrenchWork trench = wall.trench();
        Wall measured = dossier.job().getWall(wall.label());
        String deep = WORDS.in(language)
                .get("wall." + (trench.hand() ? "by-hand" : "dug"), trench.depth(), trench.bottomWidth());
        return new CrewTrench(
                wall.label(),
                wall.where(),
                wall.length(),
                deep + ladder(TrenchLimits.needsWayOut(measured.deepestTrench())),
                WORDS.in(language).get("bank." + trench.protection(), trench.slope()),
                finish(wall.finish()),
                beside(measured));
    }

    private CrewTrench dig(DigWork dig) {
        String deep =
                WORDS.in(language).get(dig.length().isEmpty() ? "wall.pit" : "wall.dug", dig.depth(), dig.width());
        String bank = dig.deep() && dig.protection().equals("upright") ? "not-yet" : dig.protection();
        return new CrewTrench(
                dig.label(),
                WORDS.in(language).get("dig." + dig.kind()),
                dig.length(),
                deep + ladder(dig.wayOut()),
                WORDS.in(language).get("bank." + bank, dig.slope()),
                "",
                List.of());
    }

    private String ladder(boolean due) {
        return due ? WORDS.in(language).get("wall.ladder") : "";
    }

    /** What stands beside the wall, and where its soil cannot lie. */
    private List<String> beside(Wall wall) {
        Site site = dossier.job().site();
        List<String> beside = new ArrayList<>();
        for (SiteLimit limit : site.limits()) {
            if (limit.wall().equals(wall.label())) {
                String note = limit.note().isEmpty() ? "" : " (" + limit.note() + ")";
                beside.add(WORDS.in(language)
                                .get(
                                        "beside." + PaperWords.key(limit.kind().name()),
                                        limit.distance().text())
                        + note);
            }
        }
        SpoilRoom.inTheWay(site, wall)
                .map(limit -> limit.kind() == LimitKind.UTILITY ? "utility" : "none")
                .ifPresent(where -> beside.add(WORDS.in(language).get("spoil." + where)));
        return beside;
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
