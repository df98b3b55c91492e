// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** What a file said when it was read; or that it was not there. */
public final class Snapshot {
    /** No file. */
    public static final Snapshot NONE = new Snapshot(null);

    private final byte[] bytes;

    private Snapshot(byte[] bytes) {
        this.bytes = bytes;
    }

    /**
     * A file as it is now.
     *
     * @throws IOException if it is there and cannot be read
     */
    public static Snapshot of(Path file) throws IOException {
        try {
            return new Snapshot(Files.readAllBytes(file));
        } catch (NoSuchFileException notThere) {
            return NONE;
        }
    }

    /** A file that says this. */
    public static Snapshot of(byte[] bytes) {
        return new Snapshot(bytes.clone());
    }

    /** A file that says this, in UTF-8. */
    public static Snapshot of(String text) {
        return new Snapshot(text.getBytes(StandardCharsets.UTF_8));
    }

    public boolean isThere() {
        return bytes != null;
    }

    /** The text, in UTF-8 and without a byte order mark. */
    public Optional<String> text() {
        return Optional.ofNullable(bytes)
                .map(all -> new String(all, StandardCharsets.UTF_8))
                .map(text -> text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    public boolean isSame(Snapshot other) {
        return Arrays.equals(bytes, other.bytes);
    }
}
