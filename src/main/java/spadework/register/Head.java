// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import spadework.disk.AtomicFile;

/**
 * The small file beside the register that says how many lines there are and how the last is sealed. A chain alone does
 * not show that whole lines were cut off at its end; this does, unless both files were changed together.
 */
record Head(int lines, String seal) {
    static final String NAME = "register.head";

    /** Longer than any head; so that a foreign file is not read into memory. */
    private static final int LONGEST = 200;

    String text() {
        return lines + " " + seal + "\n";
    }

    void write(Path folder) throws IOException {
        AtomicFile.write(folder.resolve(NAME), text().getBytes(StandardCharsets.US_ASCII));
    }

    /** The file's text as it stands; empty when there is no file. */
    static String found(Path folder) throws IOException {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file)) {
            return "";
        }
        try (var in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LONGEST), StandardCharsets.ISO_8859_1);
        }
    }
}
