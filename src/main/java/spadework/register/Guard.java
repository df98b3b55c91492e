// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.List;

/**
 * A condition on what is registered already, looked at while nobody else can write. It keeps two programs from both
 * doing what may be done once.
 */
@FunctionalInterface
public interface Guard {
    /** Lets everything pass. */
    Guard NONE = entries -> {};

    /** Throws an unchecked exception of the caller's choice when the entry must not be written. */
    void check(List<Entry> entries);
}
