// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Draft;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.office.files.JobFile;

/** Saves, recovers, and never writes over what somebody else wrote without being told to. */
public final class JobSaving {
    private final JobSession session;
    private final AutoSave autoSave;
    private final NoticeBar notice;
    private final Consumer<String> reveal;
    private Optional<Path> jobs = Optional.empty();
    private boolean held;

    public JobSaving(JobSession session, AutoSave autoSave, NoticeBar notice, Consumer<String> reveal) {
        this.session = session;
        this.autoSave = autoSave;
        this.notice = notice;
        this.reveal = reveal;
    }

    /** The job has no folder of its own yet: its number makes one among the jobs. */
    public void isNewIn(Path folder) {
        jobs = Optional.of(folder);
    }

    /** Offers what a crash, or leaving without saving, kept from the file. */
    public void offer(String unsaved) {
        Optional<Draft> draft = Draft.read(unsaved);
        JobFile file = session.file();
        if (draft.isPresent() && !draft.get().equals(session.draft())) {
            notice.say(
                    Messages.of("recover.said"),
                    new NoticeBar.Answer("recover.take", () -> session.edit(draft.get())),
                    new NoticeBar.Answer("recover.leave", () -> autoSave.drop(file)));
        }
    }

    /** While a step writes the file nobody else does. */
    void hold(boolean now) {
        held = now;
    }

    /** Saves the draft as it stands. */
    public void save() {
        save(saved -> {});
    }

    /**
     * Sees to it that the file says what the window says, and then goes on. Where the file was changed from elsewhere,
     * or cannot be written, that is told instead.
     *
     * @param then given the draft that the file has
     */
    void whenSaved(Consumer<Draft> then) {
        Draft draft = session.draft();
        if (!held && jobs.isEmpty() && session.history().isSaved()) {
            autoSave.look(session.file(), this::changed, () -> then.accept(draft));
        } else {
            save(then);
        }
    }

    /** Goes on when the job has a folder of its own; a new one is saved for that. */
    void whenPlaced(Consumer<Path> then) {
        if (jobs.isEmpty()) {
            then.accept(session.file().path());
        } else {
            save(saved -> then.accept(session.file().path()));
        }
    }

    private void save(Consumer<Draft> then) {
        if (held) {
            notice.say(Messages.of("save.held"));
            return;
        }
        if (jobs.isPresent() && session.draft().shown("/number").isBlank()) {
            notice.say(Messages.of("save.number"));
            reveal.accept("/number");
            return;
        }
        JobFile old = session.file();
        Draft draft = session.draft();
        if (jobs.isPresent()) {
            Path target = JobFile.place(jobs.get(), draft.shown("/number"));
            autoSave.saveNew(target, draft, made -> {
                if (made.isPresent()) {
                    autoSave.drop(old);
                    jobs = Optional.empty();
                    done(made.get(), draft);
                    then.accept(draft);
                } else if (jobs.isEmpty()) {
                    // Asked for twice: the first time made the folder.
                    save(then);
                } else {
                    notice.say(Messages.of("save.taken", target));
                }
            });
            return;
        }
        autoSave.save(old, draft, saved -> {
            if (saved == JobFile.Saved.DONE) {
                done(old, draft);
                then.accept(draft);
            } else {
                changed();
            }
        });
    }

    private void done(JobFile target, Draft draft) {
        if (draft.equals(session.draft())) {
            session.saved(target);
        } else {
            session.savedAs(target, draft);
        }
    }

    /** Looks whether somebody else wrote the file. */
    public void look() {
        if (jobs.isEmpty() && !held) {
            JobFile file = session.file();
            autoSave.look(
                    file,
                    () -> {
                        if (!held && file == session.file()) {
                            changed();
                        }
                    },
                    () -> {});
        }
    }

    private void changed() {
        JobFile file = session.file();
        notice.say(
                Messages.of("changed.said", file.path(), file.changedElsewhere()),
                new NoticeBar.Answer("changed.take", () -> takeTheirs(file.path())),
                new NoticeBar.Answer("changed.keep", () -> {
                    Draft draft = session.draft();
                    autoSave.saveOver(file, draft, saved -> {
                        if (saved == JobFile.Saved.DONE) {
                            session.savedAs(file, draft);
                        } else {
                            changed();
                        }
                    });
                }));
    }

    private void takeTheirs(Path path) {
        autoSave.read(path, now -> {
            Optional<Draft> theirs = now.text().flatMap(Draft::read);
            if (theirs.isPresent()) {
                session.reload(now, theirs.get());
                autoSave.drop(now);
            } else {
                notice.say(Messages.of("changed.unreadable", path));
            }
        });
    }
}
