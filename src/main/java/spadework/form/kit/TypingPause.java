// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import javax.swing.Timer;

/** A moment between a keystroke and what it leads to; it counts as work that is not done yet. */
public final class TypingPause {
    private final WorkCounter counter;
    private final Timer timer;
    /** Also once the timer has run out, while what follows still stands in the queue of events. */
    private boolean waiting;

    /**
     * Makes a pause that is not running.
     *
     * @param milliseconds how long it is
     * @param then what follows it, on the window's thread
     */
    public TypingPause(int milliseconds, WorkCounter counter, Runnable then) {
        this.counter = counter;
        timer = new Timer(milliseconds, event -> over(then));
        timer.setRepeats(false);
    }

    private void over(Runnable then) {
        if (waiting) {
            waiting = false;
            try {
                then.run();
            } finally {
                counter.end();
            }
        }
    }

    /** Begins it, unless it has begun. */
    public void start() {
        if (!waiting) {
            waiting = true;
            counter.begin();
            timer.start();
        }
    }

    /** Begins it anew. */
    public void restart() {
        start();
        timer.restart();
    }

    /** Ends it without what would follow. */
    public void stop() {
        if (waiting) {
            waiting = false;
            timer.stop();
            counter.end();
        }
    }
}
