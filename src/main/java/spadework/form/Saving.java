package spadework.form;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Draft;
import spadework.office.JobFile;

/** Saves, recovers, and never writes over what somebody else wrote without being told to. */
final class Saving {
    private final Desk desk;
    private final Keeper keeper;
    private final Notice notice;
    private final Consumer<String> reveal;
    private Optional<Path> jobs = Optional.empty();
    private boolean held;

    Saving(Desk desk, Keeper keeper, Notice notice, Consumer<String> reveal) {
        this.desk = desk;
        this.keeper = keeper;
        this.notice = notice;
        this.reveal = reveal;
    }

    /** The job has no folder of its own yet: its number makes one among the jobs. */
    void isNewIn(Path folder) {
        jobs = Optional.of(folder);
    }

    /** Offers what a crash, or leaving without saving, kept from the file. */
    void offer(String unsaved) {
        Optional<Draft> draft = Draft.read(unsaved);
        JobFile file = desk.file();
        if (draft.isPresent() && !draft.get().equals(desk.draft())) {
            notice.say(
                    Words.of("recover.said"),
                    new Notice.Answer("recover.take", () -> desk.edit(draft.get())),
                    new Notice.Answer("recover.leave", () -> keeper.drop(file)));
        }
    }

    /** While a step writes the file nobody else does. */
    void hold(boolean now) {
        held = now;
    }

    /** Saves the draft as it stands. */
    void save() {
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
            notice.say(Words.of("save.held"));
            return;
        }
        if (jobs.isPresent() && desk.draft().shown("/number").isBlank()) {
            notice.say(Words.of("save.number"));
            reveal.accept("/number");
            return;
        }
        try {
            JobFile old = desk.file();
            JobFile target = jobs.isEmpty()
                    ? old
                    : JobFile.at(JobFile.place(jobs.get(), desk.draft().shown("/number")));
            if (jobs.isPresent() && target.text().isPresent()) {
                notice.say(Words.of("save.taken", target.path()));
                return;
            }
            Draft draft = desk.draft();
            keeper.save(target, draft.text(), saved -> {
                if (saved == JobFile.Saved.DONE) {
                    done(old, target, draft);
                    then.accept(draft);
                } else {
                    changed();
                }
            });
        } catch (IOException refused) {
            notice.say(Words.of("file.refused", refused.getMessage()));
        }
    }

    private void done(JobFile old, JobFile target, Draft draft) {
        if (jobs.isPresent()) {
            keeper.drop(old);
            jobs = Optional.empty();
        }
        if (draft.equals(desk.draft())) {
            desk.saved(target);
        } else {
            desk.savedAs(target, draft);
        }
    }

    /** Looks whether somebody else wrote the file. */
    void look() {
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
                Words.of("changed.said", file.path()),
                new Notice.Answer("changed.take", () -> takeTheirs(file.path())),
                new Notice.Answer("changed.keep", () -> {
                    Draft draft = desk.draft();
                    keeper.saveOver(file, draft.text(), () -> desk.savedAs(file, draft));
                }));
    }

    private void takeTheirs(Path path) {
        try {
            JobFile now = JobFile.at(path);
            Optional<Draft> theirs = now.text().flatMap(Draft::read);
            if (theirs.isPresent()) {
                desk.reload(now, theirs.get());
                keeper.drop(now);
            } else {
                notice.say(Words.of("changed.unreadable", path));
            }
        } catch (IOException refused) {
            notice.say(Words.of("file.refused", refused.getMessage()));
        }
    }
}
