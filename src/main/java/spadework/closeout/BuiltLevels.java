// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import spadework.job.BuiltPipe;
import spadework.job.Job;
import spadework.job.TeeAt;

/** Whether the levels of a pipe were written down: at both ends, and at the tee of a drain that falls to its middle. */
public final class BuiltLevels {
    private BuiltLevels() {}

    public static boolean areRecorded(Job agreed, BuiltPipe pipe) {
        boolean inTheMiddle = agreed.water().drains().stream()
                .anyMatch(drain -> drain.label().equals(pipe.label()) && drain.teeAt() == TeeAt.MIDDLE);
        return pipe.startInvert().isPresent()
                && pipe.endInvert().isPresent()
                && (!inTheMiddle || pipe.teeInvert().isPresent());
    }
}
