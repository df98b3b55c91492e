// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Draft;
import spadework.draft.DraftMerge;
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
        save(saved -> {}, this::save);
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
            autoSave.look(session.file(), () -> changed(() -> {}), () -> then.accept(draft));
        } else {
            save(then, () -> {});
        }
    }

    /** Goes on when the job has a folder of its own; a new one is saved for that. */
    void whenPlaced(Consumer<Path> then) {
        if (jobs.isEmpty()) {
            then.accept(session.file().path());
        } else {
            save(saved -> then.accept(session.file().path()), () -> {});
        }
    }

    /** @param again done where somebody else wrote the file first, and both are put together */
    private void save(Consumer<Draft> then, Runnable again) {
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
                    save(then, again);
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
                changed(again);
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
            autoSave.look(session.file(), this::changed, () -> {});
        }
    }

    /** Takes up what somebody else wrote. */
    public void changed() {
        changed(() -> {});
    }

    /**
     * Somebody else wrote the file: what only one side changed is put together; of what both changed it is asked.
     *
     * @param then done when both are put together
     */
    private void changed(Runnable then) {
        JobFile mine = session.file();
        autoSave.read(mine.path(), theirs -> {
            if (mine == session.file() && !held) {
                meet(mine, theirs, then);
            }
        });
    }

    private void meet(JobFile mine, JobFile theirs, Runnable then) {
        Optional<Draft> before = mine.text().flatMap(Draft::read);
        Optional<Draft> written = theirs.text().flatMap(Draft::read);
        String what = mine.changedElsewhere();
        if (before.isEmpty() || written.isEmpty()) {
            ask(
                    Messages.of("changed.said", mine.path(), what),
                    () -> notice.say(Messages.of("changed.unreadable", mine.path())),
                    () -> {
                        session.goesOver(theirs);
                        save();
                    });
            return;
        }
        DraftMerge.Merged merged = DraftMerge.of(before.get(), session.draft(), written.get());
        if (merged.clashes().isEmpty()) {
            take(theirs, written.get(), merged.draft());
            notice.say(Messages.of("changed.taken", what));
            then.run();
            return;
        }
        ask(
                Messages.of("changed.both", BothChanged.described(merged.clashes())),
                () -> take(theirs, written.get(), onto(before.get(), written.get(), false)),
                () -> {
                    take(theirs, written.get(), onto(before.get(), written.get(), true));
                    save();
                });
    }

    /** What was typed until now, put together with what somebody else wrote. */
    private Draft onto(Draft before, Draft written, boolean mineStands) {
        Draft mine = session.draft();
        return (mineStands ? DraftMerge.of(before, written, mine) : DraftMerge.of(before, mine, written)).draft();
    }

    private void take(JobFile theirs, Draft written, Draft draft) {
        session.merged(theirs, written, draft);
        if (session.history().isSaved()) {
            autoSave.drop(theirs);
        }
    }

    /** Asks, unless the same is asked already. */
    private void ask(String words, Runnable take, Runnable keep) {
        if (!notice.said().equals(words)) {
            notice.say(words, new NoticeBar.Answer("changed.take", take), new NoticeBar.Answer("changed.keep", keep));
        }
    }
}
