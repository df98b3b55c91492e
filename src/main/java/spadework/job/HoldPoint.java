// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A point at which work stopped until somebody had looked.
 *
 * @param point what was looked at, as "washed and dry"
 * @param photo file in the job's folder
 * @param waived why there is no photo; whoever looked answers for it
 */
public record HoldPoint(String point, LocalDate on, String by, Optional<String> photo, Optional<String> waived) {

    /** One whose missing photo nobody answers for. */
    public HoldPoint(String point, LocalDate on, String by, Optional<String> photo) {
        this(point, on, by, photo, Optional.empty());
    }

    /** Whether it is the point of that letter in the scope of work. */
    public boolean isOf(String letter) {
        return point.strip().matches("(?i)(?:hold point )?" + letter + "\\b.*");
    }

    /** Whether a photo shows it, or somebody answers by name for there being none. */
    public boolean isProved() {
        return photo.isPresent() || waived.isPresent();
    }
}
