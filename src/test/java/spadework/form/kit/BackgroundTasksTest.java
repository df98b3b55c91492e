package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Files are read and written beside the window's thread; what comes of it is shown on it. */
class BackgroundTasksTest {
    private final List<String> told = new ArrayList<>();
    private final BackgroundTasks errands = new BackgroundTasks("test", told::add, () -> {});

    private void settle() throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!errands.isIdle() && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        assertThat(errands.isIdle()).isTrue();
        SwingUtilities.invokeAndWait(() -> {});
    }

    @Test
    void errandIsRunElsewhereAndShownOnTheWindowsThread() throws Exception {
        SwingUtilities.invokeAndWait(() -> errands.run(
                SwingUtilities::isEventDispatchThread,
                there -> told.add(there + " " + SwingUtilities.isEventDispatchThread())));
        settle();
        assertThat(told).containsExactly("false true");
    }

    @Test
    void ofTheSameQuestionOnlyTheLastIsShownButEveryErrandIsRun() throws Exception {
        CountDownLatch gate = new CountDownLatch(1);
        List<String> begun = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            errands.look("bids", () -> waited(gate, begun, "first"), told::add);
            errands.look("bids", () -> waited(gate, begun, "second"), told::add);
            errands.look("bids", () -> waited(gate, begun, "third"), told::add);
            errands.run(() -> waited(gate, begun, "write"), told::add);
        });
        gate.countDown();
        settle();
        assertThat(told).containsExactly("third", "write");
        assertThat(begun).doesNotContain("second").endsWith("third", "write");
    }

    private static String waited(CountDownLatch gate, List<String> begun, String name) throws IOException {
        begun.add(name);
        try {
            gate.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        return name;
    }

    @Test
    void whyAnErrandCameToNothingIsTold() throws Exception {
        SwingUtilities.invokeAndWait(() -> errands.run(
                () -> {
                    throw new IOException("no folder jobs");
                },
                nothing -> told.add("shown")));
        settle();
        assertThat(told).containsExactly("no folder jobs");
    }
}
