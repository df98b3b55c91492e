// SPDX-License-Identifier: Apache-2.0
package spadework.cli.figure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Pattern;
import spadework.figure.BookFigures;
import spadework.figure.PipeKind;
import spadework.job.SoilType;
import spadework.measure.Area;
import spadework.measure.Density;
import spadework.measure.FilmThickness;
import spadework.measure.FlowRate;
import spadework.measure.LandArea;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.RainRate;
import spadework.measure.Slope;
import spadework.measure.UnreadableMeasure;
import spadework.measure.Volume;
import spadework.measure.Weight;
import spadework.money.Dollars;
import spadework.office.CalculatorData;

/** The kinds of value that the calculators' flags take, each with its limits. */
final class FlagKinds {
    private static final String SOILS = "a soil type: A, B, C, rock, unknown";
    private static final String DAYS = "a date as year-month-day, from 1900 to 2199";
    private static final String MONEY = "dollars and at most two decimals, to $10 million";
    private static final Pattern AMOUNT = Pattern.compile("\\$?(?:\\d{1,3}(?:,\\d{3}){1,2}|\\d{1,8})(?:\\.\\d{1,2})?");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?|\\.\\d{1,6}");

    static final Flag<Length> RUN = length(0, 5000, "60 ft");
    static final Flag<Length> DEPTH = length(0, 100, "5 ft");
    static final Flag<Length> WIDTH = length(0, 100, "3 ft");
    static final Flag<Length> HEAD = length(0, 1000, "9 ft");
    static final Flag<Length> DIAMETER = length(0, 20, "8 in");
    static final Flag<Length> TRUNK = length(0, 20, "12 in");
    static final Flag<Length> GIRTH = length(0, 60, "36 in");
    static final Flag<Length> RADIUS = length(0, 1000, "15 ft");
    static final Flag<Length> PIT = length(0, 10, "18 in");
    static final Flag<Length> DISCHARGE = new Flag<>(
            Length::parse,
            size -> size.inches() >= 1 && size.inches() <= 2.1,
            "a length with its unit (in, ft, mm), 1 to 2.1 in: fittings are published for 1-1/2 and 2 in",
            "1.5 in");
    static final Flag<Length> EXTRA = new Flag<>(
            Length::parse,
            length -> length.feet() >= 0 && length.feet() <= 20,
            "a length with its unit (ft, in, yd, m, cm, mm), 0 to 20 ft",
            "6 in");
    static final Flag<Slope> SLOPE = new Flag<>(
            Slope::parse,
            slope -> slope.ratio() > 0 && slope.ratio() <= 1,
            "a slope with its unit (%, in/ft, ft/ft), above 0 and at most 100%",
            "0.5%");
    static final Flag<FlowRate> FLOW = of(FlowRate::parse, "a flow with its unit (gpm, gph, cfs)", "60 gpm");
    static final Flag<RainRate> RAIN = of(RainRate::parse, "a rain intensity with its unit (in/h, mm/h)", "3 in/h");
    static final Flag<Area> AREA = new Flag<>(
            LandArea::parse,
            area -> area.squareFeet() > 0,
            "an area with its unit (sf, sy, m2, acre, mi2), above 0",
            "1600 sf");
    static final Flag<Volume> VOLUME = new Flag<>(
            Volume::parse,
            volume -> volume.cubicFeet() > 0,
            "a volume with its unit (cy, cf, gal, m3), above 0",
            "1000 cy");
    static final Flag<Volume> GALLONS = new Flag<>(
            Volume::parse, volume -> volume.cubicFeet() > 0, "a volume with its unit (gal, cf), above 0", "5 gal");
    static final Flag<Volume> TRUCK = new Flag<>(
            Volume::parse,
            volume -> volume.cubicYards() >= 0.5 && volume.cubicYards() <= 100,
            "a volume with its unit (cy, cf, m3), 0.5 to 100 cy",
            "7 cy");
    static final Flag<Weight> WEIGHT = new Flag<>(
            Weight::parse, weight -> weight.tons() > 0, "a weight with its unit (ton, lb), above 0", "10 ton");
    static final Flag<Density> DENSITY = new Flag<>(
            Density::parse,
            density -> density.tonsPerCubicYard() >= 0.5 && density.tonsPerCubicYard() <= 3,
            "a density with its unit (ton/cy, lb/cf, lb/cy), 0.5 to 3 ton/cy",
            "1.4 ton/cy");
    static final Flag<FilmThickness> FILM =
            of(FilmThickness::parse, "a film thickness with its unit (mil, mm)", "60 mil");
    static final Flag<Percent> SOLIDS = percent(0, false, 100, true, "above 0 and at most 100%", "60%");
    static final Flag<Percent> SWELL = percent(0, true, 300, true, "0 to 300%", "30%");
    static final Flag<Percent> SHRINK = percent(0, true, 100, false, "0 to under 100%", "5%");
    static final Flag<Double> ROUGHNESS = number(0.005, 0.2, "Manning's n", "0.013");
    static final Flag<Double> RUNOFF = number(0.01, 1, "a runoff coefficient", "0.62");
    static final Flag<Double> HAZEN = number(40, 160, "Hazen-Williams C", "100");
    static final Flag<Double> SIDE = number(0, 10, "run for each foot of rise", "1");
    static final Flag<Integer> CORNERS =
            new Flag<>(FlagKinds::count, n -> n >= 0 && n <= 50, "a whole number, 0 to 50", "2");
    static final Flag<SoilType> SOIL = of(FlagKinds::soil, SOILS, "B");
    static final Flag<LocalDate> DATE =
            new Flag<>(FlagKinds::date, day -> day.getYear() >= 1900 && day.getYear() <= 2199, DAYS, "2026-07-01");
    static final Flag<Dollars> PRICE =
            new Flag<>(FlagKinds::dollars, amount -> !amount.isZero(), MONEY + ", above 0", "$14,999.99");
    static final Flag<Dollars> COST = of(FlagKinds::dollars, MONEY, "$2,000.00");
    static final Flag<Percent> TAX_RATE = percent(0, true, 30, true, "0 to 30%", "7%");
    static final Flag<Integer> AGE = whole(18, 120, "65");
    static final Flag<Integer> YEARS = whole(1, 99, "15");

