// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Component;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.Messages;
import spadework.form.kit.NoticeBar;
import spadework.form.kit.Platform;
import spadework.form.page.OutcomeMessages;
import spadework.form.session.JobSession;
import spadework.form.session.PaperNames;
import spadework.form.session.StepRunner;
import spadework.office.JobPaper;
import spadework.office.Outcome;
import spadework.press.page.PageView;

/** What is done with a paper: it is printed, saved, or laid into a letter, and then opened, shown or mailed. */
final class PaperActions {
    private final Component over;
    private final JobSession session;
    private final StepRunner stepRunner;
    private final Platform platform;
    private final Telling say;
    private final Runnable handedOut;

    /** Tells what came of it, with what can be done then. */
    interface Telling {
        void say(String words, NoticeBar.Answer... answers);
    }

    /**
     * Makes them.
     *
     * @param over the window over which files are asked for
     * @param handedOut told when a paper is printed, saved or laid into a letter
     */
    PaperActions(
            Component over,
            JobSession session,
            StepRunner stepRunner,
            Platform platform,
            Telling say,
            Runnable handedOut) {
        this.over = over;
        this.session = session;
        this.stepRunner = stepRunner;
        this.platform = platform;
        this.say = say;
        this.handedOut = handedOut;
    }

    void print(JobPaper paper) {
        session.bid()
                .filter(bid -> session.isCurrent() && bid.openStops().isEmpty())
                .ifPresent(bid -> {
                    Path job = session.file().path();
                    stepRunner.work(
                            () -> PageView.of(session.office().handedOut(bid, paper, job)),
                            view -> platform.print(view.sheets(), PaperNames.of(paper), came -> {
                                view.close();
                                printed(paper, came);
                            }));
                });
    }

    private void printed(JobPaper paper, Platform.Printed came) {
        if (came instanceof Platform.Printed.Failed failed) {
            say.say(Messages.of("printed.failed", PaperNames.of(paper), FailureMessages.of(failed.why())));
        } else if (came instanceof Platform.Printed.Done) {
            handedOut.run();
            List<NoticeBar.Answer> answers = new ArrayList<>();
            answers.add(new NoticeBar.Answer("papers.save", () -> save(paper)));
            if (paper.paper().isForHomeowner()) {
                Path beside = session.file().path().toAbsolutePath();
                answers.add(new NoticeBar.Answer("file.mail", () -> mail(paper, beside)));
            }
            answers.add(new NoticeBar.Answer("notice.away", () -> {}));
            say.say(Messages.of("printed.done", PaperNames.of(paper)), answers.toArray(NoticeBar.Answer[]::new));
        }
    }

    void save(JobPaper paper) {
        session.bid().filter(bid -> session.isCurrent()).ifPresent(bid -> {
            Path job = session.file().path();
            platform.saveAs(over, job.toAbsolutePath().resolveSibling(paper.file() + ".pdf"))
                    .ifPresent(target -> stepRunner.work(
                            () -> session.office().save(bid, paper, job, target),
                            came -> tell(came, target, forPaper(paper, target))));
        });
    }

    void letter(List<JobPaper> papers) {
        session.bid().filter(bid -> session.isCurrent()).ifPresent(bid -> {
            Path job = session.file().path();
            platform.saveAs(over, job.toAbsolutePath().resolveSibling(Messages.of("letter.file")))
                    .ifPresent(target -> stepRunner.work(
                            () -> session.office().letter(bid, papers, job, target),
                            came -> tell(came, target, List.of())));
        });
    }

    /**
     * Says what came of a file, and what can be done with it.
     *
     * @param more than any file can be opened and shown
     */
    private void tell(Outcome outcome, Path target, List<NoticeBar.Answer> more) {
        if (!OutcomeMessages.isDone(outcome)) {
            say.say(OutcomeMessages.of(outcome));
            return;
        }
        handedOut.run();
        List<NoticeBar.Answer> answers = new ArrayList<>();
        answers.add(new NoticeBar.Answer("file.open", () -> ask(() -> platform.open(target))));
        answers.add(new NoticeBar.Answer("file.folder", () -> ask(() -> platform.show(target))));
        answers.addAll(more);
        answers.add(new NoticeBar.Answer("notice.away", () -> {}));
        say.say(OutcomeMessages.of(outcome), answers.toArray(NoticeBar.Answer[]::new));
    }

    /** A paper can be mailed, if it is the homeowner's, and printed. */
    private List<NoticeBar.Answer> forPaper(JobPaper paper, Path target) {
        NoticeBar.Answer print = new NoticeBar.Answer("file.print", () -> print(paper));
        return paper.paper().isForHomeowner()
                ? List.of(new NoticeBar.Answer("file.mail", () -> mail(paper, target)), print)
                : List.of(print);
    }

    /** Makes a draft with the paper in it beside the paper, and opens it in the mail program. */
    private void mail(JobPaper paper, Path beside) {
        session.bid().filter(bid -> session.isCurrent()).ifPresent(bid -> {
            Path job = session.file().path();
            Path draft = beside.resolveSibling(paper.file() + ".eml");
            stepRunner.work(() -> session.office().letter(bid, List.of(paper), job, draft), came -> {
                if (OutcomeMessages.isDone(came)) {
                    ask(() -> platform.open(draft));
                } else {
                    say.say(OutcomeMessages.of(came));
                }
            });
        });
    }

    /** Something that the machine does. */
    private interface MachineTask {
        void run() throws IOException;
    }

    private void ask(MachineTask task) {
        stepRunner.work(
                () -> {
                    task.run();
                    return task;
                },
                done -> {});
    }
}
