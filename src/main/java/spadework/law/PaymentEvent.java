// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import spadework.law.phrase.PaymentWords;
import spadework.wording.TextMemo;

/**
 * What the words of a payment say that it falls due upon. Whether a payment is one before the work is told from them,
 * not from a mark that may be left out: "the day the machine arrives" names nothing that is done yet, nor does what
 * stands behind a "before", nor a paper that is filled in or a machine that was seen.
 */
public enum PaymentEvent {
    /** It names work that is done, or a test that was seen. */
    WORK_DONE,
    /** It falls due at signing, at an order, a delivery, an arrival or a start. */
    BEFORE_WORK,
    /** Its words name neither; it is taken as one before the work. */
    UNSAID;

    private static final TextMemo<PaymentEvent> SAID = new TextMemo<>(PaymentEvent::said);

    /**
     * What a payment falls due upon.
     *
     * @param atSigning whether it is marked as a deposit
     */
    public static PaymentEvent of(String when, boolean atSigning) {
        return atSigning ? BEFORE_WORK : SAID.of(when);
    }

    private static PaymentEvent said(String when) {
        if (PaymentWords.sayDone(when)) {
            return WORK_DONE;
        }
        return PaymentWords.sayBefore(when) ? BEFORE_WORK : UNSAID;
    }
}
