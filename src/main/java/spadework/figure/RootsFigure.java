// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.measure.Figures;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.trench.RootZone;
import spadework.working.Formula;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The root zone of a tree by each published rule. */
public final class RootsFigure {
    private RootsFigure() {}

    /**
     * What is known of a tree.
     *
     * @param trunk diameter 4.5 ft above the ground, above 0
     * @param girth of the trunk there instead, above 0
     * @param radius distance from the trunk's middle, above 0
     */
    public record Known(Optional<Length> trunk, Optional<Length> girth, Optional<Length> radius) {}

    /**
     * The radius by each rule for a trunk, or the trunk whose zone by each rule ends at a distance.
     *
     * @throws WrongInputs unless one of the three is given
     */
    public static Answer of(Known known) throws WrongInputs {
        long count = List.of(known.trunk(), known.girth(), known.radius()).stream()
                .filter(Optional::isPresent)
                .count();
        if (count != 1) {
            throw new WrongInputs(
                    count == 0 ? "no trunk" : "more than one of them",
                    "one of --trunk, --girth, --radius",
                    count == 0 ? "give --trunk \"12 in\"" : "leave all but one out");
        }
        List<Working> found = known.radius().isPresent()
                ? trunks(known.radius().get())
                : known.trunk()
                        .map(RootsFigure::radii)
                        .orElseGet(() -> radiiAround(known.girth().orElseThrow()));
        List<Working> byRule = found.subList(found.size() - RootZone.values().length, found.size());
        String range = Figures.inAnswer(least(byRule)) + " to " + Figures.inAnswer(greatest(byRule)) + " "
                + byRule.get(0).unit().symbol();
        return Answer.of(found)
                .with(List.of(new Finding(
                        "root-rules-differ",
                        Severity.ADVISE,
                        "",
                        Map.of("range", range),
                        "R-01 to R-03 as named; ANSI A300 (R-05, from memory)")));
    }

    private static BigDecimal least(List<Working> found) {
        return found.stream().map(Working::value).min(BigDecimal::compareTo).orElseThrow();
    }

    private static BigDecimal greatest(List<Working> found) {
        return found.stream().map(Working::value).max(BigDecimal::compareTo).orElseThrow();
    }

    private static List<Working> radii(Length trunk) {
        return radii(Inputs.given("t", "trunk, diameter at 4.5 ft", trunk.inches(), Unit.INCH));
    }

    private static List<Working> radiiAround(Length girth) {
        Working around = Inputs.given("c", "girth of the trunk at 4.5 ft", girth.inches(), Unit.INCH);
        Worked across = Worked.of(
                "t",
                "trunk, diameter at 4.5 ft",
                RootZone.diameter(girth).inches(),
                Unit.INCH,
                new Formula("c ÷ π", "circumference over π (R-04)"),
                around);
        List<Working> found = new ArrayList<>(List.of(across));
        found.addAll(radii(across));
        return found;
    }

    private static List<Working> radii(Working diameter) {
        List<Working> found = new ArrayList<>();
        Length across = Length.ofInches(diameter.number());
        for (RootZone rule : RootZone.values()) {
            found.add(Worked.of(
                    "r" + (rule.ordinal() + 1),
                    "root zone by " + rule.id() + ", " + rule.source(),
                    rule.radius(across).feet(),
                    Unit.FOOT,
                    new Formula("t × f" + (rule.ordinal() + 1), rule.source() + " (" + rule.id() + ")"),
                    diameter,
                    factor(rule)));
        }
        return found;
    }

    private static List<Working> trunks(Length radius) {
        Working distance = Inputs.given("r", "distance from the trunk's middle", radius.feet(), Unit.FOOT);
        List<Working> found = new ArrayList<>();
        for (RootZone rule : RootZone.values()) {
            found.add(Worked.of(
                    "t" + (rule.ordinal() + 1),
                    "trunk whose zone ends there by " + rule.id() + ", " + rule.source(),
                    rule.trunk(radius).inches(),
                    Unit.INCH,
                    new Formula("r ÷ f" + (rule.ordinal() + 1), rule.source() + " (" + rule.id() + ")"),
                    distance,
                    factor(rule)));
        }
        return found;
    }

    private static Listed factor(RootZone rule) {
        return Listed.of(
                "f" + (rule.ordinal() + 1),
                "radius for each inch of trunk, " + rule.id(),
                rule.feetPerInch(),
                Unit.FOOT_PER_INCH,
                rule.source());
    }
}
