// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.office.Outcome;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;

/** Has the office take a step, one after the other and never on the window's thread; the job is then read anew. */
public final class StepRunner {
    private final JobSession session;
    private final JobSaving saving;
    private final Consumer<Exception> failed;
    private final BackgroundTasks tasks;

    /** @param failed told on the window's thread why a step came to nothing */
    public StepRunner(JobSession session, JobSaving saving, Consumer<String> failed) {
        this.session = session;
        this.saving = saving;
        this.failed = why -> failed.accept(FailureMessages.of(why));
        tasks = new BackgroundTasks("steps", session.work(), this.failed);
    }

    /** A step on a job's file. */
    public interface JobStep {
        Outcome take(Path job) throws IOException;
    }

    private record Taken(Outcome outcome, JobFile file, Optional<Draft> written) {}

    /** Work that leaves the job as it is; the answer comes on the window's thread. */
    public <T> void work(BackgroundTasks.Task<T> work, Consumer<T> then) {
        tasks.run(work, then);
    }

    /** Work that brings files into the job's folder, or the firm's; the job itself stays as it is. */
    public <T> void bring(BackgroundTasks.Task<T> work, Consumer<T> then) {
        JobsHome home = session.home();
        Path job = session.file().path();
        tasks.run(() -> home.step(job, work::run), then);
    }

    /**
     * Saves, takes a step, and shows the job as the step left it. All that is told is told on the window's thread.
     *
     * @param begun told when the job is saved and the step begins; never, where it cannot be saved
     * @param then told what came of it; not, where it broke off
     * @param ended told at the end in either case
     */
    public void take(JobStep step, Runnable begun, Consumer<Outcome> then, Runnable ended) {
        saving.whenSaved(saved -> {
            JobFile before = session.file();
            Path file = before.path();
            JobsHome home = session.home();
            saving.hold(true);
            begun.run();
            tasks.run(
                    () -> {
                        Outcome outcome = home.step(file, () -> taken(step, before));
                        JobFile now = JobFile.at(file);
                        return new Taken(outcome, now, now.text().flatMap(Draft::read));
                    },
                    taken -> {
                        try {
                            taken.written()
                                    .filter(written -> !written.equals(saved))
                                    .ifPresent(written ->
                                            session.agreed(taken.file(), written, withTyped(saved, written)));
                            then.accept(taken.outcome());
                        } finally {
                            end(ended);
                        }
                    },
                    why -> {
                        failed.accept(why);
                        end(ended);
                    });
        });
    }

    /** Nobody takes a step in a job that is not the one on his screen. */
    private static Outcome taken(JobStep step, JobFile before) throws IOException {
        if (before.isChangedOnDisk()) {
            throw new JobMoved(before.changedElsewhere());
        }
        return step.take(before.path());
    }

    private void end(Runnable ended) {
        saving.hold(false);
        ended.run();
    }

    /** What the step wrote, put into what was typed while it was under way. */
    private Draft withTyped(Draft saved, Draft written) {
        Draft draft = session.draft();
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

    /** Goes on when no step is under way. */
    public void afterAll(Runnable then) {
        tasks.afterAll(then);
    }

    /** Ends it; a step that is under way is no longer told of. */
    public void close() {
        tasks.stop();
    }
}
