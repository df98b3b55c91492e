package spadework.water.flow;

import spadework.working.Formula;
import spadework.measure.Unit;
import spadework.working.Worked;
import spadework.working.Working;

/** Flow from a drained field: cfs = inches a day × acres ÷ 23.8 (H-17). */
public final class DrainageCoefficient {
    private DrainageCoefficient() {}

    /** Flow in cfs of a depth of water in inches a day off so many acres. */
    public static Worked flow(Working inchesPerDay, Working acres) {
        return Worked.of("Qd", "drainage flow", inchesPerDay.number() * acres.number() / 23.8, Unit.CUBIC_FOOT_PER_SECOND, new Formula(inchesPerDay.symbol() + " × " + acres.symbol() + " ÷ 23.8", "agricultural drainage tables (H-17)"), inchesPerDay, acres);
    }
}
