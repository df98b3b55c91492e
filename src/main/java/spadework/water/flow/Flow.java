// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.FlowRate;
import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Flow in other units: 1 cfs is 448.831 gpm (60 × 1728 ÷ 231, the US gallon of 231 cubic inches). */
public final class Flow {
    private static final String SOURCE = "60 × 1728 ÷ 231";

    private Flow() {}

    /** A flow in cfs as gpm. */
    public static Worked gpm(String symbol, String name, Working cfs) {
        return Worked.of(
                symbol,
                name,
                cfs.number() * FlowRate.GPM_PER_CFS,
                Unit.GALLON_PER_MINUTE,
                new Formula(cfs.symbol() + " × " + FlowRate.GPM_PER_CFS, SOURCE),
                cfs);
    }

    /** A flow in gpm as cfs. */
    public static Worked cfs(String symbol, String name, Working gpm) {
        return Worked.of(
                symbol,
                name,
                gpm.number() / FlowRate.GPM_PER_CFS,
                Unit.CUBIC_FOOT_PER_SECOND,
                new Formula(gpm.symbol() + " ÷ " + FlowRate.GPM_PER_CFS, SOURCE),
                gpm);
    }
}
