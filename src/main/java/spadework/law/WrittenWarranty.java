// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.util.List;

/**
 * What a written warranty says, so that it can be held against the law. What it does not say is empty.
 *
 * @param title its title, as "Limited warranty"
 * @param start when it starts
 * @param term how long it lasts, a term for each part
 * @param text the whole text, in which the prescribed sentences are looked for
 */
public record WrittenWarranty(
        String title,
        WrittenCoverage coverage,
        String start,
        List<String> term,
        WrittenClaims claims,
        WrittenLimits limits,
        String text) {

    public WrittenWarranty {
        term = List.copyOf(term);
    }
}
