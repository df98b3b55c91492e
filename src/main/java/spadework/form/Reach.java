package spadework.form;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.office.Bid;
import spadework.office.BookDesk;

/** What the shelf has at hand: the job it was opened from, the book beside it, and the folder with all the jobs. */
final class Reach {
    private final Desk desk;
    private final Around around;
    private final List<Runnable> watchers = new ArrayList<>();
    private Path tree;

    /**
     * What lies around a window.
     *
     * @param templates templates of the contractor's own
     * @param open opens a job in a window of its own, or brings the one forward that shows it
     * @param bookMoved prices the jobs of all windows anew, as a book has changed
     */
    record Around(
            Path tree,
            Optional<Path> templates,
            LocalDate today,
            Outside outside,
            Consumer<Path> open,
            Runnable bookMoved) {}

    Reach(Desk desk, Around around) {
        this.desk = desk;
        this.around = around;
        this.tree = around.tree();
    }

    /** The folder in whose tree jobs are looked for. */
    Path tree() {
        return tree;
    }

    void tree(Path other) {
        tree = other;
        watchers.forEach(Runnable::run);
    }

    /** Tells when another folder is looked through. */
    void onTree(Runnable watcher) {
        watchers.add(watcher);
    }

    Path job() {
        return desk.file().path().toAbsolutePath();
    }

    /** The job on screen as it was last priced. */
    Optional<Bid> bid() {
        return desk.bid();
    }

    LocalDate today() {
        return around.today();
    }

    Outside outside() {
        return around.outside();
    }

    Optional<Path> templates() {
        return around.templates();
    }

    void open(Path job) {
        around.open().accept(job);
    }

    /** A book has changed. */
    void bookMoved() {
        around.bookMoved().run();
    }

    /**
     * The book of the job on screen.
     *
     * @throws IOException if no book lies beside it or in a folder above
     */
    BookDesk book() throws IOException {
        return book(job().getParent());
    }

    /** The book of a folder, or else that of the job on screen. */
    BookDesk bookOf(Path folder) throws IOException {
        try {
            return BookDesk.near(Optional.empty(), folder);
        } catch (IOException none) {
            return book();
        }
    }

    private static BookDesk book(Path folder) throws IOException {
        try {
            return BookDesk.near(Optional.empty(), folder);
        } catch (IOException none) {
            throw new IOException(Words.of("shelf.nobook", folder), none);
        }
    }
}
