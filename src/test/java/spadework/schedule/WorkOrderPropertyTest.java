// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.company.WorkCalendar;
import spadework.job.Schedule;
import spadework.job.WaitFor;
import spadework.job.Waits;
import spadework.pricebook.Measure;

/** Whatever a job holds and however its lines are listed, the work goes on in the order of the trade. */
class WorkOrderPropertyTest {
    private static final int JOBS = 300;

    /** Dig, strip, wash, repair, coat, cover: on each wall for itself. */
    private static final List<List<Measure>> WALL = List.of(
            List.of(Measure.DIG_MACHINE, Measure.DIG_WALL_SIDE, Measure.DIG_BULK, Measure.DIG_HAND, Measure.SPOIL),
            List.of(Measure.STRIP),
            List.of(Measure.CLEAN),
            List.of(Measure.CRACK, Measure.COVE, Measure.PARGE),
            List.of(Measure.COAT, Measure.SHEET),
            List.of(Measure.PROTECT));

    /** A trench of its own, then the pipe in it. */
    private static final List<List<Measure>> PIPES =
            List.of(List.of(Measure.PIPE_TRENCH), List.of(Measure.MAIN_PIPE, Measure.ROOF_PIPE, Measure.DOWNSPOUT));

    /** The drain, once all walls are coated and all pipes lie; its water test; fill, grade, topsoil, seed. */
    private static final List<List<Measure>> HOUSE = List.of(
            List.of(Measure.STONE, Measure.DRAIN_PIPE, Measure.FABRIC),
            List.of(Measure.FLOW_TEST),
            List.of(Measure.BACKFILL),
            List.of(Measure.REGRADE),
            List.of(Measure.TOPSOIL),
            List.of(Measure.SEED, Measure.SOD));

    /** A line of a job. */
    private record Line(Measure measure, String wall, double hours) {}

    /** What was done when, in days with their part that is gone. */
    private record Span(double begin, double end) {}

    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void nothingBeginsBeforeWhatItNeedsIsDone(int seed, List<Line> lines, CrewCalendar laid) {
        for (List<String> walls : List.of(List.of("A"), List.of("B"), List.of("C"))) {
            inOrder(laid, WALL, walls);
            follows(laid, WALL.get(WALL.size() - 1), walls, HOUSE.get(0), List.of(""));
        }
        inOrder(laid, PIPES, List.of(""));
        follows(laid, PIPES.get(1), List.of(""), HOUSE.get(0), List.of(""));
        inOrder(laid, HOUSE.subList(0, 2), List.of(""));
        inOrder(laid, HOUSE.subList(1, HOUSE.size()), List.of("", "A", "B", "C"));
    }

