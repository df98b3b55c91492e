// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import spadework.measure.Percent;

/**
 * The company's tax setting. It differs by state, form of contract and kind of work, so a tax adviser sets it.
 *
 * @param classes settings for kinds of work that are taxed another way, by the company's own names
 */
public record Tax(TaxMode mode, Percent rate, Map<String, Tax> classes) {

    public Tax {
        classes = Collections.unmodifiableMap(new LinkedHashMap<>(classes));
    }

    /** The setting of that class; the usual one where the company has none for it. */
    public Tax of(String taxClass) {
        return classes.getOrDefault(taxClass, this);
    }
}
