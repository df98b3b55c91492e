// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;
import spadework.measure.Length;

/**
 * A perforated run beside the footing.
 *
 * @param along labels of the walls it follows, in order
 * @param into label of the solid main, or of the outlet, that takes its water
 * @param startInvert level of the pipe's inside bottom at the start
 * @param endInvert the same at the end
 * @param teeInvert the same at a tee in the middle
 * @param startGrade level of the ground at the wall where the drain starts
 * @param endGrade the same where it ends
 */
public record FootingDrain(
        String label,
        List<String> along,
        Optional<String> item,
        TeeAt teeAt,
        String into,
        Optional<Length> startInvert,
        Optional<Length> endInvert,
        Optional<Length> teeInvert,
        Optional<Length> startGrade,
        Optional<Length> endGrade) {

    /** The name of a drain's lead into a sump in the takeoff. */
    public static String leadLabel(String drain) {
        return drain + " lead";
    }

    public FootingDrain {
        along = List.copyOf(along);
    }
}
