// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import spadework.company.Company;
import spadework.company.WorkCalendar;
import spadework.job.Job;
import spadework.job.Waits;
import spadework.pricebook.PriceBook;
import spadework.pricebook.WorkStep;
import spadework.takeoff.Takeoff;

/**
 * A job's work, day by day.
 *
 * @param calendar the company's, or the usual one
 * @param crews that work at a time
 * @param hoursPerDay with overtime
 * @param overtime hours a day of it
 * @param waits of the job and the company together
 * @param days of work and of waiting on site, in order
 * @param weatherDays kept for bad weather, after them
 * @param finish the last day, with the days kept for weather; the first day where there is no work
 * @param diggers machines that dig
 * @param shields on site
 * @param pumped whether a pump is on site
 */
public record CrewCalendar(
        WorkCalendar calendar,
        int crews,
        double hoursPerDay,
        double overtime,
        Waits waits,
        List<WorkDay> days,
        int weatherDays,
        LocalDate start,
        LocalDate finish,
        Set<String> diggers,
        Shields shields,
        boolean pumped) {

    /** Length of a light shield, feet. Common practice, no source. */
    static final double SHIELD_FEET = 10;

    public CrewCalendar {
        days = List.copyOf(days);
        diggers = Set.copyOf(diggers);
    }

    /**
     * Lays the crew hours of a takeoff onto days. Lines that are themselves counted by days take no time here.
     *
     * @param book as this job uses it
     */
    public static CrewCalendar of(Job job, Company company, PriceBook book, Takeoff takeoff) {
        return new WorkPlacing(job, company, book, takeoff).calendar();
    }

    /** Days of work. */
    public int daysOfWork() {
        return (int) days.stream().filter(day -> !day.isIdle()).count();
    }

    /** Days on which everybody waits. */
    public int daysOfWaiting() {
        return days.size() - daysOfWork();
    }

    /** Working days from the first to the last, with those kept for weather. */
    public int workingDays() {
        return days.size() + weatherDays;
    }

    /** Days of work while the trench stands open, each of which begins with an inspection (29 CFR 1926.651(k)(1)). */
    public int inspections() {
        return (int) openDays().stream().filter(day -> !day.isIdle()).count();
    }

    /** Working days from the first digging where a shield stands to the last backfill, for each shield. */
    public int shieldDays() {
        return shields.count() * shieldedDays().size();
    }

    /** The days from the first digging where a shield stands, or else from the first digging, to the last backfill. */
    public List<WorkDay> shieldedDays() {
        List<WorkDay> found =
                openDays(part -> part.stage() == Stage.DIG && shields.places().contains(part.place()));
        return found.isEmpty() ? openDays() : found;
    }

    /** Working days on which a pump is on site: as long as the trench stands open. */
    public int pumpDays() {
        return pumped ? openDays().size() : 0;
    }

    /** Working days on which a digging machine is on site, without those for which it is taken away. */
    public int excavatorDays() {
        return MachineStay.of(days, diggers, calendar.standingDays()).onSite();
    }

    /** Those of them on which it stands idle. */
    public int standingDays() {
        return MachineStay.of(days, diggers, calendar.standingDays()).standing();
    }

    /** Times that machines are brought: once, and again after each long stand. */
    public int trips() {
        return MachineStay.of(days, diggers, calendar.standingDays()).trips();
    }

    /** Hours of overtime of all crews together. */
    public double overtimeHours() {
        double plain = hoursPerDay - overtime;
        return crews
                * days.stream()
                        .mapToDouble(day -> Math.max(0, day.team() - plain))
                        .sum();
    }

    /** The days from the first digging to the last backfill. */
    public List<WorkDay> openDays() {
        return openDays(part -> part.stage().step() == WorkStep.DIG);
    }

    private List<WorkDay> openDays(Predicate<DayPart> digging) {
        Optional<Integer> first = index(day -> day.parts().stream().anyMatch(digging), false);
        if (first.isEmpty()) {
            return List.of();
        }
        int last = index(day -> day.steps().contains(WorkStep.BACKFILL), true).orElse(days.size() - 1);
        return last < first.get() ? List.of() : days.subList(first.get(), last + 1);
    }

    private Optional<Integer> index(Predicate<WorkDay> what, boolean last) {
        return IntStream.range(0, days.size())
                .map(i -> last ? days.size() - 1 - i : i)
                .filter(i -> what.test(days.get(i)))
                .boxed()
                .findFirst();
    }

    /** The first day on which a step is done; the start where no day has it. */
    public LocalDate first(WorkStep step) {
        return days.stream()
                .filter(day -> day.steps().contains(step))
                .map(WorkDay::date)
                .findFirst()
                .orElse(start);
    }

    /** The last day on which a step is done; the finish where no day has it. */
    public LocalDate last(WorkStep step) {
        return days.stream()
                .filter(day -> day.steps().contains(step))
                .map(WorkDay::date)
                .max(LocalDate::compareTo)
                .orElse(finish);
    }

    /**
     * So many working days before a day.
     *
     * @param count from 0; for 0 the day itself where it is worked, else the one before
     */
    public LocalDate before(LocalDate day, int count) {
        WorkDays worked = new WorkDays(calendar);
        LocalDate found = day;
        int left = count;
        while (left > 0 || !worked.isWorked(found)) {
            found = found.minusDays(1);
            if (worked.isWorked(found) && left > 0) {
                left--;
            }
        }
        return found;
    }

    /**
     * Days that a company works between two days, both counted.
     *
     * @throws IllegalArgumentException if the last lies before the first
     */
    public static int workedBetween(Company company, LocalDate first, LocalDate last) {
        return new WorkDays(company.calendar().orElse(WorkCalendar.USUAL)).between(first, last);
    }
}
