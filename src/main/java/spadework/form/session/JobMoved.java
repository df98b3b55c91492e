// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.io.IOException;
import spadework.form.kit.Messages;
import spadework.reason.SaidInFull;

/** A step was to be taken in a job that somebody else changed; it was not taken. */
final class JobMoved extends IOException implements SaidInFull {
    private static final long serialVersionUID = 1L;

    JobMoved(String what) {
        super(Messages.of("step.moved", what));
    }
}
