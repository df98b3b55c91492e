// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.company.Company;
import spadework.company.Production;
import spadework.company.Rates;
import spadework.company.WorkCalendar;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Schedule;
import spadework.job.Work;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.pricebook.Books;
import spadework.pricebook.ItemCost;
import spadework.pricebook.ItemIdentity;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricebook.Source;
import spadework.pricebook.WorkStep;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;
import spadework.takeoff.TakeoffSection;

/** A job whose lines are hours: each unit of an item takes its crew an hour. */
final class DayBooks {
    private static final TakeoffSection WALL = new TakeoffSection(Section.WALL, "A", "Wall A");
    private static final TakeoffSection GROUND = new TakeoffSection(Section.GROUND, "ground", "Ground");

    private final WorkCalendar calendar;
    private final Schedule schedule;
    private final List<LineItem> items = new ArrayList<>();
    private final List<TakeoffLine> lines = new ArrayList<>();
    private TakeoffSection section = WALL;

    DayBooks(WorkCalendar calendar, Schedule schedule) {
        this.calendar = calendar;
        this.schedule = schedule;
    }

    static WorkCalendar calendar(int crews, String weather, int standingDays) {
        WorkCalendar usual = WorkCalendar.USUAL;
        return new WorkCalendar(
                crews,
                usual.hoursPerDay(),
                usual.workDays(),
                true,
                List.of(),
                Percent.of(weather),
                standingDays,
                usual.waits());
    }

    static Schedule schedule(String start, String finish, int days) {
        return new Schedule(LocalDate.parse(start), LocalDate.parse(finish), days, "");
    }

    static Company with(Optional<WorkCalendar> calendar) {
        Company c = Books.company();
        return new Company(
                c.name(),
                c.credentials(),
                c.contact(),
                c.letterhead(),
                new Rates(c.wages(), c.crews(), c.machines(), List.of()),
                new Production(calendar, Map.of(), c.backfill()),
                c.priceRules(),
                c.tax(),
                c.usualTerms());
    }

    static Company silent(Company c) {
        return with(Optional.empty());
    }

    /** What comes now is done at that wall. */
    DayBooks at(String wall) {
        section = new TakeoffSection(Section.WALL, wall, "Wall " + wall);
        return this;
    }

    /** What comes now is done for the whole job. */
    DayBooks atTheHouse() {
        section = GROUND;
        return this;
    }

    /** So many hours of a crew, followed by that measure. */
    DayBooks hours(Measure measure, String crew, Optional<String> machine, String hours) {
        return add(
                Optional.of(measure),
                Optional.empty(),
                Optional.of(new Labor(crew, BigDecimal.ONE, machine, List.of(), Optional.empty())),
                hours);
    }

    DayBooks dig(String hours) {
        return hours(Measure.DIG_MACHINE, "dig crew", Optional.of("mini-excavator"), hours);
    }

    DayBooks backfill(String hours) {
        return hours(Measure.BACKFILL, "dig crew", Optional.of("mini-excavator"), hours);
    }

    DayBooks coat(String hours) {
        return hours(Measure.COAT, "wall crew", Optional.empty(), hours);
    }

    DayBooks pipes(String hours) {
        return hours(Measure.MAIN_PIPE, "pipe crew", Optional.empty(), hours);
    }

    DayBooks step(WorkStep step) {
        return add(Optional.empty(), Optional.of(step), Optional.empty(), "1");
    }

    private DayBooks add(Optional<Measure> measure, Optional<WorkStep> step, Optional<Labor> labor, String quantity) {
        String code = "I" + items.size();
        items.add(new LineItem(
                new ItemIdentity(
                        code,
                        section.kind(),
                        code,
                        code,
                        measure.map(Measure::unit).orElse(Unit.EACH)),
                new ItemUse(measure, true, false, step),
                new ItemCost(Optional.empty(), labor, Optional.empty(), Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new ItemUpkeep(
                        new Source("test", LocalDate.of(2026, 1, 1)),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        List.of())));
        lines.add(new TakeoffLine(
                code,
                section,
                new BigDecimal(quantity),
                Unit.EACH,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty()));
        return this;
    }

    Job job() {
        Job j = Jobs.job();
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                new Work(j.walls(), j.corners(), j.water(), j.restoration(), j.protection(), schedule),
                j.pricing(),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }

    Company company() {
        return with(Optional.of(calendar));
    }

    CrewCalendar laid() {
        Map<String, LineItem> byCode = new HashMap<>();
        items.forEach(item -> byCode.put(item.code(), item));
        PriceBook book = new PriceBook("test", LocalDate.of(2026, 1, 1), byCode, Map.of(), List.of(), 1.4, 10);
        return CrewCalendar.of(job(), company(), book, new Takeoff(List.of(WALL), List.of(), lines, List.of()));
    }
}
