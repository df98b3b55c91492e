// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import spadework.job.Job;
import spadework.job.SoilType;
import spadework.measure.Figures;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.MarkedLine;
import spadework.paperwork.part.MarkedLines;
import spadework.paperwork.part.PaperHeads;
import spadework.safety.LadderRule;
import spadework.safety.way.NearLine;
import spadework.schedule.CrewCalendar;
import spadework.trench.Bank;
import spadework.trench.SlopeTable;
import spadework.trench.TrenchLimits;
import spadework.wording.Language;
import spadework.wording.Wording;

/** Puts the crew's sheet together. */
public final class CrewSheetPaper {
    private static final Wording WORDS = Wording.beside(CrewSheetPaper.class);

    /**
     * Sentences that stand on every sheet and name no figure of the job. What to do where gas is smelled or a bank
     * moves is common practice, no source; surface water is from memory (29 CFR 1926.651(h), T-24).
     */
    private static final List<String> PLAIN = List.of(
            "title",
            "log-title",
            "page",
            "of",
            "job",
            "soil",
            "place",
            "out",
            "in",
            "another",
            "another-place",
            "again",
            "length",
            "trench",
            "trenches",
            "bank",
            "finish",
            "edges",
            "type-b",
            "type-c",
            "day",
            "date",
            "what-we-do",
            "trench-open",
            "hold-points",
            "hold-points-are",
            "hold-codes",
            "on-paper",
            "phone-only",
            "day-sheet",
            "day-tab",
            "day-sheet-look",
            "day-sheet-rule",
            "name",
            "time",
            "soil-types",
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
            "call",
            "danger",
            "water");

    private final Dossier dossier;
    private final Language language;

    private CrewSheetPaper(Dossier dossier) {
        this.dossier = dossier;
        this.language = dossier.terms().language();
    }

    /**
     * The sheet for the agreed work.
     *
     * @param on the day that it carries
     */
    public static CrewSheet of(Dossier dossier, CrewCalendar calendar, LocalDate on) {
        CrewSheetPaper paper = new CrewSheetPaper(dossier);
        Language language = paper.language;
        CrewDays plan = new CrewDays(dossier, calendar, language);
        CrewStops stops = new CrewStops(dossier, language);
        List<CrewSheet.Day> days = plan.all();
        List<LogPart> log = CrewLog.of(dossier, calendar);
        return new CrewSheet(
                PaperHeads.of(dossier, on),
                language,
                paper.say(on),
                CrewCalls.of(dossier, language),
                stops.all(),
                new CrewTrenches(dossier, language).all(),
                new CrewEdges(dossier.job(), language).all(),
                days,
                plan.plan(days, stops.first()),
                DayForm.in(language),
                LogGrid.of(
                        log.stream().filter(part -> part.kind() == LogKind.WALL).toList()),
                log.stream()
                        .filter(part -> part.kind() != LogKind.WALL && part.kind() != LogKind.DAYS)
                        .sorted(Comparator.comparing(part -> part.kind() != LogKind.JOB))
                        .toList());
    }

    private Map<String, String> say(LocalDate on) {
        Job job = dossier.job();
        Map<String, String> say = new TreeMap<>();
        PLAIN.forEach(key -> say.put(key, WORDS.in(language).get("sheet." + key)));
        say.put("issued", language.day(on));
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
                                TrenchLimits.SPOIL_BACK.text(),
                                NearLine.ZONE.text()));
        say.put(
                "edges-are",
                WORDS.in(language)
                        .get(
                                "sheet." + "edges-are",
                                run(SoilType.A),
                                run(SoilType.B),
                                run(SoilType.C),
                                Bank.PROTECTED_FROM.text()));
        say.put("utility", utility());
        say.put(
                "deference",
                WORDS.in(language).get("sheet." + "deference", dossier.phrases().deference()));
        return say;
    }

    private static String run(SoilType type) {
        return Figures.inWorking(BigDecimal.valueOf(SlopeTable.run(type)));
    }

    /** What is done where a line lies before a wall (T-29); empty where none is known of. */
    private String utility() {
        List<MarkedLine> lines = MarkedLines.of(dossier);
        String walls = lines.stream().map(MarkedLine::wall).distinct().collect(Collectors.joining(", "));
        List<String> near =
                lines.stream().flatMap(line -> line.near().stream()).distinct().toList();
        if (lines.isEmpty()) {
            return "";
        }
        return near.isEmpty()
                ? WORDS.in(language).get("sheet.utility", walls)
                : WORDS.in(language)
                        .get("sheet.utility-near", walls, dossier.terms().row(near));
    }
}
