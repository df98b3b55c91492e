// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.pricebook.Measure;
import spadework.working.Formula;
import spadework.working.Worked;
import spadework.working.Working;

/** Gathers the quantities of one section as they are measured. What comes to nothing is left out. */
public final class QuantityCollector {
    private final TakeoffSection section;
    private final String prefix;
    private final String prefixId;
    private final List<Stretch> stretches;
    private final List<Driven> found = new ArrayList<>();

    /** @param prefix what every id starts with: the label of the wall or run */
    QuantityCollector(TakeoffSection section, String prefix, List<Stretch> stretches) {
        this.section = section;
        this.prefix = prefix;
        this.prefixId = prefix.replace(",", "").replace(' ', '-') + ".";
        this.stretches = stretches;
    }

    void add(Measure measure, Working working, String... codes) {
        if (working.number() > 0) {
            keep(measure, working, List.of(codes));
        }
    }

    /** A wall's share of what a group of walls comes to; it may be negative, so that the group's sum is exact. */
    void share(Measure measure, Working working) {
        if (working.number() != 0) {
            keep(measure, working, List.of());
        }
    }

    /** Keeps a quantity even when it is zero or negative. */
    void keep(Measure measure, Working working, List<String> codes) {
        String id = prefixId + measure.id();
        String description = measure.heading() + ", " + prefix;
        Quantity quantity = new Quantity(id, measure, section, prefix, description, working);
        found.add(new Driven(quantity, codes, stretches));
    }

    /** A number that is counted or taken over, in the measure's own unit. */
    static Worked counted(Measure measure, double value, String formula, String source, Working... inputs) {
        return Worked.of("n", measure.trade(), value, measure.unit(), new Formula(formula, source), inputs);
    }

    List<Driven> found() {
        return List.copyOf(found);
    }
}
