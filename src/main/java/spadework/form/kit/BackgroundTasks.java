// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Work beside the window's thread, one task after the other on a thread of its own; what comes of it is shown on the
 * window's thread, in the order in which it was asked for. All who have the same counter count as one.
 */
public final class BackgroundTasks {
    private final ExecutorService thread;
    private final Map<String, Integer> turns = new ConcurrentHashMap<>();
    private final WorkCounter counter;
    private final Consumer<Exception> failed;

    /** Something to be done; it sees nothing that the window's thread changes. */
    public interface Task<T> {
        T run() throws IOException;
    }

    /**
     * Makes a thread.
     *
     * @param counter told of every task until it is shown
     * @param failed told on the window's thread why a task came to nothing
     */
    public BackgroundTasks(String name, WorkCounter counter, Consumer<Exception> failed) {
        this.counter = counter;
        this.failed = failed;
        this.thread = Executors.newSingleThreadExecutor(task -> {
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            return made;
        });
    }

    /** Does something, whatever is asked for afterwards. */
    public <T> void run(Task<T> task, Consumer<T> show) {
        run(task, show, failed);
    }

    /** The same, where somebody else is told why it came to nothing. */
    public <T> void run(Task<T> task, Consumer<T> show, Consumer<Exception> refused) {
        begin(() -> done(task, show, refused, () -> true));
    }

    /** Goes on when all that was asked for is done and shown. */
    public void afterAll(Runnable then) {
        begin(() -> later(then));
    }

    /**
     * Looks something up, unless the same is asked for again meanwhile: what was asked before is then not shown, and
     * not begun if it can be helped.
     */
    public <T> void latest(String what, Task<T> task, Consumer<T> show) {
        int turn = turns.merge(what, 1, Integer::sum);
        BooleanSupplier wanted = () -> turns.getOrDefault(what, 0) == turn;
        begin(() -> {
            if (wanted.getAsBoolean()) {
                done(task, show, failed, wanted);
            } else {
                later(() -> {});
            }
        });
    }

    /** Ends it: what was not begun comes to nothing, what was only looked up is not shown. */
    public void stop() {
        turns.clear();
        thread.shutdownNow().forEach(dropped -> counter.end());
    }

    private void begin(Runnable task) {
        if (!thread.isShutdown()) {
            counter.begin();
            thread.execute(task);
        }
    }

    private <T> void done(Task<T> task, Consumer<T> show, Consumer<Exception> refused, BooleanSupplier wanted) {
        Runnable shown;
        try {
            T result = task.run();
            shown = () -> show.accept(result);
        } catch (UncheckedIOException unchecked) {
            shown = () -> refused.accept(unchecked.getCause());
        } catch (IOException | RuntimeException broken) {
            shown = () -> refused.accept(broken);
        } catch (Error broken) {
            // Out of memory over a page, say: told like any other failure, or the window would wait forever.
            shown = () -> refused.accept(new IllegalStateException(broken.toString(), broken));
        }
        Runnable then = shown;
        later(() -> {
            if (wanted.getAsBoolean()) {
                then.run();
            }
        });
    }

    private void later(Runnable shown) {
        SwingUtilities.invokeLater(() -> {
            try {
                shown.run();
            } finally {
                counter.end();
            }
        });
    }
}
