package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * Where water leaves the pipes.
 *
 * @param what the place in words, as "swale along the back lot line"
 * @param permission the paper that allows it, where one is needed
 * @param discharge length of the sump's discharge pipe
 */
public record Outlet(
        String label,
        OutletKind kind,
        String what,
        Optional<Length> level,
        Optional<Length> fromHouse,
        Optional<Length> fromLotLine,
        Optional<String> permission,
        Optional<Length> discharge) {}
