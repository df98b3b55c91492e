// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.draft.History;
import spadework.draft.UsualJob;
import spadework.finding.Fault;
import spadework.form.kit.AppIcon;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.DesktopPlatform;
import spadework.form.kit.EarlyControls;
import spadework.form.kit.FailureMessages;
import spadework.form.kit.Messages;
import spadework.form.kit.Platform;
import spadework.form.kit.Theme;
import spadework.form.kit.TypedAhead;
import spadework.form.kit.WorkCounter;
import spadework.form.library.JobList;
import spadework.form.library.LibraryContext;
import spadework.form.page.JobPage;
import spadework.form.page.PagesOnDemand;
import spadework.form.session.JobSession;
import spadework.form.session.OpenGroups;
import spadework.form.session.UsualJobChoice;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.files.JobFile;
import spadework.office.files.JobsFolder;
import spadework.office.files.JobsHome;
import spadework.office.files.OfficeLanguage;
import spadework.office.files.UsualJobs;
import spadework.office.reply.TemplateFolder;
import spadework.wording.Language;

/** Opens the windows: the first page, a new job, a job from its file. */
public final class Forms {
    private final TemplateFolder templates;
    private final LocalDate today;
    private final Platform platform;
    private final Settings settings;
    private final JobsHome home;
    private final WorkCounter opening = new WorkCounter(this::endIfNothingIsOpen);
    private final BackgroundTasks files = new BackgroundTasks("opening", opening, why -> tell(FailureMessages.of(why)));
    private final CountDownLatch closed = new CountDownLatch(1);
    private int open;

    /** Where jobs live, kept from one start to the next. */
    public interface Settings {
        Optional<Path> jobs();

        void keep(Path jobs);

        /** Where a kind of window lay when it was closed last. */
        default Optional<Rectangle> bounds(String window) {
            return Optional.empty();
        }

        /** The groups of fields that were left open. */
        default Set<String> openGroups() {
            return Set.of();
        }

        /** Remembers which groups of fields are open. */
        default void keepOpenGroups(Set<String> open) {
            // Nothing to remember it in.
        }

        /** Remembers where a kind of window lies. */
        default void keep(String window, Rectangle bounds) {
            // Nothing to remember it in.
        }
    }

    /** @param home where the jobs are at home */
    Forms(JobsHome home, TemplateFolder templates, LocalDate today, Platform platform, Settings settings) {
        this.home = home;
        this.templates = templates;
        this.today = today;
        this.platform = platform;
        this.settings = settings;
    }

    /**
     * Opens a new job, or the first page where nobody has said yet where jobs live, and comes back when the last window
     * is closed.
     *
     * @param home where the jobs are at home
     * @param templates templates of the contractor's own
     * @param today the date that a new job carries
     * @throws java.awt.HeadlessException if there is no screen
     */
    public static void open(JobsHome home, TemplateFolder templates, LocalDate today) throws InterruptedException {
        new Forms(home, templates, today, new DesktopPlatform(), new UserSettings()).open(Forms::home);
    }

    /** The same with a job to open. */
    public static void open(Path job, JobsHome home, TemplateFolder templates, LocalDate today)
            throws InterruptedException {
        new Forms(home, templates, today, new DesktopPlatform(), new UserSettings()).open(forms -> forms.openJob(job));
    }

    /** Begins to load what every window needs, beside whatever else starts; nothing waits for it. */
    public static void loadEarly() {
        SwingUtilities.invokeLater(() -> {
            TypedAhead.install();
            Theme.apply(false);
            EarlyControls.load();
        });
        loading("early job", () -> {
            FileSchema.job();
            PagesOnDemand.holding("/walls");
            Office.with(TemplateFolder.NONE);
        });
    }

