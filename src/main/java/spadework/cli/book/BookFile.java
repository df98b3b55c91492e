package spadework.cli.book;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import spadework.office.BookDesk;

/** Which price book is meant. */
final class BookFile {
    @Option(
            names = "--book",
            paramLabel = "FILE",
            description = "The price book (default: the nearest price-book.json here or in a folder above).")
    private Path book;

    BookDesk desk() throws IOException {
        return BookDesk.at(Optional.ofNullable(book));
    }
}
