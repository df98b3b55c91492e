// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.WorkCalendar;
import spadework.job.Schedule;
import spadework.job.WaitFor;
import spadework.job.Waits;
import spadework.pricebook.Measure;
import spadework.pricebook.WorkStep;

/** Crew hours on the calendar. Monday September 7, 2026 is the first day throughout; the job is issued in August. */
class CrewCalendarTest {
    private static final Schedule LONG = DayBooks.schedule("2026-09-07", "2026-12-31", 60);

    private static DayBooks job(int crews, String weather, int standingDays) {
        return new DayBooks(DayBooks.calendar(crews, weather, standingDays), LONG);
    }

    private static DayBooks waiting(Map<WaitFor, OptionalInt> waits) {
        return new DayBooks(
                DayBooks.calendar(1, "0", 5),
                new Schedule(
                        LONG.earliestStart(),
                        LONG.latestFinish(),
                        60,
                        "",
                        Optional.empty(),
                        BigDecimal.ZERO,
                        new Waits(waits)));
    }

    @ParameterizedTest(name = "{0} h for {1} crews: {2} days")
    @CsvSource({"64, 1, 8", "64.1, 1, 9", "64, 2, 4", "64.1, 2, 5", "0.1, 1, 1", "528, 1, 66"})
    void daysAreHoursOverCrewsAndHoursADayRoundedUp(String hours, int crews, int days) {
        assertThat(job(crews, "0", 5).dig(hours).laid().daysOfWork()).isEqualTo(days);
    }

    /** Eight days of work from a Monday end on the Wednesday of the next week; a fifth for weather ends on Friday. */
    @ParameterizedTest(name = "{0} for weather: {1} days, done on {2}")
    @CsvSource({"0 , 8, 2026-09-16", "20, 10, 2026-09-18", "25, 10, 2026-09-18", "26, 11, 2026-09-21"})
    void weekendsAndDaysForWeatherMoveTheFinish(String weather, int days, LocalDate finish) {
        CrewCalendar laid = job(1, weather, 5).dig("64").laid();
        assertThat(laid.workingDays()).isEqualTo(days);
        assertThat(laid.finish()).isEqualTo(finish);
    }

    @Test
    void stepsFollowTheScopeOfWorkWhateverTheOrderOfTheLines() {
        CrewCalendar laid =
                job(1, "0", 5).backfill("8").pipes("8").coat("8").dig("8").laid();
        assertThat(laid.days().stream().filter(day -> !day.isIdle()).map(WorkDay::steps))
                .containsExactly(
                        List.of(WorkStep.DIG),
                        List.of(WorkStep.COAT),
                        List.of(WorkStep.PIPES),
                        List.of(WorkStep.BACKFILL));
    }

    /** A coat of 24 to 72 h cures by the calendar: coated on Thursday with two days, it is covered on Monday. */
    @ParameterizedTest(name = "{0} days of cure: backfill on {1}, {2} days idle")
    @CsvSource({"0, 2026-09-11, 0", "1, 2026-09-14, 1", "2, 2026-09-14, 1", "3, 2026-09-14, 1", "4, 2026-09-15, 2"})
    void coatingCuresBeforeItIsCovered(int cure, LocalDate covered, int idle) {
        CrewCalendar laid = waiting(Map.of(WaitFor.COATING_CURE, OptionalInt.of(cure)))
                .dig("24")
                .coat("8")
                .backfill("8")
                .laid();
        assertThat(laid.days().get(laid.days().size() - 1).date()).isEqualTo(covered);
        assertThat(laid.daysOfWaiting()).isEqualTo(idle);
    }

    @Test
    void pipesAwayFromTheHouseFillTheWait() {
        Map<WaitFor, OptionalInt> waits = Map.of(WaitFor.COATING_CURE, OptionalInt.of(1));
        CrewCalendar empty = waiting(waits).dig("8").coat("8").backfill("8").laid();
        CrewCalendar filled =
                waiting(waits).dig("8").coat("8").pipes("8").backfill("8").laid();
        assertThat(empty.daysOfWaiting()).isEqualTo(1);
        assertThat(filled.daysOfWaiting()).isZero();
        assertThat(filled.days()).hasSameSizeAs(empty.days());
    }

