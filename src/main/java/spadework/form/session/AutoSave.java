// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Draft;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.TypingPause;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;

/**
 * Reads and writes the job's file and its side file, one after the other and never on the window's thread. What is not
 * saved is kept aside a moment after each edit.
 */
public final class AutoSave {
    /** How long after an edit it is kept aside, in milliseconds; shorter where tests wait for it after each key. */
    static final int PAUSE = Integer.getInteger("spadework.keepAsideAfter", 1000);

    private final JobSession session;
    private final BackgroundTasks files;
    private final TypingPause pause;

    /** @param failed told on the window's thread when a file could not be read or written */
    public AutoSave(JobSession session, Consumer<Exception> failed) {
        this.session = session;
        files = new BackgroundTasks("files", session.work(), failed);
        pause = new TypingPause(PAUSE, session.work(), this::keep);
        session.onDraft(() -> {
            if (!session.history().isSaved()) {
                pause.start();
            }
        });
    }

    /** Keeps aside what is not saved, now. */
    public void keep() {
        pause.stop();
        if (!session.history().isSaved()) {
            JobFile file = session.file();
            Draft draft = session.draft();
            files.run(() -> keptAside(file, draft), kept -> {});
        }
    }

    private static JobFile keptAside(JobFile file, Draft draft) throws IOException {
        file.keepAside(draft.text());
        return file;
    }

    /** Saves to a file; the answer comes on the window's thread. */
    void save(JobFile file, Draft draft, Consumer<JobFile.Saved> answer) {
        pause.stop();
        JobsHome home = session.home();
        files.run(() -> home.save(file, draft.text()), answer);
    }

    /**
     * Saves to a file that is not there yet.
     *
     * @param answer given the file; nothing, where there is one already
     */
    void saveNew(Path path, Draft draft, Consumer<Optional<JobFile>> answer) {
        pause.stop();
        files.run(
                () -> {
                    JobFile file = JobFile.at(path);
                    return file.text().isEmpty() && file.save(draft.text()) == JobFile.Saved.DONE
                            ? Optional.of(file)
                            : Optional.empty();
                },
                answer);
    }

    /** Reads a file. */
    void read(Path path, Consumer<JobFile> read) {
        files.run(() -> JobFile.at(path), read);
    }

    /** Takes a side file away. */
    void drop(JobFile file) {
        pause.stop();
        files.run(
                () -> {
                    file.dropAside();
                    return file;
                },
                dropped -> {});
    }

    /** Looks whether the file was changed from elsewhere. */
    void look(JobFile file, Runnable changed, Runnable unchanged) {
        JobsHome home = session.home();
        files.run(() -> isChanged(home, file), is -> (is ? changed : unchanged).run());
    }

    private static boolean isChanged(JobsHome home, JobFile file) throws IOException {
        home.refresh(file.path());
        return file.isChangedOnDisk();
    }

    /**
     * Keeps aside what is not saved, once all is written, and goes on.
     *
     * @param refused told on the window's thread why it could not be kept; it does not go on then
     */
    public void keepLast(Runnable then, Consumer<Exception> refused) {
        pause.stop();
        if (session.history().isSaved()) {
            files.afterAll(then);
        } else {
            JobFile file = session.file();
            Draft draft = session.draft();
            files.run(() -> keptAside(file, draft), kept -> then.run(), refused);
        }
    }

    /** Ends it; what is not written by now is lost. */
    public void close() {
        pause.stop();
        files.stop();
    }
}
