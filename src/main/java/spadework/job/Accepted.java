// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;
import java.util.List;
import spadework.money.Dollars;

/**
 * The homeowner's yes, and what it fixes.
 *
 * @param revision revision of the issued proposal that was accepted
 * @param by who accepted
 * @param options labels of the options that were taken
 * @param declined labels of those that were not
 * @param signatures one of all, or one of each
 * @param price the contract price at that moment, with the options taken and any sales tax
 * @param bookDate date of the price book that priced it
 * @param templates fingerprint of the templates that print it
 */
public record Accepted(
        int revision,
        LocalDate on,
        List<String> by,
        List<String> options,
        List<String> declined,
        List<Signature> signatures,
        Dollars price,
        LocalDate bookDate,
        String templates) {

    public Accepted {
        by = List.copyOf(by);
        options = List.copyOf(options);
        declined = List.copyOf(declined);
        signatures = List.copyOf(signatures);
    }
}
