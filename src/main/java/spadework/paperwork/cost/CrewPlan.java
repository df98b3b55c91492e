// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import spadework.drawing.crew.CrewChart;
import spadework.drawing.shape.Scene;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;
import spadework.whatif.Case;

/**
 * The calendar of crews on the cost sheet.
 *
 * @param facts name, text
 */
public record CrewPlan(Scene chart, Map<String, String> facts) {

    /** The plan of the dossier's job. */
    public static CrewPlan of(Dossier dossier) {
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        return new CrewPlan(chart(calendar, dossier.terms()), facts(calendar, dossier.terms()));
    }

    /** The chart alone, of a job otherwise. */
    static Scene chart(Case job, PaperWords terms) {
        return chart(CrewCalendar.of(job.job(), job.company(), job.book(), job.takeoff()), terms);
    }

    private static Scene chart(CrewCalendar calendar, PaperWords terms) {
        Set<String> crews = new TreeSet<>();
        calendar.days().forEach(day -> crews.addAll(day.crews().keySet()));
        List<String> rows = List.copyOf(crews);
        String words = terms.get(
                "days.chart",
                "days",
                Integer.toString(calendar.days().size()),
                "from",
                PrintedDates.words(calendar.start()),
                "to",
                PrintedDates.words(calendar.finish()));
        return CrewChart.of(
                rows,
                calendar.days().stream().map(day -> day(calendar, rows, day)).toList(),
                calendar.weatherDays(),
                words);
    }

    /** Bars of a day behind each other in the order in which the crews work. */
    private static CrewChart.Day day(CrewCalendar calendar, List<String> rows, WorkDay day) {
        Map<String, Double> starts = new HashMap<>();
        double hours = calendar.hoursPerDay();
        double at = 0;
        for (String crew : day.order()) {
            starts.put(crew, at);
            at += day.crews().get(crew) / (hours * calendar.crews());
        }
        List<Double> from = new ArrayList<>();
        List<Double> to = new ArrayList<>();
        for (String crew : rows) {
            double start = starts.getOrDefault(crew, 0.0);
            from.add(start);
            to.add(Math.min(1, start + day.crews().getOrDefault(crew, 0.0) / (hours * calendar.crews())));
        }
        return new CrewChart.Day(
                day.number(), day.date().getMonthValue() + "/" + day.date().getDayOfMonth(), from, to);
    }

    private static Map<String, String> facts(CrewCalendar calendar, PaperWords terms) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(terms.get("days.fact.start"), PrintedDates.words(calendar.start()));
        facts.put(terms.get("days.fact.finish"), PrintedDates.words(calendar.finish()));
        facts.put(
                terms.get("days.fact.working"),
                terms.get(
                        "days.fact.working.text",
                        "days",
                        Integer.toString(calendar.workingDays()),
                        "work",
                        Integer.toString(calendar.daysOfWork()),
                        "waiting",
                        Integer.toString(calendar.daysOfWaiting()),
                        "weather",
                        Integer.toString(calendar.weatherDays())));
        facts.put(terms.get("days.fact.crews"), Integer.toString(calendar.crews()));
        facts.put(
                terms.get("days.fact.excavator"),
                terms.get(
                        "days.fact.excavator.text",
                        "days",
                        Integer.toString(calendar.excavatorDays()),
                        "standing",
                        Integer.toString(calendar.standingDays())));
        facts.put(terms.get("days.fact.shield"), Integer.toString(calendar.shieldDays()));
        facts.put(terms.get("days.fact.pump"), Integer.toString(calendar.pumpDays()));
        facts.put(terms.get("days.fact.inspections"), Integer.toString(calendar.inspections()));
        facts.put(terms.get("days.fact.trips"), Integer.toString(calendar.trips()));
        return facts;
    }
}