    @Test
    void inspectorIsWaitedForOnlyWhereThereIsAPermit() {
        Map<WaitFor, OptionalInt> waits =
                Map.of(WaitFor.COATING_CURE, OptionalInt.of(0), WaitFor.INSPECTION, OptionalInt.of(2));
        assertThat(waiting(waits).dig("8").coat("8").backfill("8").laid().daysOfWaiting())
                .isZero();
        CrewCalendar permitted = waiting(waits)
                .step(WorkStep.PERMIT)
                .dig("8")
                .coat("8")
                .backfill("8")
                .laid();
        assertThat(permitted.daysOfWaiting()).isEqualTo(2);
        assertThat(permitted.days().get(2).waits()).containsExactly(WaitFor.INSPECTION);
    }

    /** Issued on Monday August 10, 2026. */
    @ParameterizedTest(name = "asked {0}, locate {1}, engineer {2}: {3}")
    @CsvSource({
        "2026-09-07, 2, 0, false, 2026-09-07", "2026-09-05, 2, 0, false, 2026-09-07",
        "2026-08-12, 2, 9, false, 2026-08-12", "2026-08-11, 2, 9, false, 2026-08-12",
        "2026-08-12, 2, 3, true, 2026-08-17"
    })
    void workStartsWhenLinesAreMarkedAndTheEngineerHasWritten(
            String asked, int locate, int engineer, boolean visit, LocalDate start) {
        DayBooks job = new DayBooks(
                        DayBooks.calendar(1, "0", 5),
                        new Schedule(
                                LocalDate.parse(asked),
                                LONG.latestFinish(),
                                60,
                                "",
                                Optional.empty(),
                                BigDecimal.ZERO,
                                new Waits(Map.of(
                                        WaitFor.LOCATE,
                                        OptionalInt.of(locate),
                                        WaitFor.ENGINEER,
                                        OptionalInt.of(engineer)))))
                .dig("8");
        assertThat((visit ? job.step(WorkStep.ENGINEER) : job).laid().start()).isEqualTo(start);
    }

    /** Between digging and backfill the machine stands for three days. */
    @ParameterizedTest(name = "may stand {0} days: {1} on site, {2} standing, {3} trips")
    @CsvSource({"3, 5, 3, 1", "4, 5, 3, 1", "2, 2, 0, 2"})
    void machineThatWouldStandTooLongIsTakenAwayAndBroughtAgain(int limit, int onSite, int standing, int trips) {
        CrewCalendar laid = new DayBooks(DayBooks.calendar(1, "0", limit), LONG)
                .dig("8")
                .hours(Measure.CLEAN, "wall crew", Optional.empty(), "24")
                .backfill("8")
                .laid();
        assertThat(laid.excavatorDays()).isEqualTo(onSite);
        assertThat(laid.standingDays()).isEqualTo(standing);
        assertThat(laid.trips()).isEqualTo(trips);
    }

    /** 29 CFR 1926.651(k)(1): before each shift while the trench stands open; a day on which nobody comes has none. */
    @Test
    void trenchIsInspectedOnEveryDayOfWorkWhileItIsOpen() {
        CrewCalendar laid = waiting(Map.of(WaitFor.COATING_CURE, OptionalInt.of(1)))
                .hours(Measure.JOB, "hand crew", Optional.empty(), "8")
                .dig("16")
                .coat("8")
                .backfill("8")
                .hours(Measure.SEED, "hand crew", Optional.empty(), "8")
                .laid();
        assertThat(laid.days()).hasSize(7);
        assertThat(laid.inspections()).isEqualTo(4);
        assertThat(laid.openDays()).hasSize(5);
    }

