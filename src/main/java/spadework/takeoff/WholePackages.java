// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

/** The one place where a quantity is rounded up to what is sold. */
public final class WholePackages {
    private static final double NOISE = 1e-9;

    private WholePackages() {}

    /**
     * The least whole number that is enough. A number that exceeds a whole one only by floating-point noise, as
     * 149.0000000001, counts as that whole number.
     */
    static double roundUp(double packages) {
        return Math.ceil(packages - NOISE * Math.max(1, Math.abs(packages)));
    }
}
