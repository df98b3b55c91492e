// SPDX-License-Identifier: Apache-2.0
package spadework.register;

/** A kind of document that has numbers of its own, counted from 1 within a job. */
public enum DocumentKind {
    PROPOSAL("P", Event.PROPOSAL_ISSUED),
    CONTRACT("A", Event.CONTRACT_SIGNED),
    CHANGE_ORDER("C", Event.CHANGE_ORDER_ISSUED),
    FINAL_ACCOUNT("F", Event.FINAL_ACCOUNT_ISSUED),
    CERTIFICATE("W", Event.CERTIFICATE_ISSUED),
    CARD("M", Event.CARD_ISSUED),
    CLAIM("CL", Event.CLAIM),
    CANCELLATION("X", Event.CONTRACT_CANCELED),
    INVOICE("I", Event.INVOICE_ISSUED),
    RECEIPT("R", Event.PAYMENT_RECEIVED),
    LATE_NOTICE("N", Event.LATE_NOTICE_ISSUED),
    RELEASE("L", Event.RELEASE_ISSUED);

    private final String letters;
    private final Event issued;

    DocumentKind(String letters, Event issued) {
        this.letters = letters;
        this.issued = issued;
    }

    /** What stands before the count, as {@code W} in {@code 2026-014-W1}. */
    public String letters() {
        return letters;
    }

    /** What the register calls it when one is issued. */
    public Event issued() {
        return issued;
    }
}
