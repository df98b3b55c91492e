package spadework.form.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import spadework.office.files.JobFile;

/**
 * Writes the job's file and its side file, one after the other and never on the window's thread. What is not saved is
 * kept aside a moment after each edit.
 */
public final class AutoSave {
    /** How long after an edit it is kept aside, in milliseconds. */
    static final int PAUSE = 1000;

    private final JobSession desk;
    private final Consumer<IOException> failed;
    private final AtomicInteger underWay = new AtomicInteger();
    private final ExecutorService writing = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "keeping");
        thread.setDaemon(true);
        return thread;
    });
    private final Timer pause = new Timer(PAUSE, event -> keep());

    /** @param failed told on the window's thread when a file could not be read or written */
    public AutoSave(JobSession desk, Consumer<IOException> failed) {
        this.desk = desk;
        this.failed = failed;
        pause.setRepeats(false);
        desk.onDraft(() -> {
            if (!desk.history().isSaved() && !pause.isRunning()) {
                pause.start();
            }
        });
    }

    private interface Step {
        Runnable run() throws IOException;
    }

    /** Keeps aside what is not saved, now. */
    void keep() {
        pause.stop();
        if (!desk.history().isSaved()) {
            JobFile file = desk.file();
            String text = desk.draft().text();
            write(() -> {
                file.keepAside(text);
                return () -> {};
            });
        }
    }

    /** Saves to a file; the answer comes on the window's thread. */
    void save(JobFile file, String text, Consumer<JobFile.Saved> answer) {
        pause.stop();
        write(() -> {
            JobFile.Saved saved = file.save(text);
            return () -> answer.accept(saved);
        });
    }

    /** Saves over whatever the file says now. */
    void saveOver(JobFile file, String text, Runnable done) {
        pause.stop();
        write(() -> {
            file.saveOver(text);
            return done;
        });
    }

    /** Takes a side file away. */
    void drop(JobFile file) {
        pause.stop();
        write(() -> {
            file.dropAside();
            return () -> {};
        });
    }

    /** Looks whether the file was changed from elsewhere. */
    void look(JobFile file, Runnable changed, Runnable unchanged) {
        write(() -> file.isChangedOnDisk() ? changed : unchanged);
    }

    private void write(Step step) {
        underWay.incrementAndGet();
        writing.execute(() -> {
            Runnable then;
            try {
                then = step.run();
            } catch (IOException refused) {
                then = () -> failed.accept(refused);
            } catch (UncheckedIOException refused) {
                then = () -> failed.accept(refused.getCause());
            }
            Runnable shown = then;
            SwingUtilities.invokeLater(() -> {
                try {
                    shown.run();
                } finally {
                    underWay.decrementAndGet();
                }
            });
        });
    }

    public boolean isIdle() {
        return underWay.get() == 0 && !pause.isRunning();
    }

    /** Waits until all is written, then ends. */
    public void close() {
        keep();
        writing.shutdown();
        try {
            writing.awaitTermination(10, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
