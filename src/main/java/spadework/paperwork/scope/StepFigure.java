// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import spadework.ground.StoneProfile;
import spadework.measure.Length;
import spadework.safety.LadderRule;
import spadework.safety.way.NearLine;
import spadework.takeoff.FabricRule;
import spadework.takeoff.GroundTakeoff;
import spadework.trench.Bank;
import spadework.trench.TrenchLimits;
import spadework.water.SumpDesign;

/** Lengths that the steps name, each with where it stands; the words call them by their names. */
public enum StepFigure {
    /** So far on each side of a mark nobody digs with a machine. */
    HAND_ZONE(NearLine.ZONE, "state one-call laws: 18 in each side (Colorado) to 24 in (New York)"),
    SPOIL_BACK(TrenchLimits.SPOIL_BACK, "29 CFR 1926.651(j)(2) (T-17)"),
    /** A trench this deep or deeper has a ladder in it. */
    LADDER_FROM(LadderRule.FROM, "29 CFR 1926.651(c)(2) (T-15)"),
    LADDER_WITHIN(LadderRule.WITHIN, "29 CFR 1926.651(c)(2) (T-15)"),
    LADDER_ABOVE(LadderRule.ABOVE_EDGE, "29 CFR 1926.1053(b)(1) (T-16)"),
    /** An upright bank may stand only below this depth, and only where no sign of a cave-in is seen. */
    UPRIGHT_UNDER(Bank.PROTECTED_FROM, "29 CFR 1926.652(a)(1) (T-13)"),
    READING_EVERY(Length.ofFeet(10), "common practice, no source"),
    BED(Length.ofFeet(StoneProfile.BEDDING), "IRC R405.1"),
    STONE_OVER(Length.ofFeet(StoneProfile.COVER), "IRC R405.1"),
    STONE_OUT(Length.ofFeet(1), "IRC R405.1"),
    TURN_UP(FabricRule.TURN_UP, FabricRule.SOURCE),
    LAP(FabricRule.LAP, FabricRule.SOURCE),
    LIFT(Length.ofInches(8), "IBC 1804.3 (F-27)"),
    FALL(GroundTakeoff.FALL, "IRC R401.3 (F-22)"),
    FALL_OVER(GroundTakeoff.FALL_OVER, "IRC R401.3 (F-22)"),
    SIDING_CLEAR(Length.ofInches(6), "IRC R404.1.6 (F-29)"),
    VENEER_CLEAR(Length.ofInches(4), "IRC R404.1.6 (F-29)"),
    SUMP_WIDE(SumpDesign.LEAST_DIAMETER, "IRC P3303.1.2"),
    SUMP_DEEP(SumpDesign.LEAST_DEPTH, "IRC P3303.1.2");

    private final Length length;
    private final String source;

    StepFigure(Length length, String source) {
        this.length = length;
        this.source = source;
    }

    public Length length() {
        return length;
    }

    /** Where it stands, for the office. */
    public String source() {
        return source;
    }

    /** Name, text, name, text: every figure under the name by which the words call it. */
    static Stream<String> values(String... more) {
        return Stream.concat(
                Arrays.stream(values())
                        .flatMap(figure -> Stream.of(
                                figure.name().toLowerCase(Locale.ROOT).replace("_", ""), inches(figure.length))),
                Arrays.stream(more));
    }

    /** Up to 24 in the crew reads inches, as its rule shows them. */
    private static String inches(Length length) {
        double inches = length.feet() * 12;
        return (inches < 24 && inches % 12 != 0) || inches == 12 ? Math.round(inches) + " in" : length.text();
    }
}
