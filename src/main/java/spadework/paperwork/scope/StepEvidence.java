// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

/**
 * What is written down or kept at a step.
 *
 * @param kind {@code photo}, {@code done}, {@code initials} or {@code figure}
 * @param label what it is, as {@code First coat, mil}
 * @param places how many figures are written
 */
public record StepEvidence(String kind, String label, int places) {
    /** A photo. */
    static StepEvidence photo(String label) {
        return new StepEvidence("photo", label, 1);
    }

    /** Something to tick off. */
    static StepEvidence done(String what) {
        return new StepEvidence("done", what, 1);
    }

    /** Initials and date of somebody. */
    static StepEvidence initials(String who) {
        return new StepEvidence("initials", who, 1);
    }

    /** Figures to be written. */
    static StepEvidence figures(String label, int places) {
        return new StepEvidence("figure", label, places);
    }
}
