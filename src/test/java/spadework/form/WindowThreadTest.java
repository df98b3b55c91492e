// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JTextField;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.form.page.JobPage;

/**
 * No event keeps the window's thread at work for more than 50 ms, once the window stands. The work of the thread itself
 * is measured: a machine that is busy elsewhere does not count.
 */
@WindowTest
class WindowThreadTest {
    private static final long MOST = 50_000_000;

    @TempDir
    Path folder;

    /** Measures each event. */
    private static final class Watch extends EventQueue {
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private final List<String> slow = new ArrayList<>();
        private long longest;

        @Override
        protected void dispatchEvent(AWTEvent event) {
            long before = threads.getCurrentThreadCpuTime();
            super.dispatchEvent(event);
            long took = threads.getCurrentThreadCpuTime() - before;
            longest = Math.max(longest, took);
            if (took > MOST) {
                slow.add(took / 1_000_000 + " ms: " + event.paramString());
            }
        }

        void begin() {
            slow.clear();
            longest = 0;
        }

        void end() {
            pop();
        }
    }

    @Test
    void typingGoingAndSavingNeverBlockIt() throws IOException {
        try (OnScreen screen = OnScreen.job(SampleCopies.of("block-basement-to-swale", folder))) {
            FormRobot hand = new FormRobot(screen, Draft.empty());
            // Once through, so that what is loaded once is not counted.
            walk(screen, hand, "41");
            Watch watch = new Watch();
            GuiActionRunner.execute(
                    () -> Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch));
            watch.begin();
            walk(screen, hand, "42");
            GuiActionRunner.execute(watch::end);
            System.out.printf("longest event on the window's thread: %d ms%n", watch.longest / 1_000_000);
            assertThat(watch.slow).isEmpty();
        }
    }

    private static void walk(OnScreen screen, FormRobot hand, String side) {
        GuiActionRunner.execute(() -> screen.job().go(JobPage.START));
        screen.settle();
        hand.replace(
                screen.all(JTextField.class, f -> "/site/house/eastWest".equals(f.getName()) && f.isShowing())
                        .get(0),
                side);
        screen.settle();
        for (SidePane pane : SidePane.values()) {
            GuiActionRunner.execute(() -> screen.job().show(pane));
            screen.settle();
        }
        for (JobPage page : JobPage.values()) {
            GuiActionRunner.execute(() -> screen.job().go(page));
            screen.settle();
        }
        GuiActionRunner.execute(() -> screen.job().saving().save());
        screen.settle();
    }
}
