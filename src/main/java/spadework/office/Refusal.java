// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.List;
import spadework.finding.Fault;
import spadework.listing.Listing;

/** Nothing was made, and why. */
public record Refusal(List<Fault> faults) implements BidResult {

    public Refusal {
        faults = List.copyOf(faults);
    }

    /** The faults for other programs, as JSON. */
    public String listing() {
        return Listing.faults(faults);
    }
}
