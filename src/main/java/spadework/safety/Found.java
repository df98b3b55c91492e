// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.finding.Finding;
import spadework.finding.Severity;

/** Short spelling for findings. Values alternate: name, text, name, text. */
final class Found {
    static final String PRACTICE = "common practice, no source";

    private Found() {}

    static Finding stop(String id, String about, String citation, String... values) {
        return new Finding(id, Severity.STOP, about, pairs(values), citation);
    }

    static Finding must(String id, String about, String citation, String... values) {
        return new Finding(id, Severity.MUST, about, pairs(values), citation);
    }

    static Finding advise(String id, String about, String citation, String... values) {
        return new Finding(id, Severity.ADVISE, about, pairs(values), citation);
    }

    static List<Finding> when(boolean condition, Finding finding) {
        return condition ? List.of(finding) : List.of();
    }

    private static Map<String, String> pairs(String... values) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < values.length; i += 2) {
            map.put(values[i], values[i + 1]);
        }
        return map;
    }
}
