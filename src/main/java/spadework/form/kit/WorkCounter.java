// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.concurrent.atomic.AtomicInteger;

/**
 * How much of a window's work is not done yet, in one count: what its background tasks do, what of theirs is still to
 * be shown, and what waits for its moment. At nothing, the window stands still until somebody does something.
 */
public final class WorkCounter {
    private final AtomicInteger underWay = new AtomicInteger();
    private final Runnable changed;

    public WorkCounter() {
        this(() -> {});
    }

    /** @param changed called on the window's thread when work has begun or is done */
    public WorkCounter(Runnable changed) {
        this.changed = changed;
    }

    /** Whether nothing is being done, waiting to be done, or waiting to be shown. */
    public boolean isIdle() {
        return underWay.get() == 0;
    }

    /** Something has begun; on the window's thread. */
    void begin() {
        underWay.incrementAndGet();
        changed.run();
    }

    /** Something is done and shown; on the window's thread. */
    void end() {
        underWay.decrementAndGet();
        changed.run();
    }
}
