// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.List;
import spadework.paperwork.work.PipeDesignRow;

/**
 * How the water is led away.
 *
 * @param design a row for each reach of pipe
 * @param sumps what each sump has to be, a sentence each
 */
public record ScopeWater(boolean roofWater, boolean sump, List<PipeDesignRow> design, List<String> sumps) {

    public ScopeWater {
        design = List.copyOf(design);
        sumps = List.copyOf(sumps);
    }
}
