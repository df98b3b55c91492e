// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import java.util.Optional;
import spadework.working.Worked;

/**
 * Soil over a pipe, in feet, where the ground's level is known.
 *
 * @param start where its water comes in
 * @param end where its water leaves
 */
public record ReachCover(Optional<Worked> start, Optional<Worked> end) {}
