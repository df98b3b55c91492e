// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** The lines of a file as bytes, one at a time. A line longer than any of ours is cut short and reported as such. */
final class RawLines implements Closeable {
    /** The longest line that is written, in bytes. */
    static final int LONGEST = 1 << 20;

    /**
     * A line.
     *
     * @param bytes without the line feed
     * @param ended whether a line feed follows
     * @param tooLong whether bytes were left out
     */
    record RawLine(byte[] bytes, boolean ended, boolean tooLong) {}

    private final InputStream in;

    private RawLines(InputStream in) {
        this.in = in;
    }

    static RawLines of(Path file) throws IOException {
        return new RawLines(
                Files.exists(file)
                        ? new BufferedInputStream(Files.newInputStream(file), 1 << 16)
                        : InputStream.nullInputStream());
    }

    /** The next line, or null when there is none. */
    RawLine next() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1024);
        boolean tooLong = false;
        int read = in.read();
        if (read < 0) {
            return null;
        }
        for (; read >= 0 && read != '\n'; read = in.read()) {
            if (bytes.size() < LONGEST) {
                bytes.write(read);
            } else {
                tooLong = true;
            }
        }
        return new RawLine(bytes.toByteArray(), read == '\n', tooLong);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
