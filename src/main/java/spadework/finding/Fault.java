package spadework.finding;

/**
 * Input that cannot be used: one clear message a fault.
 *
 * @param place where it stands
 * @param found what was found there
 * @param allowed what is allowed
 * @param mend how to mend it
 */
public record Fault(Place place, String found, String allowed, String mend) {

    /** The whole message on one line. */
    public String text() {
        return place.text() + ": found " + found + "; allowed: " + allowed + "; mend: " + mend;
    }
}
