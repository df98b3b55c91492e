// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.List;
import java.util.Optional;
import spadework.measure.Density;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.measure.Weight;
import spadework.takeoff.EarthVolumes;
import spadework.takeoff.StoneEnvelope;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** Drain stone in a trench. */
public final class StoneFigure {
    private StoneFigure() {}

    /**
     * The stone's cross-section.
     *
     * @param bottom width of the trench's bottom beside the footing, above 0
     * @param height of the stone above the bottom, above 0
     * @param pipe outside diameter of the pipe in it, 0 without one
     * @param side run for each foot of rise of the bank, 0 for upright
     * @param footing thickness of the footing, 0 where there is none
     * @param projection of the footing beyond the wall, 0 or more
     */
    public record Section(Length bottom, Length height, Length pipe, double side, Length footing, Length projection) {}

    /**
     * What is known of the stone.
     *
     * @param given density of the stone; the book's when it is left out
     */
    public record Known(Optional<Length> length, Optional<Weight> weight, Optional<Density> given) {}

    /**
     * Volume and weight of the stone over a length, or the length that a weight of stone fills. Nothing is added for
     * waste.
     *
     * @throws WrongInputs unless either length or weight is given, or if the pipe does not lie in the stone
     */
    public static Answer of(Known known, Section section, BookFigures book) throws WrongInputs {
        Working density = known.given().map(BookFigures::density).orElseGet(book::density);
        if (section.pipe().compareTo(section.height()) >= 0 || section.pipe().compareTo(section.bottom()) >= 0) {
            throw new WrongInputs(
                    "a pipe as large as the stone around it",
                    "a pipe that lies in the stone",
                    "check --pipe against --bottom and --height");
        }
        String leftOut = new Inputs()
                .take("length", known.length().isPresent())
                .take("tons", known.weight().isPresent())
                .leftOut();
        Worked area = area(section);
        if (leftOut.equals("--length")) {
            return Answer.of(reach(known.weight().get(), density, area));
        }
        Given l = Inputs.given("L", "length", known.length().get().feet(), Unit.FOOT);
        Worked volume = Worked.of(
                "S",
                "stone in place",
                l.number() * area.number() / 27,
                Unit.CUBIC_YARD,
                new Formula("L × As ÷ 27", "length times section, 27 cf in a cubic yard"),
                l,
                area);
        Worked tons = Worked.of(
                "T",
                "weight of the stone",
                EarthVolumes.tons(volume.number(), density.number()),
                Unit.TON,
                new Formula("S × " + density.symbol(), "volume times weight"),
                volume,
                density);
        return Answer.of(volume, tons);
    }

    private static List<Working> reach(Weight weight, Working density, Worked area) {
        Given tons = Inputs.given("T", "weight of the stone", weight.tons(), Unit.TON);
        Worked volume = Worked.of(
                "S",
                "stone in place",
                EarthVolumes.cubicYards(tons.number(), density.number()),
                Unit.CUBIC_YARD,
                new Formula("T ÷ " + density.symbol(), "weight over weight of a cubic yard"),
                tons,
                density);
        Worked length = Worked.of(
                "L",
                "length that it fills",
                volume.number() * 27 / area.number(),
                Unit.FOOT,
                new Formula("S × 27 ÷ As", "volume over section"),
                volume,
                area);
        return List.of(volume, length);
    }

    private static Worked area(Section section) {
        Given width = feet("B", "width of the trench's bottom", section.bottom());
        Given height = feet("hs", "height of the stone", section.height());
        Given slope = Inputs.given("s", "side slope, run for each rise", section.side(), Unit.FOOT_PER_FOOT);
        Given projection = feet("p", "projection of the footing", section.projection());
        Given footing = feet("tf", "thickness of the footing", section.footing());
        Given outside = feet("OD", "outside diameter of the pipe", section.pipe());
        double value = StoneEnvelope.section(
                width.number(),
                height.number(),
                slope.number(),
                projection.number(),
                footing.number(),
                outside.number());
        return Worked.of(
                "As",
                "section of the stone without the pipe",
                value,
                Unit.SQUARE_FOOT,
                new Formula(
                        "B × hs + s × hs^2 ÷ 2 + p × max(hs − tf, 0) − π × OD^2 ÷ 4",
                        "area of a trapezoid less a circle"),
                width,
                height,
                slope,
                projection,
                footing,
                outside);
    }

    private static Given feet(String symbol, String name, Length value) {
        return Inputs.given(symbol, name, value.feet(), Unit.FOOT);
    }
}
