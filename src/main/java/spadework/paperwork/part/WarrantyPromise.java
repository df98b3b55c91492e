// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;

/**
 * The warranty's terms as the proposal and the certificate print them.
 *
 * @param specimen true until the job is closed
 * @param replyDays working days to the answer to a claim
 * @param visitDays working days to the look
 * @param findingDays working days from the look to what was found, in writing
 * @param beginDays days from there to the repair
 */
public record WarrantyPromise(
        boolean specimen,
        List<WarrantyRow> parts,
        int replyDays,
        int visitDays,
        int findingDays,
        int beginDays,
        int transfers,
        int transferNoticeDays,
        List<String> notCovered,
        List<String> duties) {}
