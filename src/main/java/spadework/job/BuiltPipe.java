// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * A drain, main or roof line as built, with the levels of its inside bottom.
 *
 * @param teeInvert at the tee of a drain that has it in the middle
 */
public record BuiltPipe(
        String label,
        Length length,
        Optional<Length> startInvert,
        Optional<Length> endInvert,
        Optional<Length> teeInvert) {}
