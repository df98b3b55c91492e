// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.OutletKind;
import spadework.job.Water;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.work.DigWork;
import spadework.paperwork.work.DigWorks;
import spadework.pricebook.Measure;
import spadework.pricebook.WorkStep;
import spadework.schedule.CrewCalendar;
import spadework.schedule.RoofOverWall;
import spadework.schedule.Stage;
import spadework.schedule.WorkDay;
import spadework.wording.Language;
import spadework.wording.Wording;

/** What is done on which day, and which trenches may stand open then. A day names only what the job has. */
final class CrewDays {
    private static final Wording WORDS = Wording.beside(CrewDays.class);

    private final Dossier dossier;
    private final CrewCalendar calendar;
    private final Language language;

    CrewDays(Dossier dossier, CrewCalendar calendar, Language language) {
        this.dossier = dossier;
        this.calendar = calendar;
        this.language = language;
    }

    List<CrewSheet.Day> all() {
        List<WorkDay> open = calendar.openDays();
        return calendar.days().stream()
                .map(day -> new CrewSheet.Day(
                        day.number(),
                        language.day(day.date()),
                        language.weekday(day.date()),
                        what(day),
                        open.contains(day),
                        open.contains(day) ? places(day.date()) : List.of()))
                .toList();
    }

    /** Days in a row with the same words as one; what has to be there first comes before them. */
    List<CrewSheet.Stretch> plan(List<CrewSheet.Day> days, List<String> before) {
        List<CrewSheet.Stretch> plan = new ArrayList<>();
        for (String one : before) {
            plan.add(new CrewSheet.Stretch(
                    WORDS.in(language).get("plan.before"),
                    "",
                    WORDS.in(language).get("plan." + one),
                    false));
        }
        for (int from = 0; from < days.size(); ) {
            CrewSheet.Day first = days.get(from);
            int to = from;
            while (to + 1 < days.size()
                    && days.get(to + 1).what().equals(first.what())
                    && days.get(to + 1).open() == first.open()) {
                to++;
            }
            plan.add(stretch(first, days.get(to)));
            from = to + 1;
        }
        return plan;
    }

    private CrewSheet.Stretch stretch(CrewSheet.Day first, CrewSheet.Day last) {
        return first.number() == last.number()
                ? new CrewSheet.Stretch(Integer.toString(first.number()), first.weekday(), first.what(), first.open())
                : new CrewSheet.Stretch(
                        WORDS.in(language).get("plan.days", first.number(), last.number()),
                        WORDS.in(language).get("plan.on", first.weekday(), last.weekday()),
                        first.what(),
                        first.open());
    }

    /** All walls, since any of them may stand open while one does; pipes and pits from the day on which they begin. */
    private List<DayPlace> places(LocalDate day) {
        Job job = dossier.job();
        List<DayPlace> places = new ArrayList<>();
        job.walls().forEach(wall -> places.add(new DayPlace(wall.label(), wall.where())));
        if (!day.isBefore(calendar.first(WorkStep.PIPES))) {
            List<DigWork> digs = DigWorks.of(job);
            digs.forEach(dig -> places.add(place(dig, digs)));
        }
        return places;
    }

    /** A sump's pit and its discharge pipe carry one label. */
    private DayPlace place(DigWork dig, List<DigWork> digs) {
        String kind = WORDS.in(language).get("dig." + dig.kind());
        boolean only =
                digs.stream().filter(one -> one.label().equals(dig.label())).count() == 1;
        return new DayPlace(only ? dig.label() : dig.label() + " " + kind, only ? kind : "");
    }

    private String what(WorkDay day) {
        Stream<String> named = day.isIdle()
                ? day.waits().stream().map(wait -> WORDS.in(language).get("wait." + PaperWords.key(wait.name())))
                : day.steps().stream().flatMap(step -> step(step, day));
        return named.collect(Collectors.joining(", "));
    }

    private Stream<String> step(WorkStep step, WorkDay day) {
        return switch (step) {
            case PIPES -> pipes(day);
            case DRAIN -> drain();
            case BACKFILL -> fill(day);
            default -> Stream.of(WORDS.in(language).get("step." + PaperWords.key(step.name())));
        };
    }

    /** The trenches at the walls, the roof lines that lie in their fill, the trenches away from them. */
    private Stream<String> fill(WorkDay day) {
        Job job = dossier.job();
        return Stream.of(
                        isOn(day, Stage.BACKFILL)
                                ? Stream.of(WORDS.in(language).get("step.backfill"))
                                : Stream.<String>empty(),
                        isOn(day, Stage.ROOF_OVER)
                                ? job.water().roofLines().stream()
                                        .filter(line -> RoofOverWall.isOver(job, line))
                                        .map(line -> pipe("roof-over", line.label()))
                                : Stream.<String>empty(),
                        isOn(day, Stage.FILL_PIPES)
                                ? Stream.of(WORDS.in(language).get("step.fill-pipes"))
                                : Stream.<String>empty())
                .flatMap(part -> part);
    }

    private static boolean isOn(WorkDay day, Stage stage) {
        return day.parts().stream().anyMatch(part -> part.stage() == stage);
    }

    private Stream<String> pipes(WorkDay day) {
        if (!isOn(day, Stage.PIPES)) {
            return Stream.of(WORDS.in(language).get("pipe-day.trench"));
        }
        Water water = dossier.job().water();
        List<String> sumps = water.outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                .map(Outlet::label)
                .toList();
        boolean last = day.date().equals(calendar.last(WorkStep.PIPES));
        return Stream.of(
                        sumps.stream().map(sump -> pipe("sump", sump)),
                        water.mains().stream().map(main -> pipe("main", main.label())),
                        water.roofLines().stream()
                                .filter(line -> !RoofOverWall.isOver(dossier.job(), line))
                                .map(line -> pipe("roof-line", line.label())),
                        sumps.stream().map(sump -> pipe("discharge", sump)),
                        last ? sumps.stream().map(sump -> pipe("power", sump)) : Stream.<String>empty())
                .flatMap(part -> part);
    }

    private String pipe(String kind, String label) {
        return WORDS.in(language).get("pipe-day." + kind, label);
    }

    private Stream<String> drain() {
        return Stream.of(
                        part("drain", Measure.DRAIN_PIPE),
                        part("stone", Measure.STONE),
                        part("fabric", Measure.FABRIC),
                        part("test", Measure.FLOW_TEST))
                .flatMap(part -> part);
    }

    private Stream<String> part(String name, Measure measure) {
        boolean there = dossier.takeoff().quantities().stream()
                .anyMatch(quantity ->
                        quantity.measure() == measure && quantity.value().signum() > 0);
        return there ? Stream.of(WORDS.in(language).get("drain-day." + name)) : Stream.empty();
    }
}
