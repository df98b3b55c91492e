// SPDX-License-Identifier: Apache-2.0
package spadework.water.flow;

import spadework.measure.Unit;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Flow through soil, Q = K × i × A (H-33). Any one length unit will do. */
public final class Darcy {
    private Darcy() {}

    /**
     * Flow through a section.
     *
     * @param conductivity {@code K}, length per time
     * @param gradient {@code i}, head lost per length
     * @param area of the section at right angles to the flow
     * @param unit that the flow comes out in
     */
    public static Worked flow(Working conductivity, Working gradient, Working area, Unit unit) {
        return Worked.of(
                "q",
                "flow through the soil",
                conductivity.number() * gradient.number() * area.number(),
                unit,
                new Formula(conductivity.symbol() + " × " + gradient.symbol() + " × " + area.symbol(), "Darcy (H-33)"),
                conductivity,
                gradient,
                area);
    }
}
