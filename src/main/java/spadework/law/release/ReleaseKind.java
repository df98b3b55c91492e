// SPDX-License-Identifier: Apache-2.0
package spadework.law.release;

import java.util.Locale;

/** The four releases of a claim on the house that statutes tell apart (Cal. Civ. Code 8132 to 8138). */
public enum ReleaseKind {
    /** For a payment on the way; it takes effect when the money has come. */
    CONDITIONAL_PROGRESS,
    /** For a payment on the way that has come. */
    UNCONDITIONAL_PROGRESS,
    /** For the last payment; it takes effect when the money has come. */
    CONDITIONAL_FINAL,
    /** For the last payment that has come. */
    UNCONDITIONAL_FINAL;

    /** The kind for a bill. */
    public static ReleaseKind of(boolean last, boolean paid) {
        if (last) {
            return paid ? UNCONDITIONAL_FINAL : CONDITIONAL_FINAL;
        }
        return paid ? UNCONDITIONAL_PROGRESS : CONDITIONAL_PROGRESS;
    }

    public boolean isConditional() {
        return this == CONDITIONAL_PROGRESS || this == CONDITIONAL_FINAL;
    }

    public boolean isFinal() {
        return this == CONDITIONAL_FINAL || this == UNCONDITIONAL_FINAL;
    }

    /** As the rules name it, {@code conditional final}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