    /** Each line is done in full, no day holds more than its hours, and none is lost while something may be done. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void allIsDoneAndNoHourIsLostWithoutAWait(int seed, List<Line> lines, CrewCalendar laid) {
        double hours = lines.stream().mapToDouble(Line::hours).sum();
        assertThat(laid.days().stream().mapToDouble(WorkDay::team).sum() * laid.crews())
                .isCloseTo(hours, within(1e-6));
        for (WorkDay day : laid.days()) {
            assertThat(day.team()).isLessThan(laid.hoursPerDay() + 1e-9);
            assertThat(day.isIdle()).isEqualTo(!day.waits().isEmpty());
        }
        double most = hours / laid.crews() / laid.hoursPerDay();
        assertThat(laid.daysOfWork()).isLessThanOrEqualTo((int) Math.ceil(most) + 3);
    }

    /** Of no wall more soil is moved than was dug. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("jobs")
    void soilIsDugBeforeItIsMoved(int seed, List<Line> lines, CrewCalendar laid) {
        for (String wall : List.of("A", "B", "C")) {
            double toDig = sum(laid, Stage.DIG, wall);
            double toMove = sum(laid, Stage.MOVE_SOIL, wall);
            double dug = 0;
            double moved = 0;
            for (WorkDay day : laid.days()) {
                for (DayPart part : day.parts()) {
                    if (part.place().equals(wall)) {
                        dug += part.stage() == Stage.DIG ? part.crewHours() : 0;
                        moved += part.stage() == Stage.MOVE_SOIL ? part.crewHours() : 0;
                        if (toDig > 0 && toMove > 0) {
                            assertThat(moved / toMove).isLessThan(dug / toDig + 1e-9);
                        }
                    }
                }
            }
            assertThat(moved).isCloseTo(toMove, within(1e-6));
        }
    }

    private static double sum(CrewCalendar laid, Stage stage, String wall) {
        return laid.days().stream()
                .flatMap(day -> day.parts().stream())
                .filter(part -> part.stage() == stage && part.place().equals(wall))
                .mapToDouble(DayPart::crewHours)
                .sum();
    }

    private static void inOrder(CrewCalendar laid, List<List<Measure>> order, List<String> places) {
        for (int later = 1; later < order.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                follows(laid, order.get(earlier), places, order.get(later), places);
            }
        }
    }

    private static void follows(
            CrewCalendar laid, List<Measure> first, List<String> at, List<Measure> then, List<String> thenAt) {
        Optional<Span> before = span(laid, first, at);
        Optional<Span> after = span(laid, then, thenAt);
        if (before.isPresent() && after.isPresent()) {
            assertThat(after.get().begin())
                    .as("%s after %s at %s", then, first, at)
                    .isGreaterThanOrEqualTo(before.get().end() - 1e-9);
        }
    }

    /** By the crew, which names its measure and its wall. */
    private static Optional<Span> span(CrewCalendar laid, List<Measure> measures, List<String> places) {
        List<String> crews = measures.stream()
                .flatMap(measure -> places.stream().map(place -> crew(measure, place)))
                .toList();
        List<Span> found = laid.days().stream()
                .flatMap(day -> day.parts().stream()
                        .filter(part -> crews.contains(part.crew()))
                        .map(part -> new Span(at(laid, day, part.from()), at(laid, day, part.to()))))
                .toList();
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new Span(
                        found.stream().mapToDouble(Span::begin).min().getAsDouble(),
                        found.stream().mapToDouble(Span::end).max().getAsDouble()));
    }

    private static double at(CrewCalendar laid, WorkDay day, double hours) {
        return day.number() + hours / laid.hoursPerDay();
    }

    private static String crew(Measure measure, String wall) {
        return measure + " " + wall;
    }

    static Stream<Object[]> jobs() {
        return IntStream.range(0, JOBS).mapToObj(seed -> {
            Random random = new Random(seed);
            List<Line> lines = lines(random);
            return new Object[] {seed, lines, laid(random, lines)};
        });
    }

    private static List<Line> lines(Random random) {
        List<Line> lines = new ArrayList<>();
        for (String wall : List.of("A", "B", "C")) {
            WALL.forEach(stage -> stage.forEach(measure -> add(lines, random, measure, wall)));
            add(lines, random, Measure.BACKFILL, wall);
        }
        PIPES.forEach(stage -> stage.forEach(measure -> add(lines, random, measure, "")));
        HOUSE.forEach(stage -> stage.forEach(measure -> add(lines, random, measure, "")));
        add(lines, random, Measure.DIG_MACHINE, "A");
        Collections.shuffle(lines, random);
        return lines;
    }

    private static void add(List<Line> lines, Random random, Measure measure, String wall) {
        if (random.nextInt(3) > 0) {
            lines.add(new Line(measure, wall, 0.25 * (1 + random.nextInt(40))));
        }
    }

    private static CrewCalendar laid(Random random, List<Line> lines) {
        WorkCalendar calendar = DayBooks.calendar(1 + random.nextInt(3), "20", 5);
        Map<WaitFor, OptionalInt> waits = new EnumMap<>(WaitFor.class);
        for (WaitFor what : WaitFor.values()) {
            waits.put(what, OptionalInt.of(random.nextInt(4)));
        }
        DayBooks books = new DayBooks(
                calendar,
                new Schedule(
                        LocalDate.parse("2026-09-07").plusDays(random.nextInt(7)),
                        LocalDate.parse("2027-12-31"),
                        99,
                        "",
                        Optional.empty(),
                        BigDecimal.valueOf(random.nextInt(3)),
                        new Waits(waits)));
        for (Line line : lines) {
            DayBooks at = line.wall().isEmpty() ? books.atTheHouse() : books.at(line.wall());
            at.hours(
                    line.measure(), crew(line.measure(), line.wall()), Optional.empty(), Double.toString(line.hours()));
        }
        return books.laid();
    }
}
