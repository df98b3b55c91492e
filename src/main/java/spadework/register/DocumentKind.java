package spadework.register;

/** A kind of document that has numbers of its own, counted from 1 within a job. */
public enum DocumentKind {
    PROPOSAL("P", "proposal", Event.PROPOSAL_ISSUED),
    CONTRACT("A", "contract", Event.CONTRACT_SIGNED),
    CHANGE_ORDER("C", "change order", Event.CHANGE_ORDER_ISSUED),
    FINAL_ACCOUNT("F", "final account", Event.FINAL_ACCOUNT_ISSUED),
    CERTIFICATE("W", "warranty certificate", Event.CERTIFICATE_ISSUED),
    CARD("M", "maintenance card", Event.CARD_ISSUED),
    CLAIM("CL", "claim", Event.CLAIM),
    CANCELLATION("X", "acknowledgment of a cancellation", Event.CONTRACT_CANCELED);

    private final String letters;
    private final String words;
    private final Event issued;

    DocumentKind(String letters, String words, Event issued) {
        this.letters = letters;
        this.words = words;
        this.issued = issued;
    }

    /** What stands before the count, as {@code W} in {@code 2026-014-W1}. */
    public String letters() {
        return letters;
    }

    /** As a person says it. */
    public String words() {
        return words;
    }

    /** What the register calls it when one is issued. */
    public Event issued() {
        return issued;
    }
}
