package spadework.form.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.kit.Messages;
import spadework.office.Outcome;
import spadework.office.files.JobFile;

/** Has the office take a step, one after the other and never on the window's thread; the job is then read anew. */
public final class StepRunner {
    private final JobSession desk;
    private final JobSaving saving;
    private final Consumer<String> failed;
    private final AtomicInteger underWay = new AtomicInteger();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread made = new Thread(task, "stepping");
        made.setDaemon(true);
        return made;
    });

    /** @param failed told on the window's thread why a step came to nothing */
    public StepRunner(JobSession desk, JobSaving saving, Consumer<String> failed) {
        this.desk = desk;
        this.saving = saving;
        this.failed = failed;
    }

    /** What the office is asked for. */
    public interface Work<T> {
        T done() throws IOException;
    }

    /** A step on a job's file. */
    public interface Step {
        Outcome take(Path job) throws IOException;
    }

    private record Taken(Outcome outcome, JobFile file, Optional<Draft> written) {}

    /** Work that leaves the job as it is; the answer comes on the window's thread. */
    public <T> void work(Work<T> work, Consumer<T> then) {
        work(work, then, () -> {});
    }

    private <T> void work(Work<T> work, Consumer<T> then, Runnable always) {
        underWay.incrementAndGet();
        thread.execute(() -> {
            Runnable shown;
            try {
                T made = work.done();
                shown = () -> then.accept(made);
            } catch (IOException refused) {
                shown = () -> failed.accept(Messages.of("file.refused", refused.getMessage()));
            } catch (UncheckedIOException refused) {
                shown = () -> failed.accept(
                        Messages.of("file.refused", refused.getCause().getMessage()));
            } catch (RuntimeException broken) {
                shown = () -> failed.accept(Messages.of("step.broken", broken.getMessage()));
            }
            Runnable answer = shown;
            SwingUtilities.invokeLater(() -> {
                try {
                    answer.run();
                } finally {
                    always.run();
                    underWay.decrementAndGet();
                }
            });
        });
    }

    /**
     * Saves, takes a step, and shows the job as the step left it. All that is told is told on the window's thread.
     *
     * @param begun told when the job is saved and the step begins; never, where it cannot be saved
     * @param then told what came of it; not, where it broke off
     * @param ended told at the end in either case
     */
    public void take(Step step, Runnable begun, Consumer<Outcome> then, Runnable ended) {
        saving.whenSaved(saved -> {
            Path file = desk.file().path();
            saving.hold(true);
            begun.run();
            work(
                    () -> {
                        Outcome outcome = step.take(file);
                        JobFile now = JobFile.at(file);
                        return new Taken(outcome, now, now.text().flatMap(Draft::read));
                    },
                    taken -> {
                        taken.written()
                                .filter(written -> !written.equals(saved))
                                .ifPresent(written -> desk.agreed(taken.file(), written, withTyped(saved, written)));
                        then.accept(taken.outcome());
                    },
                    () -> {
                        saving.hold(false);
                        ended.run();
                    });
        });
    }

    /** What the step wrote, put into what was typed while it was under way. */
    private Draft withTyped(Draft saved, Draft written) {
        Draft draft = desk.draft();
        if (draft.equals(saved)) {
            return written;
        }
        for (String place : new String[] {"/accepted", "/closed"}) {
            draft = copied(written, place, draft, place);
        }
        for (int i = 0; i < written.rows("/changes"); i++) {
            String from = Pointer.of("/changes", i);
            for (int j = 0; j < draft.rows("/changes"); j++) {
                String to = Pointer.of("/changes", j);
                if (written.shown(from + "/number").equals(draft.shown(to + "/number"))) {
                    draft = copied(written, from + "/state", draft, to + "/state");
                    draft = copied(written, from + "/decision", draft, to + "/decision");
                }
            }
        }
        return draft;
    }

    private static Draft copied(Draft written, String from, Draft draft, String to) {
        return written.at(from).map(value -> draft.with(to, value)).orElse(draft);
    }

    public boolean isIdle() {
        return underWay.get() == 0;
    }

    /** Lets a step that is under way end, and takes no further one. */
    public void close() {
        thread.shutdown();
        try {
            thread.awaitTermination(20, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
