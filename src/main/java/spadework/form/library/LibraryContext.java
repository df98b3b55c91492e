// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.form.kit.Messages;
import spadework.form.kit.Platform;
import spadework.form.kit.WordChoice;
import spadework.form.session.JobSession;
import spadework.form.session.References;
import spadework.office.Bid;
import spadework.office.NamedChoice;
import spadework.office.NamedChoices;
import spadework.office.book.BookService;
import spadework.office.files.JobsHome;
import spadework.office.reply.TemplateFolder;

/** What the library has at hand: the job it was opened from, the book beside it, and the folder with all the jobs. */
public final class LibraryContext {
    private final JobSession session;
    private final Environment around;
    private final List<Runnable> watchers = new ArrayList<>();
    private Path tree;

    /**
     * What lies around a window.
     *
     * @param templates templates of the contractor's own
     * @param open opens a job in a window of its own, or brings the one forward that shows it
     * @param bookMoved prices the jobs of all windows anew, as a book has changed
     */
    public record Environment(
            Path tree,
            TemplateFolder templates,
            LocalDate today,
            Platform platform,
            Consumer<Path> open,
            Runnable bookMoved) {}

    public LibraryContext(JobSession session, Environment around) {
        this.session = session;
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
        return session.file().path().toAbsolutePath();
    }

    /** Where the jobs are at home. */
    JobsHome home() {
        return session.home();
    }

    /** The job on screen as it was last priced. */
    Optional<Bid> bid() {
        return session.bid();
    }

    /** What the company of the job on screen has by name for a place of an item; empty where it is just typed. */
    List<WordChoice> named(String place) {
        return bid()
                .map(made -> switch (place) {
                    case "labor/crew" -> NamedChoices.crews(made);
                    case "labor/machine" -> NamedChoices.machines(made);
                    default -> List.<NamedChoice>of();
                })
                .orElse(List.of())
                .stream()
                .map(References::choice)
                .toList();
    }

    LocalDate today() {
        return around.today();
    }

    Platform platform() {
        return around.platform();
    }

    TemplateFolder templates() {
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
     * The book of a job; on any thread.
     *
     * @throws IOException if no book lies beside it or in a folder above
     */
    static BookService bookOf(Path job) throws IOException {
        return book(job.getParent());
    }

    /** The book of a folder, or else that of a job. */
    static BookService bookOf(Path folder, Path job) throws IOException {
        try {
            return BookService.near(folder);
        } catch (IOException none) {
            return bookOf(job);
        }
    }

    private static BookService book(Path folder) throws IOException {
        try {
            return BookService.near(folder);
        } catch (IOException none) {
            throw new IOException(Messages.of("library.nobook", folder), none);
        }
    }
}
