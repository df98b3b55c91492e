// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.awt.GraphicsEnvironment;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import spadework.form.Forms;
import spadework.office.reply.TemplateFolder;

/**
 * The command {@code form} as it is given most often: alone, or with a job that is there. It means the same as by the
 * command line's own way, and opens the window without reading all the other commands first.
 */
final class PlainForm {
    private static final String NAME = "form";

    private PlainForm() {}

    /** Whether a command line is one; anything else, and all that may be wrong with it, goes the usual way. */
    static boolean is(String... arguments) {
        return arguments.length > 0
                && arguments[0].equals(NAME)
                && (arguments.length == 1
                        || (arguments.length == 2
                                && arguments[1].matches("[^-@].*")
                                && Files.exists(Path.of(arguments[1]))))
                && !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window and comes back when the last one is closed. */
    static void open(String... arguments) throws InterruptedException {
        Forms.loadEarly();
        if (arguments.length == 1) {
            Forms.open(TemplateFolder.NONE, LocalDate.now());
        } else {
            Forms.open(Path.of(arguments[1]), TemplateFolder.NONE, LocalDate.now());
        }
    }
}