    @ParameterizedTest(name = "{0} ft of shield, {1} crews: {2} shields")
    @CsvSource({"8, 1, 1", "10, 2, 1", "10.1, 2, 2", "80, 2, 2", "80, 3, 3"})
    void eachCrewHasAShieldAsFarAsThereIsTrenchForIt(String feet, int crews, int shields) {
        CrewCalendar laid = job(crews, "0", 5)
                .dig("8")
                .hours(Measure.SHIELD, "dig crew", Optional.of("mini-excavator"), feet)
                .backfill("8")
                .laid();
        assertThat(laid.shields().count()).isEqualTo(shields);
        assertThat(laid.shieldDays()).isEqualTo(shields * laid.openDays().size());
    }

    @Test
    void jobWithoutShieldOrPumpRentsNone() {
        CrewCalendar laid = job(1, "0", 5).dig("8").backfill("8").laid();
        assertThat(List.of(laid.shieldDays(), laid.pumpDays())).containsOnly(0);
        assertThat(job(1, "0", 5)
                        .step(WorkStep.DEWATER)
                        .dig("8")
                        .backfill("8")
                        .laid()
                        .pumpDays())
                .isEqualTo(2);
    }

    /** Two crews with two hours of overtime: 40 crew hours are two days of ten hours, four crew hours of each extra. */
    @ParameterizedTest(name = "{0} h: {1} days, {2} h of overtime")
    @CsvSource({"32, 2, 4", "40, 2, 8", "36, 2, 4", "16, 1, 0", "17, 1, 1"})
    void overtimeIsWhatADayHoldsBeyondTheUsualOne(String hours, int days, double overtime) {
        CrewCalendar laid = new DayBooks(
                        DayBooks.calendar(2, "0", 5),
                        new Schedule(
                                LONG.earliestStart(),
                                LONG.latestFinish(),
                                60,
                                "",
                                Optional.empty(),
                                new BigDecimal("2"),
                                Waits.NONE))
                .dig(hours)
                .laid();
        assertThat(laid.daysOfWork()).isEqualTo(days);
        assertThat(laid.overtimeHours()).isCloseTo(overtime, within(1e-9));
    }

    @Test
    void nothingToDoTakesNoDays() {
        CrewCalendar laid = job(1, "20", 5).laid();
        assertThat(laid.workingDays()).isZero();
        assertThat(laid.finish()).isEqualTo(laid.start());
        assertThat(laid.openDays()).isEmpty();
        assertThat(laid.trips()).isEqualTo(1);
    }

    @Test
    void companyThatSaysNothingHasTheUsualCalendar() {
        assertThat(WorkCalendar.USUAL.workDays()).hasSize(5);
        assertThat(WorkCalendar.USUAL.hoursPerDay()).isEqualByComparingTo("8");
    }

    /** A skid steer that shapes the ground later on keeps no excavator waiting on site. */
    @ParameterizedTest(name = "{0} by a skid steer: {1} days with an excavator")
    @CsvSource({"REGRADE, 1", "DIG_MACHINE, 3", "DIG_BULK, 3", "DIG_WALL_SIDE, 3", "PIPE_TRENCH, 3"})
    void onlyAMachineThatDigsIsAnExcavator(Measure measure, int days) {
        CrewCalendar laid = job(1, "0", 5)
                .dig("8")
                .hours(measure, "dig crew", Optional.of("skid steer"), "16")
                .laid();
        assertThat(laid.excavatorDays()).isEqualTo(days);
    }

    /** Twice the hours of digging to move the soil: the excavator digs a third of each day, a skid steer is none. */
    @Test
    void soilIsMovedAsItIsDug() {
        CrewCalendar laid = job(1, "0", 5)
                .hours(Measure.SPOIL, "haul crew", Optional.of("skid steer"), "16")
                .dig("8")
                .laid();
        assertThat(laid.excavatorDays()).isEqualTo(3);
        assertThat(laid.diggers()).containsExactly("mini-excavator");
        for (WorkDay day : laid.days()) {
            assertThat(day.parts()).extracting(DayPart::stage).containsExactly(Stage.DIG, Stage.MOVE_SOIL);
            assertThat(day.crews().get("dig crew")).isCloseTo(8 / 3.0, within(1e-9));
        }
    }
}
