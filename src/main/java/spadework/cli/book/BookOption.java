// SPDX-License-Identifier: Apache-2.0
package spadework.cli.book;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Option;
import spadework.office.book.BookService;

/** Which price book is meant. */
final class BookOption {
    @Option(
            names = "--book",
            paramLabel = "FILE",
            description = "The price book (default: the nearest price-book.json here or in a folder above).")
    private Path book;

    BookService service() throws IOException {
        return book == null ? BookService.near(Path.of("")) : BookService.at(book);
    }
}
