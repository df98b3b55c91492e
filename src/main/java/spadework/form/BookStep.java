package spadework.form;

import java.io.IOException;
import spadework.office.BookDesk;
import spadework.office.Reply;

/** A step on the price book: asked of a desk that writes nothing first, and then of one that does. */
interface BookStep {
    Reply on(BookDesk desk) throws IOException;
}
