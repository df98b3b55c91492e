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
 */
public record FootingDrain(
        String label,
        List<String> along,
        Optional<String> item,
        TeeAt teeAt,
        String into,
        Optional<Length> startInvert,
        Optional<Length> endInvert) {

    public FootingDrain {
        along = List.copyOf(along);
    }
}
