// SPDX-License-Identifier: Apache-2.0
package spadework.form.library;

import java.io.IOException;
import spadework.office.book.BookService;
import spadework.office.reply.Reply;

/** A step on the price book: asked of a service that writes nothing first, and then of one that does. */
public interface BookEdit {
    Reply on(BookService session) throws IOException;
}
