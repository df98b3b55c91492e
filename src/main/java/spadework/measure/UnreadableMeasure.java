package spadework.measure;

/** Text that is not a measure. It says what is allowed and how to mend it; the reader of the file adds the place. */
public final class UnreadableMeasure extends Exception {
    private static final long serialVersionUID = 1L;

    private final String allowed;
    private final String mend;

    public UnreadableMeasure(String allowed, String mend) {
        super(allowed + "; " + mend);
        this.allowed = allowed;
        this.mend = mend;
    }

    /** What would have been accepted. */
    public String allowed() {
        return allowed;
    }

    /** What to write instead. */
    public String mend() {
        return mend;
    }
}
