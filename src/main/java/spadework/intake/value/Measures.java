// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import spadework.intake.source.ValueKind;
import spadework.measure.Area;
import spadework.measure.FilmThickness;
import spadework.measure.FlowRate;
import spadework.measure.Length;
import spadework.measure.RainRate;
import spadework.measure.UnreadableMeasure;

/** Lengths, areas, rain and films, each with the limits within which it can be meant. */
public final class Measures {
    private static final String LENGTH = "a length with its unit (ft, in, yd, m, cm, mm)";

    public static final ValueKind<RainRate> RAIN = TextWithUnit.kind(
            "a rain intensity with its unit (in/h, mm/h)",
            "3 in/h",
            RainRate::parse,
            new Limits<>("above 0, at most 60 in/h", rain -> true),
            new RainRate(1));

    public static final ValueKind<FilmThickness> FILM = TextWithUnit.kind(
            "a film thickness with its unit (mil, mm)",
            "60 mil",
            FilmThickness::parse,
            new Limits<>("above 0, at most 1000 mil", film -> true),
            new FilmThickness(1));

    public static final ValueKind<FlowRate> FLOW = TextWithUnit.kind(
            "a flow with its unit (gpm, gph, cfs)",
            "30 gpm",
            FlowRate::parse,
            new Limits<>("above 0, at most 1,000,000 gpm", flow -> true),
            new FlowRate(1));

    /** A flow that somebody may have watched; empty where the file says that nobody did. */
    public static final ValueKind<Optional<FlowRate>> OBSERVED_FLOW = TextWithUnit.kind(
            "a flow with its unit (gpm, gph, cfs) or \"unknown\"",
            "4 gpm",
            Measures::observedFlow,
            new Limits<>("above 0, at most 1,000,000 gpm", flow -> true),
            Optional.empty());

    /** A level above or below the benchmark. The highest town of the United States lies near 11,000 ft. */
    public static final ValueKind<Length> LEVEL =
            within(Limits.between(Length.ofFeet(-1000), Length.ofFeet(15000), Length::text));

    /** Made once for each bound: a thousand jobs ask for the same few. */
    private static final Map<Integer, ValueKind<Length>> UP_TO = new ConcurrentHashMap<>();

    private static final Map<Integer, ValueKind<Length>> FROM_ZERO_TO = new ConcurrentHashMap<>();

    private Measures() {}

    /** A length that cannot be zero. */
    public static ValueKind<Length> lengthUpTo(int feet) {
        return UP_TO.computeIfAbsent(
                feet, bound -> within(Limits.above(Length.ZERO, Length.ofFeet(bound), Length::text)));
    }

    /** A length that may be zero. */
    public static ValueKind<Length> lengthFromZeroTo(int feet) {
        return FROM_ZERO_TO.computeIfAbsent(
                feet, bound -> within(Limits.between(Length.ZERO, Length.ofFeet(bound), Length::text)));
    }

    public static ValueKind<Length> lengthBetween(int inches, int feet) {
        return within(Limits.between(Length.ofInches(inches), Length.ofFeet(feet), Length::text));
    }

    public static ValueKind<Area> areaUpTo(int squareFeet) {
        return area(new Limits<>(
                "above 0 sf, at most " + squareFeet + " sf",
                area -> area.squareFeet() > 0 && area.squareFeet() <= squareFeet));
    }

    public static ValueKind<Area> areaFromZeroTo(int squareFeet) {
        return area(new Limits<>("from 0 sf to " + squareFeet + " sf", area -> area.squareFeet() <= squareFeet));
    }

    private static ValueKind<Area> area(Limits<Area> limits) {
        return TextWithUnit.kind("an area with its unit (sf, sy, m2)", "850 sf", Area::parse, limits, new Area(0));
    }

    private static ValueKind<Length> within(Limits<Length> limits) {
        String example = limits.allow(Length.ofFeet(46.5)) ? "46 ft 6 in" : "1 ft 6 in";
        return TextWithUnit.kind(LENGTH, example, Length::parse, limits, Length.ZERO);
    }

    private static Optional<FlowRate> observedFlow(String text) throws UnreadableMeasure {
        if (text.strip().equals("unknown")) {
            return Optional.empty();
        }
        try {
            return Optional.of(FlowRate.parse(text));
        } catch (UnreadableMeasure no) {
            throw new UnreadableMeasure(no.allowed() + "; or \"unknown\"", no.fix() + " or \"unknown\"");
        }
    }
}
