// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * A place to which the water could run by itself.
 *
 * @param what the place in words
 * @param distance length of pipe from the drain's low end to it
 * @param level its highest water, or its ground
 * @param permission the paper that allows it, where one is needed
 */
public record OutletCandidate(
        String label, String what, Length distance, Length level, Optional<String> permission, String note) {}
