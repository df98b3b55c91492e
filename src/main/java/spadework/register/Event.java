// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.Arrays;
import java.util.Optional;

/** What a line of the register tells. */
public enum Event {
    NUMBER_TAKEN("number taken", false),
    PROPOSAL_ISSUED("proposal issued", true),
    PROPOSAL_DECLINED("proposal declined", false),
    SIGNATURE_RECEIVED("signature received", false),
    CONTRACT_SIGNED("contract signed", true),
    CONTRACT_CANCELED("contract canceled", true),
    CHANGE_ORDER_ISSUED("change order issued", true),
    CHANGE_ORDER_ACCEPTED("change order accepted", false),
    CHANGE_ORDER_DECLINED("change order declined", false),
    FINAL_ACCOUNT_ISSUED("final account issued", true),
    CERTIFICATE_ISSUED("certificate issued", true),
    TRANSFERRED("warranty transferred", true),
    CARD_ISSUED("maintenance card issued", true),
    CLAIM("claim", false),
    INVOICE_ISSUED("invoice issued", true),
    PAYMENT_RECEIVED("payment received", true),
    LATE_NOTICE_ISSUED("late notice issued", true),
    RELEASE_ISSUED("release issued", true),
    NOTE("note", false);

    private final String words;
    private final boolean issues;

    Event(String words, boolean issues) {
        this.words = words;
        this.issues = issues;
    }

    /** As it stands in the register. */
    public String words() {
        return words;
    }

    /** Whether it puts out a document under a number, which may happen once for each number. */
    boolean issues() {
        return issues;
    }

    public static Optional<Event> of(String words) {
        return Arrays.stream(values())
                .filter(event -> event.words.equals(words))
                .findFirst();
    }
}
