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
    private final JobSession desk;
    private final AutoSave keeper;
    private final NoticeBar notice;
    private final Consumer<String> reveal;
    private Optional<Path> jobs = Optional.empty();
    private boolean held;

    public JobSaving(JobSession desk, AutoSave keeper, NoticeBar notice, Consumer<String> reveal) {
        this.desk = desk;
        this.keeper = keeper;
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
        JobFile file = desk.file();
        if (draft.isPresent() && !draft.get().equals(desk.draft())) {
            notice.say(
                    Messages.of("recover.said"),
                    new NoticeBar.Answer("recover.take", () -> desk.edit(draft.get())),
                    new NoticeBar.Answer("recover.leave", () -> keeper.drop(file)));
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
        Draft draft = desk.draft();
        if (!held && jobs.isEmpty() && desk.history().isSaved()) {
            keeper.look(desk.file(), this::changed, () -> then.accept(draft));
        } else {
            save(then);
        }
    }

    private void save(Consumer<Draft> then) {
        if (held) {
            notice.say(Messages.of("save.held"));
            return;
        }
        if (jobs.isPresent() && desk.draft().shown("/number").isBlank()) {
            notice.say(Messages.of("save.number"));
            reveal.accept("/number");
            return;
        }
        JobFile old = desk.file();
        Draft draft = desk.draft();
        if (jobs.isPresent()) {
            Path target = JobFile.place(jobs.get(), draft.shown("/number"));
            keeper.saveNew(target, draft, made -> {
                if (made.isPresent()) {
                    keeper.drop(old);
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
        keeper.save(old, draft, saved -> {
            if (saved == JobFile.Saved.DONE) {
                done(old, draft);
                then.accept(draft);
            } else {
                changed();
            }
        });
    }

    private void done(JobFile target, Draft draft) {
        if (draft.equals(desk.draft())) {
            desk.saved(target);
        } else {
            desk.savedAs(target, draft);
        }
    }

    /** Looks whether somebody else wrote the file. */
    public void look() {
        if (jobs.isEmpty() && !held) {
            JobFile file = desk.file();
            keeper.look(
                    file,
                    () -> {
                        if (!held && file == desk.file()) {
                            changed();
                        }
                    },
                    () -> {});
        }
    }

    private void changed() {
        JobFile file = desk.file();
        notice.say(
                Messages.of("changed.said", file.path()),
                new NoticeBar.Answer("changed.take", () -> takeTheirs(file.path())),
                new NoticeBar.Answer("changed.keep", () -> {
                    Draft draft = desk.draft();
                    keeper.saveOver(file, draft, () -> desk.savedAs(file, draft));
                }));
    }

    private void takeTheirs(Path path) {
        keeper.read(path, now -> {
            Optional<Draft> theirs = now.text().flatMap(Draft::read);
            if (theirs.isPresent()) {
                desk.reload(now, theirs.get());
                keeper.drop(now);
            } else {
                notice.say(Messages.of("changed.unreadable", path));
            }
        });
    }
}
