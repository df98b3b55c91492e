// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;

/**
 * The warranty's terms as the proposal and the certificate print them.
 *
 * @param specimen true until the job is closed
 */
public record WarrantyPromise(
        boolean specimen,
        List<WarrantyRow> parts,
        int replyDays,
        int transfers,
        int transferNoticeDays,
        List<String> notCovered,
        List<String> duties) {}
