// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A point at which work stopped until somebody had looked.
 *
 * @param point what was looked at, as "washed and dry"
 * @param photo file in the job's folder
 * @param waived why there is no photo; whoever looked answers for it
 */
public record HoldPoint(String point, LocalDate on, String by, Optional<String> photo, Optional<String> waived) {

    private static final Pattern NUMBERED = Pattern.compile("(?i)(?:hold point )?([12AB])\\b[,.: ]*(.*)");

    /** One whose missing photo nobody answers for. */
    public HoldPoint(String point, LocalDate on, String by, Optional<String> photo) {
        this(point, on, by, photo, Optional.empty());
    }

    /** The hold point of the scope of work that it is, 1 or 2; 0 where its words name none. Older files say A and B. */
    public int number() {
        Matcher named = NUMBERED.matcher(point.strip());
        if (!named.matches()) {
            return 0;
        }
        return named.group(1).matches("(?i)[1A]") ? 1 : 2;
    }

    /** What was looked at, without the number before it. */
    public String what() {
        Matcher named = NUMBERED.matcher(point.strip());
        return named.matches() && !named.group(2).isBlank() ? named.group(2).strip() : point.strip();
    }

    /** Whether a photo shows it, or somebody answers by name for there being none. */
    public boolean isProved() {
        return photo.isPresent() || waived.isPresent();
    }
}
