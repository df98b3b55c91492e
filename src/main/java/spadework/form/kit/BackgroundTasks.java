package spadework.form.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Work with files, one errand after the other on a thread of its own; what comes of it is shown on the window's thread.
 * What was looked up for a question that was asked again since is not shown, and not begun if it can be helped.
 */
public final class BackgroundTasks {
    private final ExecutorService thread;
    private final Map<String, Integer> turns = new ConcurrentHashMap<>();
    private final AtomicInteger underWay = new AtomicInteger();
    private final Consumer<String> failed;
    private final Runnable moved;

    /** Something to be done. */
    public interface Errand<T> {
        T run() throws IOException;
    }

    /**
     * Makes a runner.
     *
     * @param failed told on the window's thread why an errand came to nothing
     * @param moved called on the window's thread when one is begun or done
     */
    public BackgroundTasks(String name, Consumer<String> failed, Runnable moved) {
        this.failed = failed;
        this.moved = moved;
        this.thread = Executors.newSingleThreadExecutor(task -> {
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            return made;
        });
    }

    /** Does something, whatever is asked for afterwards. */
    public <T> void run(Errand<T> errand, Consumer<T> show) {
        begin(() -> done(errand, show, () -> true));
    }

    /** Looks something up, unless the same is asked for again meanwhile. */
    public <T> void look(String what, Errand<T> errand, Consumer<T> show) {
        int turn = turns.merge(what, 1, Integer::sum);
        begin(() -> {
            if (turns.get(what) == turn) {
                done(errand, show, () -> turns.get(what) == turn);
            } else {
                later(() -> {});
            }
        });
    }

    /** Whether nothing is being done or waiting to be shown. */
    public boolean isIdle() {
        return underWay.get() == 0;
    }

    /** Ends it; what was only looked up comes to nothing. */
    public void stop() {
        thread.shutdownNow();
    }

    /** Waits until all is done, then ends. */
    public void finish() {
        thread.shutdown();
        try {
            thread.awaitTermination(10, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private interface Asked {
        boolean isStill();
    }

    private void begin(Runnable task) {
        underWay.incrementAndGet();
        thread.execute(task);
        moved.run();
    }

    private <T> void done(Errand<T> errand, Consumer<T> show, Asked asked) {
        try {
            T result = errand.run();
            later(() -> {
                if (asked.isStill()) {
                    show.accept(result);
                }
            });
        } catch (IOException refused) {
            later(() -> failed.accept(refused.getMessage()));
        } catch (UncheckedIOException refused) {
            later(() -> failed.accept(refused.getCause().getMessage()));
        } catch (RuntimeException broken) {
            later(() -> failed.accept(broken.toString()));
        }
    }

    private void later(Runnable shown) {
        SwingUtilities.invokeLater(() -> {
            try {
                shown.run();
            } finally {
                underWay.decrementAndGet();
                moved.run();
            }
        });
    }
}
