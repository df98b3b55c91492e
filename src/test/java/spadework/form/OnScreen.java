// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.edt.GuiQuery;
import org.assertj.swing.fixture.FrameFixture;
import spadework.form.kit.Platform;
import spadework.form.kit.Theme;
import spadework.form.kit.TypedAhead;
import spadework.form.library.LibraryWindow;
import spadework.form.session.JobSession;
import spadework.office.files.JobsHome;
import spadework.office.reply.TemplateFolder;

/** The form on a screen, worked by mouse and keyboard; what it asks of the machine is answered here. */
public final class OnScreen implements AutoCloseable {
    static final Path SCREENS = Path.of("target", "screens");
    static final LocalDate TODAY = LocalDate.of(2026, 8, 10);

    static {
        // Before there is a robot, which waits on the queue of events that it found.
        TypedAhead.install();
    }

    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private final Asked asked = new Asked();
    private final Remembered remembered = new Remembered();
    private final Forms forms;
    private final KeysInTransit keys;
    private FrameFixture window;

    /** What the form asked of the machine, and what it is answered. */
    public static final class Asked implements Platform {
        Optional<Path> target = Optional.empty();
        Optional<BufferedImage> printed = Optional.empty();
        int pages;
        /** What the printer answers. */
        Printed came = new Printed.Done();
        /** Files that were opened, and folders that were shown. */
        final List<Path> opened = new CopyOnWriteArrayList<>();

        @Override
        public void open(Path file) {
            opened.add(file);
        }

        @Override
        public Optional<Path> saveAs(Component over, Path suggested) {
            return target;
        }

        @Override
        public Optional<Path> open(Component over, Path from) {
            return target;
        }

        @Override
        public Optional<Path> folder(Component over, Path from) {
            return target;
        }

        @Override
        public void print(Pageable sheets, String title, Consumer<Printed> described) {
            try {
                BufferedImage paper = new BufferedImage(612, 792, BufferedImage.TYPE_INT_RGB);
                Graphics2D pen = paper.createGraphics();
                pen.setBackground(Color.WHITE);
                pen.clearRect(0, 0, 612, 792);
                sheets.getPrintable(0).print(pen, sheets.getPageFormat(0), 0);
                pen.dispose();
                printed = Optional.of(paper);
                pages = sheets.getNumberOfPages();
            } catch (PrinterException refused) {
                throw new IllegalStateException(refused);
            } finally {
                described.accept(came);
            }
        }
    }

    /** Remembers for as long as the test runs. */
    public static final class Remembered implements Forms.Settings {
        Optional<Path> folder = Optional.empty();
        private volatile Set<String> open = Set.of();
        private final Map<String, Rectangle> bounds = new ConcurrentHashMap<>();

        @Override
        public Optional<Rectangle> bounds(String window) {
            return Optional.ofNullable(bounds.get(window));
        }

        @Override
        public void keep(String window, Rectangle now) {
            bounds.put(window, now);
        }

        @Override
        public Set<String> openGroups() {
            return open;
        }

        @Override
        public void keepOpenGroups(Set<String> now) {
            open = now;
        }

        @Override
        public Optional<Path> jobs() {
            return folder;
        }

        @Override
        public void keep(Path jobs) {
            folder = Optional.of(jobs);
        }
    }

    public OnScreen() {
        this(TODAY);
    }

    private OnScreen(LocalDate today) {
        this(JobsHome.FOLDERS, today);
    }

    private OnScreen(JobsHome home, LocalDate today) {
        forms = new Forms(home, TemplateFolder.NONE, today, asked, remembered);
        robot.settings().delayBetweenEvents(0);
        robot.settings().eventPostingDelay(0);
        robot.settings().timeoutToFindPopup(2000);
        keys = new KeysInTransit(robot);
        GuiActionRunner.execute(() -> Theme.apply(false));
    }

    /** Of jobs that are at home there. */
    static OnScreen of(JobsHome home) {
        return new OnScreen(home, TODAY);
    }

    public static OnScreen job(Path file) {
        return job(file, TODAY);
    }

    /** On a later day. */
    static OnScreen job(Path file, LocalDate today) {
        OnScreen screen = new OnScreen(today);
        screen.open(() -> screen.forms.openJob(file));
        screen.settle();
        return screen;
    }

    /** Has the form open a window, which is the one that is looked at from then on. */
    public void open(Runnable opening) {
        Set<Window> before = Set.of(Window.getWindows());
        GuiActionRunner.execute(opening::run);
        waitFor("a window", () -> ask(forms::isIdle));
        JFrame opened = Stream.of(Window.getWindows())
                .filter(window -> window instanceof JFrame && window.isShowing() && !before.contains(window))
                .map(JFrame.class::cast)
                .findFirst()
                .orElseThrow();
        window = new FrameFixture(robot, opened);
    }

