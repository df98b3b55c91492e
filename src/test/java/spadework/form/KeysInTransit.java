// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.assertj.swing.core.Robot;

/**
 * Keys that a robot pressed and that an X server has not yet handed over. The server keeps their order, so when a key
 * that nothing uses comes back, all keys before it have been worked off.
 */
final class KeysInTransit implements KeyEventDispatcher, AutoCloseable {
    /** Neither a letter nor a shortcut, and kept from every component. */
    private static final int LAST = KeyEvent.VK_PAUSE;

    /** A window that has no keyboard gets no key: then nothing is in transit to it. */
    private static final int SECONDS_WITHOUT_KEYBOARD = 2;

    private final Robot robot;
    private final Semaphore come = new Semaphore(0);

    KeysInTransit(Robot robot) {
        this.robot = robot;
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(this);
    }

    /** Waits until all keys pressed so far were worked off. */
    void await() {
        come.drainPermits();
        robot.pressAndReleaseKey(LAST);
        try {
            if (!come.tryAcquire(SECONDS_WITHOUT_KEYBOARD, TimeUnit.SECONDS)) {
                robot.waitForIdle();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        boolean isLast = event.getKeyCode() == LAST;
        if (isLast && event.getID() == KeyEvent.KEY_RELEASED) {
            come.release();
        }
        return isLast;
    }

    @Override
    public void close() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(this);
    }
}
