// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.intake.Intake;
import spadework.job.SoilType;
import spadework.measure.Area;
import spadework.measure.FilmThickness;
import spadework.measure.FlowRate;
import spadework.measure.LandArea;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.RainRate;
import spadework.measure.Slope;
import spadework.measure.Unit;
import spadework.measure.Volume;
import spadework.measure.Weight;
import spadework.working.Recomputed;
import spadework.working.Worked;

/** Solved one way and back again, every input returns; and every formula that is printed gives its figure. */
class SolvingTest {
    private static final long SEED = 20260811;
    private static final BookFigures BOOK = new BookFigures(new Intake().bundledBook());

    /** Random numbers of a job site's size; each name tells the seed's step. */
    static Stream<Dice> dice() {
        Random random = new Random(SEED);
        return Stream.iterate(0, i -> i + 1)
                .limit(200)
                .map(i -> new Dice("seed " + SEED + ", throw " + i, random.nextLong()));
    }

    record Dice(String name, long seed) {
        Random random() {
            return new Random(seed);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static double value(Answer answer, Unit unit) {
        List<BigDecimal> found = answer.values().stream()
                .filter(value -> value.unit() == unit)
                .map(SolvingTest::number)
                .toList();
        assertThat(found).as("figures in " + unit).isNotEmpty();
        return found.get(0).doubleValue();
    }

    private static BigDecimal number(AnswerValue value) {
        return ((Figure) value).value();
    }

    private static void same(double found, double expected) {
        assertThat(found).isCloseTo(expected, within(1e-8 * Math.max(1, Math.abs(expected))));
    }

    private static Answer checked(Answer answer) {
        List<Worked> worked = answer.working().stream()
                .flatMap(each -> Recomputed.under(each).stream())
                .toList();
        for (Worked each : worked) {
            assertThat(Recomputed.evaluate(each))
                    .as(each.line())
                    .isCloseTo(each.number(), within(1e-9 * Math.max(1, Math.abs(each.number()))));
        }
        return answer;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void pipe(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<Length> diameter = Optional.of(Length.ofInches(between(random, 1, 30)));
        Optional<Slope> slope = Optional.of(new Slope(between(random, 0.001, 0.1)));
        Optional<Double> n = Optional.of(between(random, 0.009, 0.025));
        Answer full =
                checked(PipeFigure.of(new PipeFigure.Known(diameter, slope, Optional.empty(), n, Optional.empty())));
        Optional<FlowRate> flow = Optional.of(new FlowRate(value(full, Unit.GALLON_PER_MINUTE)));
        same(
                value(
                        checked(PipeFigure.of(
                                new PipeFigure.Known(Optional.empty(), slope, flow, n, Optional.empty()))),
                        Unit.INCH),
                diameter.get().inches());
        same(
                value(
                        checked(PipeFigure.of(
                                new PipeFigure.Known(diameter, Optional.empty(), flow, n, Optional.empty()))),
                        Unit.FOOT_PER_FOOT),
                slope.get().ratio());
        same(
                value(
                        checked(PipeFigure.of(new PipeFigure.Known(diameter, slope, flow, n, Optional.empty()))),
                        Unit.PERCENT),
                100);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void roof(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<Area> area = Optional.of(new Area(between(random, 50, 20_000)));
        Optional<RainRate> rain = Optional.of(new RainRate(between(random, 0.5, 12)));
        Optional<FlowRate> flow = Optional.of(new FlowRate(value(
                checked(RoofFigure.of(new RoofFigure.Known(area, rain, Optional.empty()))), Unit.GALLON_PER_MINUTE)));
        same(
                value(checked(RoofFigure.of(new RoofFigure.Known(Optional.empty(), rain, flow))), Unit.SQUARE_FOOT),
                area.get().squareFeet());
        same(
                value(checked(RoofFigure.of(new RoofFigure.Known(area, Optional.empty(), flow))), Unit.INCH_PER_HOUR),
                rain.get().inchesPerHour());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void runoff(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<Area> area = Optional.of(new Area(between(random, 0.1, 50) * LandArea.SQUARE_FEET_PER_ACRE));
        Optional<Double> c = Optional.of(between(random, 0.05, 0.95));
        Optional<RainRate> rain = Optional.of(new RainRate(between(random, 0.5, 12)));
        Optional<FlowRate> flow = Optional.of(new FlowRate(value(
                checked(RunoffFigure.of(new RunoffFigure.Known(area, c, rain, Optional.empty()))),
                Unit.GALLON_PER_MINUTE)));
        same(
                value(
                        checked(RunoffFigure.of(new RunoffFigure.Known(Optional.empty(), c, rain, flow))),
                        Unit.SQUARE_FOOT),
                area.get().squareFeet());
        same(
                value(checked(RunoffFigure.of(new RunoffFigure.Known(area, Optional.empty(), rain, flow))), Unit.NONE),
                c.get());
        same(
                value(
                        checked(RunoffFigure.of(new RunoffFigure.Known(area, c, Optional.empty(), flow))),
                        Unit.INCH_PER_HOUR),
                rain.get().inchesPerHour());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void friction(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<FlowRate> flow = Optional.of(new FlowRate(between(random, 1, 200)));
        Optional<Length> inside = Optional.of(Length.ofInches(between(random, 0.7, 6)));
        Optional<Length> length = Optional.of(Length.ofFeet(between(random, 5, 500)));
        Optional<Double> c = random.nextBoolean() ? Optional.empty() : Optional.of(between(random, 80, 150));
        Optional<Length> none = Optional.empty();
        Optional<Length> head = Optional.of(Length.ofFeet(
                value(checked(FrictionFigure.of(new FrictionFigure.Known(flow, inside, length, none, c))), Unit.FOOT)));
        same(
                value(
                        checked(FrictionFigure.of(new FrictionFigure.Known(Optional.empty(), inside, length, head, c))),
                        Unit.GALLON_PER_MINUTE),
                flow.get().gallonsPerMinute());
        same(
                value(checked(FrictionFigure.of(new FrictionFigure.Known(flow, none, length, head, c))), Unit.INCH),
                inside.get().inches());
        same(
                value(checked(FrictionFigure.of(new FrictionFigure.Known(flow, inside, none, head, c))), Unit.FOOT),
                length.get().feet());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void stone(Dice dice) throws WrongInputs {
        Random random = dice.random();
        StoneFigure.Section section = new StoneFigure.Section(
                Length.ofFeet(between(random, 1, 4)), Length.ofFeet(between(random, 0.8, 3)),
                Length.ofInches(between(random, 0, 7)), random.nextInt(4) * 0.5,
                Length.ofInches(between(random, 0, 12)), Length.ofInches(between(random, 0, 8)));
        Optional<Length> length = Optional.of(Length.ofFeet(between(random, 1, 300)));
        Answer answer = checked(
                StoneFigure.of(new StoneFigure.Known(length, Optional.empty(), Optional.empty()), section, BOOK));
        Optional<Weight> tons = Optional.of(new Weight(value(answer, Unit.TON)));
        Answer back =
                checked(StoneFigure.of(new StoneFigure.Known(Optional.empty(), tons, Optional.empty()), section, BOOK));
        same(value(back, Unit.FOOT), length.get().feet());
        same(value(back, Unit.CUBIC_YARD), value(answer, Unit.CUBIC_YARD));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void coating(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<Area> area = Optional.of(new Area(between(random, 10, 5000)));
        Optional<FilmThickness> dry = Optional.of(new FilmThickness(between(random, 1, 200)));
        Optional<Percent> solids = Optional.of(new Percent(BigDecimal.valueOf(between(random, 20, 100))));
        Optional<FilmThickness> no = Optional.empty();
        Answer answer = checked(CoatingFigure.of(new CoatingFigure.Known(area, no, dry, solids, Optional.empty())));
        Optional<FilmThickness> wet = Optional.of(new FilmThickness(value(answer, Unit.MIL)));
        Optional<Volume> gallons = Optional.of(new Volume(value(answer, Unit.GALLON) * 231 / 1728));
        same(
                value(
                        checked(CoatingFigure.of(new CoatingFigure.Known(area, no, no, Optional.empty(), gallons))),
                        Unit.MIL),
                wet.get().mils());
        same(
                value(
                        checked(CoatingFigure.of(
                                new CoatingFigure.Known(Optional.empty(), wet, no, Optional.empty(), gallons))),
                        Unit.SQUARE_FOOT),
                area.get().squareFeet());
        same(
                value(
                        checked(CoatingFigure.of(new CoatingFigure.Known(
                                Optional.empty(), wet, dry, Optional.empty(), Optional.empty()))),
                        Unit.PERCENT),
                solids.get().points().doubleValue());
        Answer film =
                checked(CoatingFigure.of(new CoatingFigure.Known(Optional.empty(), wet, no, solids, Optional.empty())));
        same(number(film.values().get(2)).doubleValue(), dry.get().mils());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void earth(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<Volume> bank = Optional.of(Volume.ofCubicYards(between(random, 1, 3000)));
        Optional<Percent> swell = Optional.of(new Percent(BigDecimal.valueOf(between(random, 1, 60))));
        Optional<Percent> shrink = Optional.of(new Percent(BigDecimal.valueOf(between(random, 1, 30))));
        Optional<Volume> none = Optional.empty();
        Optional<Percent> open = Optional.empty();
        Answer answer = checked(EarthFigure.of(new EarthInputs(bank, none, none, swell, shrink, none), BOOK));
        Optional<Volume> loose = Optional.of(Volume.ofCubicYards(named(answer, "soil, loose")));
        Optional<Volume> compacted = Optional.of(Volume.ofCubicYards(named(answer, "soil, compacted")));
        double yards = bank.get().cubicYards();
        same(
                named(
                        checked(EarthFigure.of(new EarthInputs(none, loose, none, swell, shrink, none), BOOK)),
                        "soil, bank"),
                yards);
        same(
                named(
                        checked(EarthFigure.of(new EarthInputs(none, none, compacted, swell, shrink, none), BOOK)),
                        "soil, bank"),
                yards);
        same(
                value(
                        checked(EarthFigure.of(new EarthInputs(bank, loose, none, open, open, none), BOOK)),
                        Unit.PERCENT),
                swell.get().points().doubleValue());
        same(
                value(
                        checked(EarthFigure.of(new EarthInputs(bank, none, compacted, open, open, none), BOOK)),
                        Unit.PERCENT),
                shrink.get().points().doubleValue());
    }

    private static double named(Answer answer, String name) {
        return answer.values().stream()
                .filter(value -> value.name().equals(name))
                .map(SolvingTest::number)
                .findFirst()
                .orElseThrow()
                .doubleValue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void roots(Dice dice) throws WrongInputs {
        Length trunk = Length.ofInches(between(dice.random(), 1, 60));
        Answer answer =
                checked(RootsFigure.of(new RootsFigure.Known(Optional.of(trunk), Optional.empty(), Optional.empty())));
        for (int rule = 0; rule < 3; rule++) {
            Length radius = Length.ofFeet(number(answer.values().get(rule)).doubleValue());
            Answer back = checked(
                    RootsFigure.of(new RootsFigure.Known(Optional.empty(), Optional.empty(), Optional.of(radius))));
            same(number(back.values().get(rule)).doubleValue(), trunk.inches());
        }
        Length girth = Length.ofFeet(trunk.feet() * Math.PI);
        same(
                value(
                        checked(RootsFigure.of(
                                new RootsFigure.Known(Optional.empty(), Optional.of(girth), Optional.empty()))),
                        Unit.INCH),
                trunk.inches());
    }

    /** Trench and sump go one way; their printed formulas are worked out again all the same. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("dice")
    void trenchAndSump(Dice dice) throws WrongInputs {
        Random random = dice.random();
        Optional<SoilType> soil = Optional.of(SoilType.values()[random.nextInt(SoilType.values().length)]);
        checked(TrenchFigure.of(new TrenchInputs(
                Length.ofFeet(between(random, 40, 200)),
                Length.ofFeet(between(random, 1, 9)),
                Length.ofFeet(between(random, 1, 9)),
                Length.ofFeet(between(random, 1, 4)),
                Length.ofInches(between(random, 0, 12)),
                Length.ofInches(between(random, 0, 12)),
                soil,
                new TrenchInputs.Sides(soil, Optional.empty()).bank(),
                random.nextInt(4),
                random.nextInt(2))));
        checked(SumpFigure.of(
                new SumpFigure.Pumped(
                        new FlowRate(between(random, 1, 80)),
                        random.nextBoolean() ? Optional.empty() : Optional.of(new FlowRate(between(random, 1, 100)))),
                new SumpFigure.Basin(
                        Length.ofInches(between(random, 12, 48)),
                        Optional.empty(),
                        Length.ofFeet(between(random, 1, 20)),
                        Length.ofInches(random.nextBoolean() ? 1.5 : 2),
                        Length.ofFeet(between(random, 5, 200))),
                BOOK));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("insideCorners")
    void insideCornersCannotTakeAwayTheWholeTrench(int corners) {
        Optional<SoilType> soil = Optional.of(SoilType.B);
        assertThatThrownBy(() -> TrenchFigure.of(new TrenchInputs(
                        Length.ofFeet(5),
                        Length.ofFeet(5),
                        Length.ofFeet(5),
                        Length.ofFeet(3),
                        Length.ZERO,
                        Length.ZERO,
                        soil,
                        new TrenchInputs.Sides(soil, Optional.empty()).bank(),
                        0,
                        corners)))
                .isInstanceOf(WrongInputs.class);
    }

    static Stream<Integer> insideCorners() {
        return Stream.of(1, 2, 5);
    }
}
