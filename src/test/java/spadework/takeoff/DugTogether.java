// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Protection;
import spadework.job.Seepage;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Texture;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.working.Recomputed;
import spadework.working.Worked;

/** What tests of ground that two bodies share have in common: clay of Type B, its banks, and quantities by label. */
final class DugTogether {
    static final long SEED = 20261128;

    /** Thickness and projection of the footing, feet. */
    static final double TF = 8.0 / 12;

    static final double P = 0.5;

    /** Height of a step of a benched bank, feet (29 CFR 1926 Subpart P App. B, T-27). */
    private static final double RISE = 4;

    private DugTogether() {}

    static Job clay(Job job) {
        return job.withSite(Jobs.with(job.site(), new Soil(Texture.CLAY, Seepage.NONE, SoilType.B)));
    }

    static double quantity(Job job, Measure measure, String label) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity ->
                        quantity.measure() == measure && quantity.label().equals(label))
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }

    /**
     * How far a bank of Type B stands out so high over its bottom: 1 to 1, or in steps of 4 ft, the first at the toe.
     *
     * @param deepest from grade to the bottom at the deepest place, feet
     */
    static double out(Protection kind, double over, double deepest) {
        return switch (kind) {
            case SLOPED -> over;
            case BENCHED -> over > RISE ? Math.min(Math.ceil(over / RISE) * RISE, deepest) : 0;
            case SHIELDED, UPRIGHT -> 0;
        };
    }

    /** Every quantity is what its printed working gives. */
    static void evaluates(Job job) {
        Measuring.of(job, Books.standard()).quantities().stream()
                .flatMap(quantity -> Recomputed.under(quantity.working()).stream())
                .forEach(DugTogether::evaluates);
    }

    private static void evaluates(Worked worked) {
        assertThat(Recomputed.evaluate(worked))
                .as(worked.line())
                .isCloseTo(worked.number(), within(1e-9 * Math.max(1, Math.abs(worked.number()))));
    }
}
