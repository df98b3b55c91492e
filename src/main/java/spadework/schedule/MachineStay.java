// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * How long digging machines are on site. One that would stand idle for longer than the company lets it is taken away
 * and brought again.
 *
 * @param onSite working days
 * @param standing those of them on which none of them runs
 * @param trips times that they are brought; once where there is no machine either, for crew and tools
 */
record MachineStay(int onSite, int standing, int trips) {

    /** @param longest working days in a row that a machine may stand */
    static MachineStay of(List<WorkDay> days, Set<String> diggers, int longest) {
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            if (!Collections.disjoint(days.get(i).machines(), diggers)) {
                used.add(i);
            }
        }
        int standing = 0;
        int trips = 1;
        for (int i = 1; i < used.size(); i++) {
            int gap = used.get(i) - used.get(i - 1) - 1;
            if (gap > longest) {
                trips++;
            } else {
                standing += gap;
            }
        }
        return new MachineStay(used.size() + standing, standing, trips);
    }
}
