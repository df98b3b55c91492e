// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

/** Inputs that do not make an answer: one is missing, one too many, or they contradict each other. */
public final class WrongInputs extends Exception {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String allowed;
    private final String fix;

    WrongInputs(String found, String allowed, String fix) {
        super("found " + found + "; allowed: " + allowed + "; fix: " + fix);
        this.found = found;
        this.allowed = allowed;
        this.fix = fix;
    }

    /** What was given. */
    public String found() {
        return found;
    }

    /** What would make an answer. */
    public String allowed() {
        return allowed;
    }

    /** What to give instead. */
    public String fix() {
        return fix;
    }
}
