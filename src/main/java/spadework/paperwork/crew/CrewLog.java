// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.AsBuilt;
import spadework.job.HoldPoint;
import spadework.job.Job;
import spadework.job.Side;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.work.PipeEnd;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWork;
import spadework.paperwork.work.WallWorks;
import spadework.pricebook.Measure;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;
import spadework.wording.Language;
import spadework.wording.Wording;

/**
 * What the crew writes down while it works: a record that is filled in on paper or in a table and goes back into the
 * job as what was built.
 */
public final class CrewLog {
    private static final Wording WORDS = Wording.beside(CrewLog.class);

    private final Dossier dossier;
    private final Job job;
    private final Language language;

    private CrewLog(Dossier dossier) {
        this.dossier = dossier;
        this.job = dossier.job();
        this.language = dossier.terms().language();
    }

    /** The whole log: each day's look at the trench, each wall, the pipes, the water tests, the job. */
    public static List<LogPart> of(Dossier dossier, CrewCalendar calendar) {
        CrewLog log = new CrewLog(dossier);
        List<PipeWork> pipes = new PipeWorks(dossier).all();
        List<LogPart> parts = new ArrayList<>();
        parts.add(log.part(
                LogKind.DAYS,
                "days",
                calendar.openDays().stream().flatMap(log::day).toList()));
        new WallWorks(dossier).all().forEach(wall -> parts.add(log.wall(wall)));
        parts.add(log.part(
                LogKind.PIPES, "pipes", pipes.stream().flatMap(log::pipe).toList()));
        parts.add(log.part(
                LogKind.TESTS,
                "tests",
                pipes.stream()
                        .filter(pipe -> !pipe.kind().equals("main"))
                        .flatMap(log::test)
                        .toList()));
        parts.add(log.whole());
        return parts.stream().filter(part -> !part.rows().isEmpty()).toList();
    }

    private LogPart part(LogKind kind, String name, List<LogRow> rows) {
        return new LogPart(
                kind, WORDS.in(language).get("log." + name), WORDS.in(language).get("tab." + name), rows);
    }

    /** Hazards are those of the form that is filled in at the trench. */
    private Stream<LogRow> day(WorkDay day) {
        String hazards = DayForm.in(language).hazardsInARow();
        return Stream.of("by", "soil", "hazards", "done")
                .map(fact -> new LogRow(
                        "inspections/" + day.date() + "/" + fact,
                        WORDS.in(language).get("day." + fact, language.day(day.date()), hazards),
                        ""));
    }

    private LogPart wall(WallWork work) {
        Wall wall = job.getWall(work.label());
        String at = "walls/" + work.label() + "/";
        List<LogRow> rows = new ArrayList<>();
        rows.add(new LogRow(at + "length", WORDS.in(language).get("wall.length"), work.length()));
        rows.add(new LogRow(
                at + "depthStart", WORDS.in(language).get("wall.depth-start"), depth(wall, wall.depthStart(), false)));
        rows.add(new LogRow(
                at + "depthEnd", WORDS.in(language).get("wall.depth-end"), depth(wall, wall.depthEnd(), true)));
        hold(rows, work, 1);
        if (!work.finish().wetFilm().isEmpty()) {
            String planned = WORDS.in(language)
                    .get(
                            work.finish().coats() == 1 ? "wall.planned-film" : "wall.planned-wet",
                            new WallWorks(dossier).wetFilmOfACoat(wall),
                            work.finish().wetFilm());
            for (int coat = 1; coat <= work.finish().coats(); coat++) {
                rows.add(new LogRow(
                        at + "coats/" + coat + "/wet", WORDS.in(language).get("wall.wet", coat), planned));
            }
        }
        gallons(work)
                .ifPresent(planned ->
                        rows.add(new LogRow(at + "gallons", WORDS.in(language).get("wall.gallons"), planned)));
        rows.add(new LogRow(at + "batches", WORDS.in(language).get("wall.batches"), ""));
        rows.add(new LogRow(at + "temperature", WORDS.in(language).get("wall.temperature"), ""));
        hold(rows, work, 2);
        return new LogPart(
                LogKind.WALL,
                WORDS.in(language).get("log.wall", work.label(), work.where()),
                WORDS.in(language).get("tab.wall", work.label()),
                rows);
    }

    /** A wall starts at its west end, or at its north end where it faces east or west. */
    private String depth(Wall wall, Length depth, boolean atEnd) {
        boolean along = wall.faces() == Side.NORTH || wall.faces() == Side.SOUTH;
        Side end = along ? (atEnd ? Side.EAST : Side.WEST) : (atEnd ? Side.SOUTH : Side.NORTH);
        return WORDS.in(language).get("planned-at." + PaperWords.key(end.name()), depth.text());
    }

    private void hold(List<LogRow> rows, WallWork work, int number) {
        String at = "walls/" + work.label() + "/holdPoints/" + point(work.label(), number) + "/";
        Stream.of("on", "by", "photo", "waived")
                .map(fact -> new LogRow(at + fact, WORDS.in(language).get("hold." + fact, number), ""))
                .forEach(rows::add);
    }

    /** The name of a hold point as the job has it already, else as the scope of work has it. */
    private String point(String wall, int number) {
        return built().flatMap(record -> record.wall(wall))
                .flatMap(record -> record.holdPoints().stream()
                        .filter(point -> point.number() == number)
                        .map(HoldPoint::point)
                        .findFirst())
                .orElseGet(() -> WORDS.in(language).get("point." + number));
    }

    private Optional<AsBuilt> built() {
        return job.agreement().asBuilt();
    }

    private Optional<String> gallons(WallWork work) {
        return dossier.takeoff().quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.COAT_GALLONS
                        && quantity.label().equals(work.label()))
                .map(quantity -> Figures.withUnit(quantity.printed(), quantity.unit()))
                .findFirst();
    }

    private Stream<LogRow> pipe(PipeWork pipe) {
        String at = "pipes/" + pipe.label() + "/";
        String kind = WORDS.in(language).get("pipe-kind." + PaperWords.key(pipe.kind()));
        LogRow length =
                new LogRow(at + "length", WORDS.in(language).get("pipe.length", pipe.label(), kind), pipe.length());
        return Stream.concat(
                Stream.of(length),
                PipeEnd.of(job.water(), pipe.label()).stream()
                        .map(end -> new LogRow(
                                at + end.key(),
                                WORDS.in(language).get("pipe." + place(end), pipe.label(), end.at()),
                                end.level().map(Length::levelText).orElse(""))));
    }

    private static String place(PipeEnd end) {
        if (end.flow() == PipeEnd.Flow.OUT) {
            return "low";
        }
        return end.at().isEmpty() ? "high" : "high-at";
    }

    private Stream<LogRow> test(PipeWork pipe) {
        return Stream.of("on", "by", "passed", "what")
                .map(fact -> new LogRow(
                        "flowTests/" + pipe.label() + "/" + fact,
                        WORDS.in(language).get("test." + fact, pipe.label()),
                        ""));
    }

    private LogPart whole() {
        return part(
                LogKind.JOB,
                "job",
                Stream.of("started", "finished", "soilFound", "stone", "loads", "note")
                        .map(fact -> new LogRow(fact, WORDS.in(language).get("job." + fact), ""))
                        .toList());
    }
}
