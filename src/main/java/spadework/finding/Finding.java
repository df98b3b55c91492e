// SPDX-License-Identifier: Apache-2.0
package spadework.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something a check noticed. It carries figures, not sentences: the words for its id stand in the templates, so
 * that a contractor can change them and every paper says the same.
 *
 * @param id our own name of the rule, as {@code soil-type-a}
 * @param severity how grave it is
 * @param about the label of the wall, run or paper it is about; empty when it is about the whole job
 * @param values the figures to put into the words, each with its unit; keys are the placeholders
 * @param citation where the rule stands, with its edition, or {@code common practice, no source}
 * @param bodies what is dug at the place that the value {@code at} names: labels by kind, as {@code wall}; empty where
 *     there is no such value, or it is no body of a job
 */
public record Finding(
        String id,
        Severity severity,
        String about,
        Map<String, String> values,
        String citation,
        Map<String, List<String>> bodies) {

    public Finding {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        bodies = Collections.unmodifiableMap(new LinkedHashMap<>(bodies));
    }

    /** About no body of ground. */
    public Finding(String id, Severity severity, String about, Map<String, String> values, String citation) {
        this(id, severity, about, values, citation, Map.of());
    }

    /** The same with other values. */
    public Finding withValues(Map<String, String> others) {
        return new Finding(id, severity, about, others, citation, bodies);
    }

    /** The same about these bodies. */
    public Finding at(Map<String, List<String>> those) {
        return new Finding(id, severity, about, values, citation, those);
    }
}
