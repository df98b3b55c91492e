// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;

/**
 * What every paper of a set opens with.
 *
 * @param issued the date of the set in words, as {@code March 3, 2026}
 * @param issuedIso the same as {@code 2026-03-03}
 */
public record PaperHead(
        Firm firm,
        String jobNumber,
        String jobTitle,
        String issued,
        String issuedIso,
        String validUntil,
        List<String> customers,
        String customerContact,
        String siteAddress,
        boolean crawlSpace) {}
