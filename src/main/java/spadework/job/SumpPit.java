package spadework.job;

import java.util.Optional;
import spadework.measure.FlowRate;
import spadework.measure.Length;

/**
 * What is known of a sump.
 *
 * @param diameter inside diameter of the basin
 * @param depth inside depth of the basin
 * @param lift from the water at which the pump stops to the highest point of the discharge pipe
 * @param pumpFlow what the pump delivers at {@code pumpHead}, from its maker's curve
 * @param pumpHead the head at which it delivers that
 */
public record SumpPit(
        Optional<Length> diameter,
        Optional<Length> depth,
        Optional<Length> lift,
        Optional<FlowRate> pumpFlow,
        Optional<Length> pumpHead) {}
