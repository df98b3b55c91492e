// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Files are read and written beside the window's thread; what comes of it is shown on it. */
class BackgroundTasksTest {
    private final List<String> lines = new ArrayList<>();
    private final WorkCounter counter = new WorkCounter();
    private final BackgroundTasks tasks = new BackgroundTasks("test", counter, why -> lines.add(why.getMessage()));

    private void settle() throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!counter.isIdle() && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        assertThat(counter.isIdle()).isTrue();
        SwingUtilities.invokeAndWait(() -> {});
    }

    @Test
    void taskIsRunElsewhereAndShownOnTheWindowsThread() throws Exception {
        SwingUtilities.invokeAndWait(() -> tasks.run(
                SwingUtilities::isEventDispatchThread,
                there -> lines.add(there + " " + SwingUtilities.isEventDispatchThread())));
        settle();
        assertThat(lines).containsExactly("false true");
    }

    @Test
    void ofTheSameQuestionOnlyTheLastIsShownButEveryTaskIsRun() throws Exception {
        CountDownLatch gate = new CountDownLatch(1);
        List<String> begun = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            tasks.latest("bids", () -> waited(gate, begun, "first"), lines::add);
            tasks.latest("bids", () -> waited(gate, begun, "second"), lines::add);
            tasks.latest("bids", () -> waited(gate, begun, "third"), lines::add);
            tasks.run(() -> waited(gate, begun, "write"), lines::add);
        });
        gate.countDown();
        settle();
        assertThat(lines).containsExactly("third", "write");
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
    void whyATaskCameToNothingIsTold() throws Exception {
        SwingUtilities.invokeAndWait(() -> tasks.run(
                () -> {
                    throw new IOException("no folder jobs");
                },
                nothing -> lines.add("shown")));
        settle();
        assertThat(lines).containsExactly("no folder jobs");
    }

    @Test
    void anErrorIsToldAndEndsTheWaiting() throws Exception {
        SwingUtilities.invokeAndWait(() -> tasks.run(
                () -> {
                    throw new OutOfMemoryError("a page too large");
                },
                nothing -> lines.add("shown")));
        settle();
        assertThat(lines).containsExactly("java.lang.OutOfMemoryError: a page too large");
    }

    @Test
    void tasksOfOneCounterAreIdleOnlyTogether() throws Exception {
        CountDownLatch gate = new CountDownLatch(1);
        BackgroundTasks others = new BackgroundTasks("others", counter, why -> lines.add(why.getMessage()));
        SwingUtilities.invokeAndWait(() -> {
            others.run(() -> waited(gate, new ArrayList<>(), "slow"), lines::add);
            tasks.run(() -> "quick", lines::add);
        });
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!onWindowsThread(() -> lines.contains("quick")) && System.nanoTime() < end) {
            Thread.sleep(5);
        }
        assertThat(onWindowsThread(() -> List.copyOf(lines))).containsExactly("quick");
        assertThat(counter.isIdle()).isFalse();
        gate.countDown();
        settle();
        assertThat(lines).containsExactly("quick", "slow");
    }

    private static <T> T onWindowsThread(Supplier<T> question) throws Exception {
        AtomicReference<T> answer = new AtomicReference<>();
        SwingUtilities.invokeAndWait(() -> answer.set(question.get()));
        return answer.get();
    }

    @Test
    void whatWasNotBegunWhenItEndsIsNoLongerWaitedFor() throws Exception {
        CountDownLatch gate = new CountDownLatch(1);
        List<String> begun = new ArrayList<>();
        SwingUtilities.invokeAndWait(() -> {
            tasks.latest("page", () -> waited(gate, begun, "first"), lines::add);
            tasks.run(() -> waited(gate, begun, "second"), lines::add);
            tasks.stop();
            tasks.run(() -> waited(gate, begun, "third"), lines::add);
        });
        gate.countDown();
        settle();
        assertThat(begun).doesNotContain("second", "third");
        assertThat(lines).isEmpty();
    }

    @Test
    void aPauseCountsUntilWhatFollowsItIsDone() throws Exception {
        TypingPause pause = new TypingPause(20, counter, () -> lines.add(counter.isIdle() ? "idle" : "busy"));
        SwingUtilities.invokeAndWait(() -> {
            pause.start();
            pause.restart();
            assertThat(counter.isIdle()).isFalse();
        });
        settle();
        assertThat(lines).containsExactly("busy");
        SwingUtilities.invokeAndWait(() -> {
            pause.start();
            pause.stop();
        });
        assertThat(counter.isIdle()).isTrue();
    }
}
