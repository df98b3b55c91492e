// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

/** Text that is not a measure. It says what is allowed and how to fix it; the reader of the file adds the place. */
public final class UnreadableMeasure extends Exception {
    private static final long serialVersionUID = 1L;

    private final String allowed;
    private final String fix;

    public UnreadableMeasure(String allowed, String fix) {
        super(allowed + "; " + fix);
        this.allowed = allowed;
        this.fix = fix;
    }

    /** What would have been accepted. */
    public String allowed() {
        return allowed;
    }

    /** What to write instead. */
    public String fix() {
        return fix;
    }
}
