// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.ValueKind;

/**
 * The version of the job file's format. A file without {@code format} was written before versions were; it is read as
 * {@link #FIRST} and means the same. A later version adds its step up here, from the version before.
 */
public final class JobFormat {
    /** What a file without the key is. */
    public static final int FIRST = 1;

    /** What is written today. */
    public static final int CURRENT = 1;

    public static final String KEY = "format";

    private JobFormat() {}

    /** Reads the version; one that this program does not know is a fault. */
    public static int read(ObjectFields fields) {
        return fields.get(KEY, new ValueKind<>(Integer.toString(CURRENT), JobFormat::version), FIRST);
    }

    private static int version(SourceNode node) {
        String allowed = FIRST == CURRENT ? Integer.toString(FIRST) : FIRST + " to " + CURRENT;
        Optional<String> digits = node.number(allowed, Integer.toString(CURRENT));
        BigDecimal version = digits.map(BigDecimal::new).orElse(BigDecimal.valueOf(FIRST));
        boolean known = version.stripTrailingZeros().scale() <= 0
                && version.compareTo(BigDecimal.valueOf(FIRST)) >= 0
                && version.compareTo(BigDecimal.valueOf(CURRENT)) <= 0;
        if (!known) {
            boolean later = version.compareTo(BigDecimal.valueOf(CURRENT)) > 0;
            node.fault(
                    digits.orElseThrow(),
                    allowed,
                    later ? "use a newer Spadework, which knows this format" : "write " + CURRENT + ", or take it out");
            return FIRST;
        }
        return version.intValueExact();
    }
}
