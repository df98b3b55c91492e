// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.List;
import java.util.Optional;

/**
 * What a proposal says beside the work: what may be chosen, and which issue of it this is.
 *
 * @param revision counted from 1; 0 for a draft
 * @param since what moved since the issue before; empty in the first
 * @param taxed whether sales tax is collected on options
 */
public record Offer(int revision, Optional<SinceLastIssue> since, List<OptionOffer> options, boolean taxed) {
    /** A draft without options. */
    public static final Offer NONE = new Offer(0, Optional.empty(), List.of(), false);

    public Offer {
        options = List.copyOf(options);
    }
}
