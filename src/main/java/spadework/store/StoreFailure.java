// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.io.IOException;
import spadework.reason.SaidInFull;

/** A home of the office cannot do what is asked, and nothing was done. The message says what to do. */
public final class StoreFailure extends IOException implements SaidInFull {
    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Why {
        UNREACHABLE,
        PASSWORD,
        NO_TLS,
        NOT_TRUSTED,
        NO_DATABASE,
        NOT_SET_UP,
        TOO_OLD,
        TOO_NEW,
        NOT_ALLOWED,
        BUSY,
        SLOW,
        FULL,
        WENT_AWAY,
        UNSURE,
        REGISTER_CUT,
        NUMBER_TAKEN,
        OTHER
    }

    private final Why why;

    /** @param about what the sentence of the reason speaks of, in its order */
    public StoreFailure(Why why, Throwable cause, Object... about) {
        super(StoreText.of("failure." + why.name(), about), cause);
        this.why = why;
    }

    public Why why() {
        return why;
    }
}
