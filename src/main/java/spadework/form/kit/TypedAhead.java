// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.ArrayDeque;
import java.util.Queue;
import javax.swing.Timer;

/**
 * Holds keys back while the keyboard is on its way to a cell of a list or back from it. The toolkit keeps only those
 * that were pressed after it was asked; what a fast hand typed ahead of a busy window goes to the cell that was just
 * put away, or nowhere. All of it runs on the window's thread.
 */
public final class TypedAhead extends EventQueue {
    /** How long keys wait for a control that never gets the keyboard, in milliseconds. */
    private static final int LONGEST = 500;

    private static TypedAhead installed;

    private final Queue<KeyEvent> held = new ArrayDeque<>();
    private final Timer late = new Timer(LONGEST, event -> arrived());
    private Component awaited;

    private TypedAhead() {
        late.setRepeats(false);
    }

    /** Stands before the toolkit's own queue from now on. */
    public static void install() {
        if (installed == null) {
            installed = new TypedAhead();
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(installed);
        }
    }

    /** The keyboard was asked for this control: keys wait until it has it. */
    public static void await(Component next) {
        if (installed != null) {
            installed.awaited = next;
            installed.late.restart();
        }
    }

    /** Whether keys wait for this control. */
    public static boolean isAwaited(Component control) {
        return installed != null && control != null && installed.awaited == control;
    }

    /** Keys wait no longer. */
    public static void arrived() {
        if (installed != null) {
            installed.awaited = null;
            installed.late.stop();
        }
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        release();
        if (event instanceof KeyEvent key && (!held.isEmpty() || isUnderWay())) {
            held.add(key);
        } else {
            super.dispatchEvent(event);
            release();
        }
    }

    private void release() {
        while (!held.isEmpty() && !isUnderWay()) {
            super.dispatchEvent(held.remove());
        }
    }

    private boolean isUnderWay() {
        if (awaited != null && (awaited.isFocusOwner() || !awaited.isShowing())) {
            arrived();
        }
        return awaited != null;
    }
}
