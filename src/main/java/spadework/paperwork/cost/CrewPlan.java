// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import spadework.drawing.crew.CrewChart;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.schedule.ChangedFinish;
import spadework.schedule.CrewCalendar;
import spadework.schedule.DayPart;
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
        return new CrewPlan(chart(calendar, dossier.terms()), facts(calendar, dossier.job(), dossier.terms()));
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

    /** Bars of a day behind each other in the order of the work; what a crew does without a break is one bar. */
    private static CrewChart.Day day(CrewCalendar calendar, List<String> rows, WorkDay day) {
        List<CrewChart.Bar> bars = new ArrayList<>();
        for (DayPart part : day.parts()) {
            int row = rows.indexOf(part.crew());
            double from = part.from() / calendar.hoursPerDay();
            double to = Math.min(1, part.to() / calendar.hoursPerDay());
            int last = bars.size() - 1;
            if (last >= 0 && bars.get(last).crew() == row) {
                bars.set(last, new CrewChart.Bar(row, bars.get(last).from(), to));
            } else {
                bars.add(new CrewChart.Bar(row, from, to));
            }
        }
        return new CrewChart.Day(
                day.number(), day.date().getMonthValue() + "/" + day.date().getDayOfMonth(), bars);
    }

    private static Map<String, String> facts(CrewCalendar calendar, Job job, PaperWords terms) {
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
        facts.put(terms.get("days.fact.promised"), promised(calendar, job, terms));
        facts.put(terms.get("days.fact.crews"), Integer.toString(calendar.crews()));
        facts.put(
                terms.get("days.fact.excavator"),
                terms.get(
                        "days.fact.excavator.text",
                        "days",
                        Integer.toString(calendar.excavatorDays()),
                        "standing",
                        Integer.toString(calendar.standingDays())));
        if (calendar.shields().count() > 0) {
            facts.put(
                    terms.get("days.fact.shield"),
                    terms.get(
                            "days.fact.shield.text",
                            "days",
                            Integer.toString(calendar.shieldDays()),
                            "shields",
                            Integer.toString(calendar.shields().count()),
                            "each",
                            Integer.toString(calendar.shieldedDays().size())));
        }
        if (calendar.pumped()) {
            facts.put(terms.get("days.fact.pump"), Integer.toString(calendar.pumpDays()));
        }
        facts.put(terms.get("days.fact.inspections"), Integer.toString(calendar.inspections()));
        facts.put(terms.get("days.fact.trips"), Integer.toString(calendar.trips()));
        return facts;
    }

    /** The days of the homeowner's papers with those of signed changes, and how they stand to those of the calendar. */
    private static String promised(CrewCalendar calendar, Job job, PaperWords terms) {
        ChangedFinish finish = ChangedFinish.of(job, change -> true, 0);
        int days = job.schedule().workingDays() + finish.days();
        int more = days - calendar.workingDays();
        String key = more == 0 ? "same" : more > 0 ? "more" : "fewer";
        return terms.get(
                "days.fact.promised." + key,
                "days",
                Integer.toString(days),
                "finish",
                PrintedDates.words(finish.day().orElse(finish.contract())),
                key,
                Integer.toString(Math.abs(more)));
    }
}
