// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/**
 * Waits in a process of its own until its first window is usable: shown, painted, with the keyboard in it, and nothing
 * left to do on its thread. Then says how long that took since the process was asked for, and ends it.
 */
final class WindowWatch {
    private static final String ASKED = "spadework.asked";
    private static final long PAUSE = 2;

    private WindowWatch() {}

    /** Begins to wait beside whoever opens the window. */
    static void begin() {
        Thread watch = new Thread(WindowWatch::watch, "watch");
        watch.setDaemon(true);
        watch.start();
    }

    private static void watch() {
        try {
            Optional<JFrame> frame = Optional.empty();
            while (frame.isEmpty()) {
                Thread.sleep(PAUSE);
                frame = Stream.of(Window.getWindows())
                        .filter(window -> window instanceof JFrame && window.isShowing())
                        .map(JFrame.class::cast)
                        .findFirst();
            }
            JFrame shown = frame.get();
            boolean[] here = new boolean[1];
            while (!here[0]) {
                Thread.sleep(PAUSE);
                SwingUtilities.invokeAndWait(() -> here[0] =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() != null);
            }
            SwingUtilities.invokeAndWait(() -> {
                JComponent root = shown.getRootPane();
                root.paintImmediately(0, 0, root.getWidth(), root.getHeight());
            });
            SwingUtilities.invokeAndWait(() -> {});
            System.out.println("usable after " + (System.currentTimeMillis() - Long.getLong(ASKED)) + " ms");
            System.exit(0);
        } catch (InterruptedException | InvocationTargetException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
