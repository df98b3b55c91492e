// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.io.IOException;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.Timer;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.Messages;
import spadework.form.kit.PlainText;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;

/** Looks every few seconds who else has the job open, and what they changed in it or in the firm's books. */
public final class OfficeWatch {
    /** How often, in milliseconds; more often where tests wait for it. */
    public static final int EVERY = Integer.getInteger("spadework.lookEvery", 5000);

    private final JobSession session;
    private final JobSaving saving;
    private final BackgroundTasks tasks;
    private final JLabel label = PlainText.of(new JLabel(" "));
    private final Timer timer = new Timer(EVERY, event -> look());
    private String books = "";
    private boolean looking;

    /** What was seen. */
    private record Seen(List<String> others, boolean changed, String books) {}

    public OfficeWatch(JobSession session, JobSaving saving) {
        this.session = session;
        this.saving = saving;
        tasks = new BackgroundTasks("office", session.work(), this::away);
        label.setName("office.others");
    }

    /** Who else has the job open, in words. */
    public JLabel label() {
        return label;
    }

    /** Begins to look, and looks at once. */
    public void begin() {
        timer.start();
        look();
    }

    private void look() {
        if (!looking) {
            looking = true;
            JobFile file = session.file();
            JobsHome home = session.home();
            tasks.run(() -> seen(home, file), seen -> show(file, seen));
        }
    }

    private static Seen seen(JobsHome home, JobFile file) throws IOException {
        home.refresh(file.path());
        return new Seen(home.others(file.path()), file.isChangedOnDisk(), home.books());
    }

    private void show(JobFile file, Seen seen) {
        looking = false;
        say(
                seen.others().isEmpty()
                        ? Messages.of("office.alone")
                        : Messages.of("office.others", String.join(", ", seen.others())),
                "");
        if (!books.isEmpty() && !books.equals(seen.books())) {
            session.office().readBooksAgain();
            session.price();
        }
        books = seen.books();
        if (seen.changed() && file == session.file()) {
            saving.changed();
        }
    }

    private void away(Exception why) {
        looking = false;
        say(Messages.of("office.away"), FailureMessages.of(why));
    }

    private void say(String words, String more) {
        label.setText(words);
        label.setToolTipText(more.isEmpty() ? words : more);
        label.getAccessibleContext().setAccessibleDescription(more);
    }

    /** Ends it, and has the office know that the job is no longer open here. */
    public void close() {
        timer.stop();
        JobsHome home = session.home();
        JobFile file = session.file();
        tasks.run(
                () -> {
                    home.left(file.path());
                    return file;
                },
                left -> {},
                away -> {});
        tasks.afterAll(tasks::stop);
    }
}
