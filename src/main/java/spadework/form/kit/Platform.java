// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.awt.Component;
import java.awt.print.Pageable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What the window asks of the machine: where a file goes, and paper. */
public interface Platform {

    /** Where a file is to be saved; nothing if the person thought better of it. */
    Optional<Path> saveAs(Component over, Path suggested);

    /** Which job to open. */
    Optional<Path> open(Component over, Path from);

    /** Which workbook or list to read. */
    default Optional<Path> openTable(Component over, Path from) {
        return open(over, from);
    }

    /** Which pictures to take. */
    default List<Path> openPictures(Component over, Path from) {
        return open(over, from).stream().toList();
    }

    /** Which scan or photo of a signed paper to take. */
    default Optional<Path> openPaper(Component over, Path from) {
        return open(over, from);
    }

    /** Which folder to use. */
    Optional<Path> folder(Component over, Path from);

    /**
     * Asks which printer, and prints.
     *
     * @param printed told on the window's thread when the pages were handed over, or are not needed any more
     */
    void print(Pageable pages, String title, Consumer<Printed> printed);

    /** Opens a file with the program that the machine has for it. */
    default void open(Path file) throws IOException {
        throw new IOException(file + ": this machine opens no files");
    }

    /** Shows a file among the others of its folder. */
    default void show(Path file) throws IOException {
        open(file.toAbsolutePath().getParent());
    }

    /** What came of printing. */
    sealed interface Printed {
        /** The pages are with the printer. */
        record Done() implements Printed {}

        /** Somebody thought better of it. */
        record Canceled() implements Printed {}

        /** The printer would not. */
        record Failed(Exception why) implements Printed {}
    }
}