    /** Looks at another window. */
    void lookAt(GuiQueryOf<JFrame> other) {
        window = new FrameFixture(robot, ask(other));
    }

    /** A question for the window's thread. */
    public interface GuiQueryOf<T> {
        T get();
    }

    public Forms forms() {
        return forms;
    }

    Asked asked() {
        return asked;
    }

    public Remembered remembered() {
        return remembered;
    }

    Robot robot() {
        return robot;
    }

    public FrameFixture window() {
        return window;
    }

    public JobWindow job() {
        return (JobWindow) window.target();
    }

    public JobSession session() {
        return job().session();
    }

    public <T> T ask(GuiQueryOf<T> question) {
        return GuiActionRunner.execute(new GuiQuery<T>() {
            @Override
            protected T executeInEDT() {
                return question.get();
            }
        });
    }

    /** Waits until nothing is being priced, drawn, read or written. */
    public void settle() {
        arrive();
        waitFor("an idle window", this::isIdle);
    }

    /** Waits until the screen has handed over all keys and clicks, which it does in its own time. */
    void arrive() {
        if ("real".equals(System.getProperty("spadework.screen"))) {
            keys.await();
        } else {
            rest(50);
        }
        robot.waitForIdle();
    }

    /** Gives a part the keyboard. */
    void focus(Component part) {
        ask(part::requestFocusInWindow);
        waitFor("keyboard in " + part.getName(), () -> ask(part::isFocusOwner));
    }

    private boolean isIdle() {
        return ask(() -> forms.isIdle()
                && (!(window.target() instanceof HomeWindow home) || home.isIdle())
                && (window.target() instanceof LibraryWindow library
                        ? library.isIdle()
                        : !(window.target() instanceof JobWindow job) || job.isIdle()));
    }

    /** Waits until the window stands still: words about faults move what lies below them. */
    void still() {
        waitFor("a window that stands still", this::isIdle);
    }

    public void waitFor(BooleanSupplier done) {
        waitFor("", done);
    }

    /** The same, with what is waited for. */
    public void waitFor(String what, BooleanSupplier done) {
        waitFor(what, done, () -> "");
    }

    /** The same, with how it stands when it was waited for in vain. */
    public void waitFor(String what, BooleanSupplier done, Supplier<String> stands) {
        if (!comes(done, 60)) {
            picture("waited-in-vain");
            throw new AssertionError("still not done after a minute: " + what + "; " + stands.get());
        }
        robot.waitForIdle();
    }

    private static boolean comes(BooleanSupplier done, int seconds) {
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        boolean is = done.getAsBoolean();
        while (!is && System.nanoTime() < end) {
            rest(20);
            is = done.getAsBoolean();
        }
        return is;
    }

    private static void rest(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    /** Every component of the window that fits. */
    <T extends Component> List<T> all(Class<T> kind, Predicate<T> fits) {
        return ask(() -> inside(window.target(), kind, fits));
    }

    /** Every component inside another that fits; for the window's thread. */
    static <T extends Component> List<T> inside(Component outer, Class<T> kind, Predicate<T> fits) {
        List<T> found = new ArrayList<>();
        collect(outer, kind, fits, found);
        return found;
    }

    private static <T extends Component> void collect(Component in, Class<T> kind, Predicate<T> fits, List<T> found) {
        if (kind.isInstance(in) && fits.test(kind.cast(in))) {
            found.add(kind.cast(in));
        }
        if (in instanceof Container container) {
            Stream.of(container.getComponents()).forEach(inside -> collect(inside, kind, fits, found));
        }
    }

    /** Keeps what is to be seen now. */
    public BufferedImage picture(String name) {
        robot.waitForIdle();
        BufferedImage image = ask(() -> {
            Window shown = window.target();
            BufferedImage made = new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = made.createGraphics();
            shown.paint(pen);
            pen.dispose();
            return made;
        });
        try {
            Files.createDirectories(SCREENS);
            ImageIO.write(image, "png", SCREENS.resolve(name + ".png").toFile());
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return image;
    }

    @Override
    public void close() {
        GuiActionRunner.execute(() -> {
            for (Window open : Window.getWindows()) {
                if (open instanceof JobWindow job && job.isDisplayable()) {
                    job.leave();
                }
            }
        });
        waitFor(
                "the end of all windows",
                () -> Stream.of(Window.getWindows())
                        .noneMatch(open -> open instanceof JobWindow && open.isDisplayable()));
        keys.close();
        robot.cleanUp();
    }
}
