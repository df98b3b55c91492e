// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.List;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.pricebook.SupplierMap;

/**
 * A supplier's map that was read.
 *
 * @param map empty where the text is no JSON; not to be relied on where there are faults
 */
public record ReadMap(Optional<SupplierMap> map, List<Fault> faults) {

    public ReadMap {
        faults = List.copyOf(faults);
    }
}
