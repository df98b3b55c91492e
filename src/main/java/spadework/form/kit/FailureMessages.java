// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.io.IOException;
import spadework.reason.Reason;
import spadework.reason.SaidInFull;

/** Why work in the background came to nothing, in words of the window. */
public final class FailureMessages {
    private FailureMessages() {}

    public static String of(Exception why) {
        if (why instanceof SaidInFull) {
            return why.getMessage();
        }
        return Messages.of(why instanceof IOException ? "file.refused" : "step.broken", Reason.of(why));
    }
}
