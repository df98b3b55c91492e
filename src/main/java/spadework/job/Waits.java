// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Days that work waits, as far as they are stated.
 *
 * @param stated days from 0; empty where it says that they are unknown
 */
public record Waits(Map<WaitFor, OptionalInt> stated) {

    /** Nothing is stated. */
    public static final Waits NONE = new Waits(Map.of());

    public Waits {
        stated = Map.copyOf(stated);
    }

    /** These, and where they are silent the others. */
    public Waits orElse(Waits others) {
        Map<WaitFor, OptionalInt> all = new EnumMap<>(WaitFor.class);
        all.putAll(others.stated);
        all.putAll(stated);
        return new Waits(all);
    }

    /** The days: stated, else usual. */
    public int days(WaitFor what) {
        return stated.getOrDefault(what, OptionalInt.empty()).orElse(what.usual());
    }

    /** Whether it says that nobody knows them. */
    public boolean isUnknown(WaitFor what) {
        return stated.containsKey(what) && stated.get(what).isEmpty();
    }
}
