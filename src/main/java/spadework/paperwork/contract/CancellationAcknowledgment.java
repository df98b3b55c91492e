// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.List;
import spadework.money.Dollars;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that the acknowledgment of a cancellation prints, finished. Days are in words.
 *
 * @param contract number of the contract
 * @param by who gave notice
 * @param sentOn when the notice was mailed or handed over
 * @param lastDay the last day of the right to cancel
 * @param refundBy the last day to pay back
 * @param paid what came in
 * @param refund what goes back
 * @param released why the buyer is let go although the right had ended; empty where it had not
 */
public record CancellationAcknowledgment(
        PaperHead head,
        String contract,
        String signedOn,
        List<String> by,
        String sentOn,
        String receivedOn,
        String lastDay,
        String refundBy,
        List<PaidRow> paid,
        Dollars refund,
        String released) {

    public CancellationAcknowledgment {
        by = List.copyOf(by);
        paid = List.copyOf(paid);
    }

    /**
     * A payment that came in.
     *
     * @param on in words
     */
    public record PaidRow(String what, String on, Dollars amount) {}
}