    private static void loading(String name, Runnable loading) {
        Thread thread = new Thread(loading, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void open(Consumer<Forms> first) throws InterruptedException {
        Thread.setDefaultUncaughtExceptionHandler(new CrashHandler(
                files,
                () -> jobsFolder().orElse(JobsFolder.usual()).resolve("reports"),
                () -> jobs().forEach(JobWindow::keepAside),
                words -> jobs().findFirst()
                        .ifPresentOrElse(window -> window.notice().say(words), () -> tell(words))));
        SwingUtilities.invokeLater(() -> {
            if (!Theme.isOn()) {
                TypedAhead.install();
                Theme.apply(false);
            }
            first.accept(this);
        });
        closed.await();
    }

    /** Whether no window is being opened. */
    boolean isIdle() {
        return opening.isIdle();
    }

    /** Opens the list of jobs; where there is none yet, a new one; on the window's thread, as all that follows. */
    void home() {
        files.run(
                () -> new Home(
                        isOffice()
                                || (isReady() && JobsFolder.hasJobs(jobsFolder().orElseThrow())),
                        jobsFolder().map(OfficeLanguage::near).orElseGet(OfficeLanguage::near)),
                found -> {
                    Messages.speak(found.language);
                    if (found.any) {
                        list();
                    } else {
                        begin();
                    }
                });
    }

    /** Whether there are jobs, and what whoever does them reads. */
    private record Home(boolean any, Language language) {}

    /** Where jobs live; nothing where nobody has said so yet. */
    private Optional<Path> jobsFolder() {
        return home.tree().or(settings::jobs);
    }

    private boolean isReady() {
        return jobsFolder().filter(JobsFolder::isReady).isPresent();
    }

    /** Whether the jobs are at home in an office on a server. */
    private boolean isOffice() {
        return home.tree().filter(home::isShared).isPresent();
    }

    private void list() {
        Path jobs = jobsFolder().orElseThrow();
        HomeWindow[] page = new HomeWindow[1];
        page[0] = new HomeWindow(
                new JobList(home, jobs, today, job -> leave(page[0], () -> openJob(job))),
                new WindowMenu.Jobs(
                        () -> leave(page[0], this::newJob),
                        () -> platform.open(page[0], jobs).ifPresent(job -> leave(page[0], () -> openJob(job))),
                        () -> leave(page[0], this::sample)));
        shown(page[0]);
    }

    /** Goes on from one window to another, which is open before the first is gone. */
    private static void leave(JFrame page, Runnable on) {
        on.run();
        page.dispose();
    }

    /** Opens a new job, or the first page where nobody has said yet where jobs live. */
    void begin() {
        files.run(() -> isOffice() || isReady(), ready -> {
            if (ready) {
                newJob();
            } else {
                first();
            }
        });
    }

    void first() {
        Messages.speak(OfficeLanguage.near());
        setup();
    }

    private SetupWindow setup() {
        return shown(new SetupWindow(platform, settings, files, this::newJob, this::sample));
    }

    /**
     * A job without a file: it gets one among the jobs with its first saving. In an office it has its folder and its
     * number from the beginning, so that nobody else gets the same.
     */
    public void newJob() {
        if (isOffice()) {
            files.run(this::begun, read -> open(read, History.ofSaved(read.draft())));
            return;
        }
        Path jobs = jobsFolder().orElseThrow();
        Path place = jobs.resolve("new-job").resolve("job.json");
        files.run(() -> new NewJob(read(place), JobsFolder.freeNumber(jobs, today.getYear())), fresh -> {
            OpenedFile read = fresh.file;
            Draft blank = JobFile.blank().typed("/issued", today.toString()).typed("/number", fresh.number);
            Draft begun = read.usual.stream()
                    .findFirst()
                    .map(kind -> kind.onto(blank))
                    .orElse(blank);
            JobWindow window = window(read, History.ofNew(begun));
            window.saving().isNewIn(jobs);
            read.unsaved.ifPresent(window.saving()::offer);
            shown(window).begin(JobPage.START);
        });
    }

    /** The sample that comes with the program, as a copy that may be changed. */
    void sample() {
        Path jobs = settings.jobs().orElse(JobsFolder.usual());
        files.run(() -> JobsFolder.sample(jobs), this::openJob);
    }

    /** A job's file as it was read, and what was kept of it and never saved. */
    private record OpenedFile(
            JobFile file,
            Optional<String> unsaved,
            List<UsualJob> usual,
            Set<String> openGroups,
            Office office,
            Language language) {

        Draft draft() {
            return file.text().flatMap(Draft::read).orElseGet(JobFile::blank);
        }
    }

    private OpenedFile read(Path path) throws IOException {
        home.refresh(path);
        JobFile file = JobFile.at(path);
        return new OpenedFile(
                file,
                file.unsaved(),
                UsualJobs.near(path.toAbsolutePath()),
                settings.openGroups(),
                Office.with(templates),
                OfficeLanguage.near(path));
    }

    private OpenedFile begun() throws IOException {
        Draft blank = JobFile.blank().typed("/issued", today.toString());
        Draft usual = UsualJobs.near(home.tree().orElseThrow()).stream()
                .findFirst()
                .map(kind -> kind.onto(blank))
                .orElse(blank);
        return read(home.begin(usual.text(), today.getYear()));
    }

    private record NewJob(OpenedFile file, String number) {}

    /** Opens a job's file, or says why it cannot be opened. */
    public void openJob(Path job) {
        files.run(() -> read(JobFile.of(job)), this::open);
    }

    private void open(OpenedFile read) {
        JobFile file = read.file;
        if (file.text().isEmpty()) {
            open(read, History.ofNew(JobFile.blank()));
        } else {
            file.text()
                    .flatMap(Draft::read)
                    .ifPresentOrElse(draft -> open(read, History.ofSaved(draft)), () -> refuse(file.path()));
        }
    }

    private void open(OpenedFile read, History history) {
        JobWindow window = window(read, history);
        read.unsaved.ifPresent(window.saving()::offer);
        shown(window);
    }

    private void refuse(Path file) {
        files.run(() -> why(file), why -> tell(Messages.of("first.unreadable", file, why)));
    }

    private String why(Path file) {
        BidResult answer = Office.with(templates).bid(file);
        List<Fault> faults = answer instanceof Refusal refusal ? refusal.faults() : List.of();
        // What is only missing does not keep a file from being opened.
        return faults.stream()
                .filter(fault -> !fault.found().startsWith("no \""))
                .findFirst()
                .map(Fault::text)
                .orElse("");
    }

    private void tell(String words) {
        setup().notice().say(words);
    }

    private JobWindow window(OpenedFile read, History history) {
        Messages.speak(read.language);
        JobFile file = read.file;
        JobSession session = new JobSession(read.office, file, history);
        session.livesIn(home);
        session.opensOn(today);
        session.keepsUsual(new UsualJobChoice(read.usual, ""));
        session.opens(new OpenGroups(read.openGroups, this::keepOpen));
        Path near =
                Optional.ofNullable(file.path().toAbsolutePath().getParent()).orElse(file.path());
        return new JobWindow(
                session,
                platform,
                today,
                new WindowMenu.Jobs(
                        this::begin, () -> platform.open(null, near).ifPresent(this::openJob), this::sample));
    }

    private void keepOpen(Set<String> groups) {
        files.run(
                () -> {
                    settings.keepOpenGroups(groups);
                    return groups;
                },
                kept -> {});
    }

    private void around(JobWindow window) {
        Path file = window.session().file().path().toAbsolutePath();
        Path near = Optional.ofNullable(file.getParent()).orElse(file);
        window.around(new LibraryContext.Environment(
                tree(near), templates, today, platform, this::forward, Forms::bookMoved));
    }

    /** Where jobs live, if this job lives there; else the folder around the job's own. */
    private Path tree(Path near) {
        Path around = Optional.ofNullable(near.getParent()).orElse(near);
        return jobsFolder().map(Path::toAbsolutePath).filter(near::startsWith).orElse(around);
    }

    private static Stream<JobWindow> jobs() {
        return Stream.of(Window.getWindows())
                .filter(window -> window.isDisplayable() && window instanceof JobWindow)
                .map(JobWindow.class::cast);
    }

    private static void bookMoved() {
        jobs().map(JobWindow::session).forEach(session -> {
            session.office().readBooksAgain();
            session.price();
        });
    }

    /** Brings the window forward that shows a job, or opens one. What is not saved in another stays there. */
    private void forward(Path job) {
        Path wanted = JobFile.of(job).toAbsolutePath().normalize();
        jobs().filter(open -> open.session()
                        .file()
                        .path()
                        .toAbsolutePath()
                        .normalize()
                        .equals(wanted))
                .findFirst()
                .ifPresentOrElse(Window::toFront, () -> openJob(job));
    }

    /** A screen may be gone since; a window that nobody can take hold of is put in the middle instead. */
    private static boolean isOnScreen(Rectangle bounds) {
        return Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                .map(screen -> screen.getDefaultConfiguration().getBounds())
                .anyMatch(screen ->
                        screen.contains(bounds.x + 40, bounds.y + 10) && bounds.width >= 400 && bounds.height >= 300);
    }

    private void endIfNothingIsOpen() {
        if (open == 0 && opening.isIdle()) {
            closed.countDown();
        }
    }

    private <W extends JFrame> W shown(W window) {
        open++;
        String kind = window.getClass().getSimpleName();
        if (window instanceof JobWindow job) {
            around(job);
        }
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                settings.keep(kind, window.getBounds());
                open--;
                endIfNothingIsOpen();
            }
        });
        window.setLocationRelativeTo((Window) null);
        settings.bounds(kind).filter(Forms::isOnScreen).ifPresent(window::setBounds);
        window.setVisible(true);
        // Drawn once it is there to be used.
        SwingUtilities.invokeLater(() -> window.setIconImages(AppIcon.images()));
        return window;
    }
}
