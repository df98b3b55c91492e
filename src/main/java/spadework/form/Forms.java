package spadework.form;

import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import spadework.draft.Draft;
import spadework.draft.History;
import spadework.finding.Fault;
import spadework.form.kit.DesktopPlatform;
import spadework.form.kit.Messages;
import spadework.form.kit.Platform;
import spadework.form.kit.Theme;
import spadework.form.library.LibraryContext;
import spadework.form.session.JobSession;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.files.JobFile;
import spadework.office.files.JobsFolder;

/** Opens the windows: the first page, a new job, a job from its file. */
public final class Forms {
    private final Optional<Path> templates;
    private final LocalDate today;
    private final Platform outside;
    private final Memory memory;
    private final CountDownLatch closed = new CountDownLatch(1);
    private int open;

    /** Where jobs live, kept from one start to the next. */
    public interface Memory {
        Optional<Path> jobs();

        void keep(Path jobs);
    }

    Forms(Optional<Path> templates, LocalDate today, Platform outside, Memory memory) {
        this.templates = templates;
        this.today = today;
        this.outside = outside;
        this.memory = memory;
    }

    /**
     * Opens a window and comes back when the last one is closed.
     *
     * @param job the job to open; without one a new job, or the first page where nobody has said yet where jobs live
     * @param templates templates of the contractor's own
     * @param today the date that a new job carries
     * @throws java.awt.HeadlessException if there is no screen
     */
    public static void open(Optional<Path> job, Optional<Path> templates, LocalDate today) throws InterruptedException {
        Forms forms = new Forms(templates, today, new DesktopPlatform(), new UserSettings());
        SwingUtilities.invokeLater(() -> {
            Theme.wear(false);
            forms.begin(job);
        });
        forms.closed.await();
    }

    /** Opens the first window; on the window's thread. */
    JFrame begin(Optional<Path> job) {
        if (job.isPresent()) {
            return openJob(job.get());
        }
        return memory.jobs().filter(JobsFolder::isReady).isPresent() ? newJob() : first();
    }

    JFrame first() {
        return shown(new SetupWindow(outside, memory, yard -> newJob(), this::sample));
    }

    /** A job without a file: it gets one among the jobs with its first saving. */
    public JobWindow newJob() {
        Path jobs = memory.jobs().orElseThrow();
        Draft blank = JobFile.blank().typed("/issued", today.toString());
        try {
            JobFile file = JobFile.at(jobs.resolve("new-job").resolve("job.json"));
            JobWindow window = window(file, History.ofNew(blank));
            window.saving().isNewIn(jobs);
            file.unsaved().ifPresent(window.saving()::offer);
            return shown(window);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    /** The sample that comes with the program, as a copy that may be changed. */
    JFrame sample() {
        try {
            return openJob(JobsFolder.sample(memory.jobs().orElse(JobsFolder.usual())));
        } catch (IOException unwritable) {
            return told(Messages.of("file.refused", unwritable.getMessage()));
        }
    }

    /** Opens a job's file, or says why it cannot be opened. */
    public JFrame openJob(Path job) {
        try {
            JobFile file = JobFile.at(JobFile.of(job));
            Optional<Draft> draft = file.text().isEmpty()
                    ? Optional.of(JobFile.blank())
                    : file.text().flatMap(Draft::read);
            if (draft.isEmpty()) {
                return told(Messages.of("first.unreadable", file.path(), why(file)));
            }
            JobWindow window =
                    window(file, file.text().isEmpty() ? History.ofNew(draft.get()) : History.ofSaved(draft.get()));
            file.unsaved().ifPresent(window.saving()::offer);
            return shown(window);
        } catch (IOException unreadable) {
            return told(Messages.of("file.refused", unreadable.getMessage()));
        }
    }

    private String why(JobFile file) {
        BidResult answer = Office.with(templates).bid(file.path());
        List<Fault> faults = answer instanceof Refusal refusal ? refusal.faults() : List.of();
        // What is only missing does not keep a file from being opened.
        return faults.stream()
                .filter(fault -> !fault.found().startsWith("no \""))
                .findFirst()
                .map(Fault::text)
                .orElse("");
    }

    private JFrame told(String words) {
        SetupWindow page = new SetupWindow(outside, memory, yard -> newJob(), this::sample);
        page.notice().say(words);
        return shown(page);
    }

    private JobWindow window(JobFile file, History history) {
        JobSession desk = new JobSession(Office.with(templates), file, history);
        Path near =
                Optional.ofNullable(file.path().toAbsolutePath().getParent()).orElse(file.path());
        return new JobWindow(
                desk,
                outside,
                today,
                new WindowMenu.Jobs(
                        () -> begin(Optional.empty()),
                        () -> outside.open(null, near).ifPresent(this::openJob),
                        this::sample));
    }

    private void around(JobWindow window) {
        Path file = window.desk().file().path().toAbsolutePath();
        Path near = Optional.ofNullable(file.getParent()).orElse(file);
        window.around(
                new LibraryContext.Around(tree(near), templates, today, outside, this::forward, Forms::bookMoved));
    }

    /** Where jobs live, if this job lives there; else the folder around the job's own. */
    private Path tree(Path near) {
        Path around = Optional.ofNullable(near.getParent()).orElse(near);
        return memory.jobs().map(Path::toAbsolutePath).filter(near::startsWith).orElse(around);
    }

    private static Stream<JobWindow> jobs() {
        return Stream.of(Window.getWindows())
                .filter(window -> window.isDisplayable() && window instanceof JobWindow)
                .map(JobWindow.class::cast);
    }

    private static void bookMoved() {
        jobs().map(JobWindow::desk).forEach(desk -> {
            desk.office().readBooksAgain();
            desk.reckon();
        });
    }

    /** Brings the window forward that shows a job, or opens one. What is not saved in another stays there. */
    private void forward(Path job) {
        Path wanted = JobFile.of(job).toAbsolutePath().normalize();
        jobs().filter(open ->
                        open.desk().file().path().toAbsolutePath().normalize().equals(wanted))
                .findFirst()
                .ifPresentOrElse(Window::toFront, () -> openJob(job));
    }

    private <W extends JFrame> W shown(W window) {
        open++;
        if (window instanceof JobWindow job) {
            around(job);
        }
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                open--;
                if (open == 0) {
                    closed.countDown();
                }
            }
        });
        window.setLocationRelativeTo((Window) null);
        window.setVisible(true);
        return window;
    }
}
