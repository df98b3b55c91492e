// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * The pipes.
 *
 * @param drains perforated runs beside the footing
 * @param mains solid pipe that carries the drains' water away
 * @param roofLines solid pipe that carries roof water, apart from the drains
 * @param candidates places looked at for an outlet to daylight
 */
public record Water(
        List<FootingDrain> drains,
        List<SolidRun> mains,
        List<SolidRun> roofLines,
        List<Downspout> downspouts,
        List<Outlet> outlets,
        List<OutletCandidate> candidates) {

    public Water {
        drains = List.copyOf(drains);
        mains = List.copyOf(mains);
        roofLines = List.copyOf(roofLines);
        downspouts = List.copyOf(downspouts);
        outlets = List.copyOf(outlets);
        candidates = List.copyOf(candidates);
    }
}
