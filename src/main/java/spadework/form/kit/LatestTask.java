package spadework.form.kit;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;

/**
 * Work in the background of which only the latest is wanted: a request that was not begun when the next one came is
 * never begun, and an answer that came too late is not shown.
 *
 * @param <Q> what is asked
 * @param <A> what is answered
 */
public final class LatestTask<Q, A> {
    private final ExecutorService thread;
    private final AtomicReference<Q> next = new AtomicReference<>();
    private final AtomicInteger underWay = new AtomicInteger();
    private final Function<Q, A> work;
    private final BiConsumer<Q, A> show;
    private final Consumer<RuntimeException> failed;

    /**
     * Makes a worker.
     *
     * @param work done on a thread of its own, one request after the other
     * @param show given the answer on the window's thread
     * @param failed told on the window's thread what the work threw
     */
    public LatestTask(String name, Function<Q, A> work, BiConsumer<Q, A> show, Consumer<RuntimeException> failed) {
        this.work = work;
        this.show = show;
        this.failed = failed;
        this.thread = Executors.newSingleThreadExecutor(task -> {
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            return made;
        });
    }

    public void ask(Q question) {
        next.set(question);
        underWay.incrementAndGet();
        thread.execute(this::answer);
    }

    /** Whether nothing is being worked at or waiting to be shown. */
    public boolean isIdle() {
        return underWay.get() == 0;
    }

    public void stop() {
        thread.shutdownNow();
    }

    private void answer() {
        Q question = next.getAndSet(null);
        if (question == null) {
            underWay.decrementAndGet();
            return;
        }
        try {
            A answer = work.apply(question);
            later(() -> {
                if (next.get() == null) {
                    show.accept(question, answer);
                }
            });
        } catch (RuntimeException thrown) {
            later(() -> failed.accept(thrown));
        }
    }

    private void later(Runnable shown) {
        SwingUtilities.invokeLater(() -> {
            try {
                shown.run();
            } finally {
                underWay.decrementAndGet();
            }
        });
    }
}
