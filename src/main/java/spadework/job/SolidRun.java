package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * A solid pipe in a trench of its own: the main of the footing drain or a line of roof water.
 *
 * @param into label of the outlet
 */
public record SolidRun(
        String label,
        Length length,
        Optional<String> item,
        TrenchSize trench,
        int bends,
        String into,
        Optional<Length> startInvert,
        Optional<Length> endInvert) {}
