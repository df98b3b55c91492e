// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import spadework.company.Company;
import spadework.company.WorkCalendar;
import spadework.job.Job;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.takeoff.DerivedQuantities;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffSection;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** What is counted on the calendar of crews: working days, inspections, rental, standing, trips, overtime. */
public final class DayQuantities {
    private static final String CALENDAR = "calendar of crews";

    private DayQuantities() {}

    /**
     * Measures a job, and counts its days.
     *
     * @param book as this job uses it
     */
    public static Takeoff takeoff(Job job, Company company, PriceBook book) {
        return ScheduledTakeoff.of(job, company, book).takeoff();
    }

    /** A measured job with what is counted on its calendar. */
    static Takeoff added(Job job, PriceBook book, Takeoff measured, CrewCalendar calendar) {
        return DerivedQuantities.added(job, book, measured, of(calendar, setUp(measured)));
    }

    private static TakeoffSection setUp(Takeoff takeoff) {
        return takeoff.sections().stream()
                .filter(section -> section.kind() == Section.SETUP)
                .findFirst()
                .orElseThrow();
    }

    static List<Quantity> of(CrewCalendar calendar, TakeoffSection section) {
        List<Quantity> counted = new ArrayList<>();
        add(counted, section, Measure.WORKING_DAY, workingDays(calendar));
        add(
                counted,
                section,
                Measure.TRENCH_INSPECTION,
                count(
                        Measure.TRENCH_INSPECTION,
                        calendar.inspections(),
                        "days of work from the first digging to the last backfill",
                        "29 CFR 1926.651(k)(1)"));
        add(counted, section, Measure.SHIELD_DAY, shieldDays(calendar));
        add(
                counted,
                section,
                Measure.EXCAVATOR_DAY,
                count(
                        Measure.EXCAVATOR_DAY,
                        calendar.excavatorDays(),
                        "working days from its first to its last use",
                        WorkCalendar.SOURCE));
        add(
                counted,
                section,
                Measure.STANDING_DAY,
                count(
                        Measure.STANDING_DAY,
                        calendar.standingDays(),
                        "working days on site without use",
                        WorkCalendar.SOURCE));
        add(
                counted,
                section,
                Measure.PUMP_DAY,
                count(
                        Measure.PUMP_DAY,
                        calendar.pumpDays(),
                        "working days from the first digging to the last backfill",
                        WorkCalendar.SOURCE));
        add(
                counted,
                section,
                Measure.MOBILIZATION_TRIP,
                count(
                        Measure.MOBILIZATION_TRIP,
                        calendar.trips(),
                        "times that machines are brought",
                        WorkCalendar.SOURCE));
        add(
                counted,
                section,
                Measure.OVERTIME,
                count(
                        Measure.OVERTIME,
                        calendar.overtimeHours(),
                        "crew hours beyond the usual day",
                        WorkCalendar.SOURCE));
        return counted;
    }

    /** Days of work, of waiting, and those kept for weather. */
    private static Worked workingDays(CrewCalendar calendar) {
        Listed work = Listed.of("D", "days of work", calendar.daysOfWork(), Unit.DAY, CALENDAR);
        Listed waiting = Listed.of("I", "days of waiting", calendar.daysOfWaiting(), Unit.DAY, CALENDAR);
        Listed weather = new Listed(
                "r", "kept for weather", calendar.calendar().weather().fraction(), Unit.NONE, WorkCalendar.SOURCE);
        return Worked.of(
                "n",
                Measure.WORKING_DAY.trade(),
                calendar.workingDays(),
                Unit.DAY,
                new Formula("D + I + ceil(r × D)", WorkCalendar.SOURCE),
                work,
                waiting,
                weather);
    }

    /** Days of each shield. */
    private static Worked shieldDays(CrewCalendar calendar) {
        return Worked.of(
                "n",
                Measure.SHIELD_DAY.trade(),
                calendar.shieldDays(),
                Unit.DAY,
                new Formula("d × k", WorkCalendar.SOURCE),
                Listed.of(
                        "d",
                        "working days from the first digging where a shield stands to the last backfill",
                        calendar.shieldedDays().size(),
                        Unit.DAY,
                        CALENDAR),
                Listed.of("k", "shields, one for each crew", calendar.shields().count(), Unit.NONE, CALENDAR));
    }

    private static Worked count(Measure measure, double value, String what, String source) {
        return Worked.of(
                "n",
                measure.trade(),
                value,
                measure.unit(),
                new Formula("x", source),
                Listed.of("x", what, value, measure.unit(), CALENDAR));
    }

    private static void add(List<Quantity> counted, TakeoffSection section, Measure measure, Working working) {
        if (working.value().compareTo(BigDecimal.ZERO) > 0) {
            String description = measure.heading() + ", whole job";
            counted.add(new Quantity("whole-job." + measure.id(), measure, section, "whole job", description, working));
        }
    }
}
