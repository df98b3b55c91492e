// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.util.List;

/**
 * Between whom a warranty holds, and for which house.
 *
 * @param owners whom it covers now
 * @param address of the house
 */
public record WarrantyParties(List<String> owners, String address, Contractor contractor) {

    public WarrantyParties {
        owners = List.copyOf(owners);
        if (owners.isEmpty()) {
            throw new IllegalArgumentException("a warranty without owner");
        }
    }
}