    private FlagKinds() {}

    /** The two letters of a state. */
    static Flag<String> state(CalculatorData calculators) {
        return of(calculators::state, "the two letters of one of the 50 states, or DC", "MD");
    }

    /** A kind of pipe of a price book. */
    static Flag<PipeKind.Chosen> pipe(BookFigures book) {
        String names = String.join(" | ", book.pipeNames());
        return new Flag<>(
                text -> book.pipe(text)
                        .orElseThrow(() -> new UnreadableMeasure(
                                "a kind of pipe of the price book, or an item's code: " + names, "write one of them")),
                any -> true,
                "a kind of pipe of the price book: " + names,
                book.pipeNames().get(0));
    }

    /** A measure that knows its own limits. */
    private static <T> Flag<T> of(Flag.Reader<T> reader, String range, String example) {
        return new Flag<>(reader, any -> true, range, example);
    }

    /** Lengths above the first and up to the second, in feet. */
    private static Flag<Length> length(double above, double most, String example) {
        return new Flag<>(
                Length::parse,
                length -> length.feet() > above && length.feet() <= most,
                "a length with its unit (ft, in, yd, m, cm, mm), above 0 and at most " + plain(most) + " ft",
                example);
    }

    private static Flag<Percent> percent(
            double least, boolean orLeast, double most, boolean orMost, String range, String example) {
        return new Flag<>(
                Percent::parse,
                percent -> {
                    double points = percent.points().doubleValue();
                    boolean low = orLeast ? points >= least : points > least;
                    return low && (orMost ? points <= most : points < most);
                },
                "a percentage, " + range,
                example);
    }

    private static Flag<Double> number(double least, double most, String what, String example) {
        String range = what + ", a plain number, " + plain(least) + " to " + plain(most);
        return new Flag<>(
                text -> {
                    if (!NUMBER.matcher(text.strip()).matches()) {
                        throw new UnreadableMeasure(range, "write it as \"" + example + "\"");
                    }
                    return Double.parseDouble(text.strip());
                },
                number -> number >= least && number <= most,
                range,
                example);
    }

    private static Integer count(String text) throws UnreadableMeasure {
        if (!text.strip().matches("\\d{1,4}")) {
            throw new UnreadableMeasure("a whole number, 0 to 50", "write it as \"2\"");
        }
        return Integer.valueOf(text.strip());
    }

    private static Flag<Integer> whole(int least, int most, String example) {
        String range = "a whole number, " + least + " to " + most;
        return new Flag<>(
                text -> {
                    if (!text.strip().matches("\\d{1,4}")) {
                        throw new UnreadableMeasure(range, "write it as \"" + example + "\"");
                    }
                    return Integer.valueOf(text.strip());
                },
                number -> number >= least && number <= most,
                range,
                example);
    }

    private static LocalDate date(String text) throws UnreadableMeasure {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException noDay) {
            throw new UnreadableMeasure(DAYS, "write a day of the calendar as \"2026-07-01\"");
        }
    }

    private static Dollars dollars(String text) throws UnreadableMeasure {
        String bare = text.strip();
        if (!AMOUNT.matcher(bare).matches()) {
            throw new UnreadableMeasure(MONEY, "write it as \"14999.99\" or \"$14,999.99\"");
        }
        return Dollars.of(bare.replace("$", "").replace(",", ""));
    }

    private static SoilType soil(String text) throws UnreadableMeasure {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "a" -> SoilType.A;
            case "b" -> SoilType.B;
            case "c" -> SoilType.C;
            case "rock" -> SoilType.STABLE_ROCK;
            case "unknown" -> SoilType.NOT_CLASSED;
            default ->
                throw new UnreadableMeasure(SOILS, "write \"unknown\" where the competent person has not classed it");
        };
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
