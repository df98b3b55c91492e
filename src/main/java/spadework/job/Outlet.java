// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.Optional;
import spadework.measure.Length;

/**
 * Where water leaves the pipes.
 *
 * @param what the place in words, as "swale along the back lot line"
 * @param permission the paper that allows it, where one is needed
 * @param level level at which the water leaves
 * @param discharge length of the sump's discharge pipe
 * @param waterLevel the highest level of the water, or of the ground, that takes the water
 * @param pit what is known of a sump
 * @param dischargeTrench the cross-section of the discharge pipe's trench; empty for the usual one
 */
public record Outlet(
        String label,
        OutletKind kind,
        String what,
        Optional<Length> level,
        Optional<Length> fromHouse,
        Optional<Length> fromLotLine,
        Optional<String> permission,
        Optional<Length> discharge,
        Optional<Length> waterLevel,
        Optional<SumpPit> pit,
        Optional<TrenchSize> dischargeTrench) {

    /** The name of a sump's discharge pipe in the takeoff. */
    public static String dischargeLabel(String sump) {
        return sump + " discharge";
    }
}
