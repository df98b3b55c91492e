// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spadework.job.FinishSystem;
import spadework.job.WaitFor;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricebook.WorkStep;
import spadework.schedule.CrewCalendar;
import spadework.schedule.Stage;
import spadework.schedule.WorkDay;

/**
 * What happens day by day, for the homeowner: no hours, no crews, no cost.
 *
 * @param rows in order of their first day
 * @param weather what is said of days kept for weather; empty for none
 */
public record DayByDay(List<DayRow> rows, String weather) {
    /** Nothing is told. */
    public static final DayByDay NONE = new DayByDay(List.of(), "");

    public DayByDay {
        rows = List.copyOf(rows);
    }

    /**
     * The days of the dossier's job; none where they do not fit the schedule that the paper promises, which is a
     * finding for the contractor.
     */
    public static DayByDay of(Dossier dossier) {
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        boolean fits = calendar.workingDays() <= dossier.job().schedule().workingDays()
                && !calendar.finish().isAfter(dossier.job().schedule().latestFinish());
        return fits ? new DayByDay(rows(calendar, dossier), weather(calendar, dossier)) : NONE;
    }

    private static List<DayRow> rows(CrewCalendar calendar, Dossier dossier) {
        PaperWords terms = dossier.terms();
        TreeMap<Integer, List<DayRow>> byFirst = new TreeMap<>();
        for (WorkStep step : WorkStep.values()) {
            add(
                    byFirst,
                    calendar.days().stream()
                            .filter(day -> day.steps().contains(step))
                            .toList(),
                    key(step, calendar, dossier),
                    terms);
        }
        for (WaitFor what : WaitFor.values()) {
            add(
                    byFirst,
                    calendar.days().stream()
                            .filter(day -> day.waits().contains(what))
                            .toList(),
                    "day.wait." + PaperWords.key(what.name()),
                    terms);
        }
        return byFirst.values().stream().flatMap(List::stream).toList();
    }

    /** What is said of a step: of one wall or of several, and of what goes on them. */
    private static String key(WorkStep step, CrewCalendar calendar, Dossier dossier) {
        List<Wall> walls = dossier.job().walls();
        String key = "day." + PaperWords.key(step.name());
        if (step == WorkStep.COAT) {
            Set<FinishSystem> systems = EnumSet.noneOf(FinishSystem.class);
            walls.forEach(wall -> systems.add(wall.surface().finish().system()));
            if (systems.size() != 1) {
                return key + ".several";
            }
            key += "." + PaperWords.key(systems.iterator().next().name());
        }
        if (step == WorkStep.BACKFILL && has(calendar, Stage.ROOF_OVER)) {
            return key + ".roof";
        }
        if (step == WorkStep.PIPES && !has(calendar, Stage.PIPES)) {
            return key + ".trench";
        }
        boolean told = walls.size() > 1 && dossier.terms().find(key + ".walls").isPresent();
        return told ? key + ".walls" : key;
    }

    private static boolean has(CrewCalendar calendar, Stage stage) {
        return calendar.days().stream().flatMap(day -> day.parts().stream()).anyMatch(part -> part.stage() == stage);
    }

    private static void add(TreeMap<Integer, List<DayRow>> rows, List<WorkDay> days, String key, PaperWords terms) {
        if (!days.isEmpty()) {
            TreeSet<Integer> numbers =
                    new TreeSet<>(days.stream().map(WorkDay::number).toList());
            rows.computeIfAbsent(numbers.first(), first -> new ArrayList<>())
                    .add(new DayRow(words(numbers.first(), numbers.last(), terms), terms.get(key)));
        }
    }

    private static String words(int first, int last, PaperWords terms) {
        String from = Integer.toString(first);
        String to = Integer.toString(last);
        if (first == last) {
            return terms.get("days.one", "first", from);
        }
        return terms.get(last == first + 1 ? "days.two" : "days.more", "first", from, "last", to);
    }

    /** What the schedule promises beyond the days told: a reader who counts finds the days of the first page. */
    private static String weather(CrewCalendar calendar, Dossier dossier) {
        PaperWords terms = dossier.terms();
        int told = calendar.workingDays() - calendar.weatherDays();
        int spare = dossier.job().schedule().workingDays() - told;
        return spare == 0
                ? ""
                : terms.get(spare == 1 ? "days.weather.one" : "days.weather", "days", Integer.toString(spare));
    }
}
