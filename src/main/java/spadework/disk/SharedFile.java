// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A file that several programs change: a job, a price book, a company, state rules. It is written by one at a time,
 * and only over the bytes that the change was made from.
 */
public final class SharedFile {
    /** The lock of all such files of a folder. */
    public static final String LOCK = ".spadework.lock";

    private SharedFile() {}

    /** What is done while nobody else can write. */
    @FunctionalInterface
    public interface Work<T> {
        T done() throws IOException;
    }

    /**
     * Does something while nobody else can write the files of a folder.
     *
     * @param file one of the files of that folder
     */
    public static <T> T alone(Path file, Work<T> work) throws IOException {
        try (SharedLock lock = lock(file)) {
            return work.done();
        }
    }

    /**
     * Writes over what was read, and nothing else.
     *
     * @param basis what the file said when it was read
     * @throws ChangedElsewhere if it says something else by now; nothing is written
     */
    public static void replace(Path file, Snapshot basis, byte[] content) throws IOException {
        Path whole = file.toAbsolutePath();
        try (SharedLock lock = lock(whole)) {
            Snapshot now = Snapshot.of(whole);
            if (!now.isSame(basis)) {
                throw new ChangedElsewhere(file, now, "");
            }
            AtomicFile.write(whole, content);
        }
    }

    private static SharedLock lock(Path file) throws IOException {
        return SharedLock.toWrite(file.toAbsolutePath().resolveSibling(LOCK));
    }
}
