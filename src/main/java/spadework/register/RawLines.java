// SPDX-License-Identifier: Apache-2.0
package spadework.register;

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
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int end;

    private RawLines(InputStream in) {
        this.in = in;
    }

    static RawLines of(Path file) throws IOException {
        return new RawLines(Files.exists(file) ? Files.newInputStream(file) : InputStream.nullInputStream());
    }

    /** The next line, or null when there is none. */
    RawLine next() throws IOException {
        if (!more()) {
            return null;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1024);
        boolean tooLong = false;
        do {
            int from = at;
            while (at < end && buffer[at] != '\n') {
                at++;
            }
            int kept = Math.min(at - from, LONGEST - bytes.size());
            bytes.write(buffer, from, kept);
            tooLong |= kept < at - from;
            if (at < end) {
                at++;
                return new RawLine(bytes.toByteArray(), true, tooLong);
            }
        } while (more());
        return new RawLine(bytes.toByteArray(), false, tooLong);
    }

    /** Whether a byte is left, after reading on where the buffer is used up. */
    private boolean more() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(buffer));
        }
        return at < end;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
