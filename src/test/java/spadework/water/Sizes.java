// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import spadework.measure.Length;
import spadework.pricebook.Pipe;

/** Pipes of any size for tests. */
public final class Sizes {
    private Sizes() {}

    static Pipe pipe(double inches, double n) {
        return new Pipe(
                "test",
                Length.ofInches(inches),
                Length.ofInches(inches * 1.1),
                Length.ofInches(inches),
                n,
                false,
                Length.ofFeet(10));
    }
}
