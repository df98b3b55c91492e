// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/**
 * Each operation that changes a disk, one at a time. A watch sees every one of them before it happens, so that a test
 * can have the program die at any of them.
 */
public final class Disk {
    private static final Watch NOBODY = (step, file) -> {};

    private static volatile Watch watch = NOBODY;

    private Disk() {}

    /** What is about to happen to a file. */
    public enum Step {
        CREATE,
        WRITE,
        TRUNCATE,
        FORCE,
        MOVE,
        DELETE,
        FOLDER,
        FORCE_FOLDER
    }

    /** Looks on before anything is changed; what it throws keeps the operation from happening. */
    @FunctionalInterface
    public interface Watch {
        void before(Step step, Path file) throws IOException;

        /** Looks on before bytes are written; it may write a part of them itself and then throw. */
        default void before(Path file, FileChannel channel, ByteBuffer content) throws IOException {
            before(Step.WRITE, file);
        }
    }

    /** Has all operations of this program watched. */
    static void watchedBy(Watch by) {
        watch = by;
    }

    /** Has nothing watched any more. */
    static void unwatched() {
        watch = NOBODY;
    }

    /**
     * Makes folders, and those above them.
     *
     * @throws IOException if something that is no folder stands in the way
     */
    public static void folders(Path folder) throws IOException {
        if (!Files.isDirectory(folder) && !DryRun.isUnderWay()) {
            watch.before(Step.FOLDER, folder);
            Files.createDirectories(folder);
        }
    }

    /**
     * A new file to write to.
     *
     * @throws java.nio.file.FileAlreadyExistsException if something has the name
     */
    static FileChannel create(Path file) throws IOException {
        DryRun.end(file);
        watch.before(Step.CREATE, file);
        return FileChannel.open(
                file, Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW, LinkOption.NOFOLLOW_LINKS));
    }

    /** A file to add to, made where there is none. A link is not followed. */
    public static FileChannel open(Path file) throws IOException {
        DryRun.end(file);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            watch.before(Step.CREATE, file);
        }
        return FileChannel.open(
                file, Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE, LinkOption.NOFOLLOW_LINKS));
    }

    /** Cuts a file off behind so many bytes. */
    public static void truncate(Path file, FileChannel channel, long length) throws IOException {
        if (channel.size() > length) {
            watch.before(Step.TRUNCATE, file);
            channel.truncate(length);
        }
    }

    /** Writes all the bytes where the channel stands. */
    public static void write(Path file, FileChannel channel, byte[] content) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(content);
        try {
            watch.before(file, channel, buffer);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        } catch (IOException unwritten) {
            throw named(file, unwritten);
        }
    }

    /** A channel does not know the file that it writes to, and a message has to. */
    private static IOException named(Path file, IOException unwritten) {
        return unwritten instanceof FileSystemException
                ? unwritten
                : new FileSystemException(file.toString(), null, unwritten.getMessage());
    }

    /** Forces what was written to the disk. */
    public static void force(Path file, FileChannel channel) throws IOException {
        watch.before(Step.FORCE, file);
        channel.force(true);
    }

    /** Puts a file in the place of another in one step. */
    static void move(Path from, Path to) throws IOException {
        watch.before(Step.MOVE, to);
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Takes a file away, if it is there. */
    public static void delete(Path file) throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            DryRun.end(file);
            watch.before(Step.DELETE, file);
            Files.deleteIfExists(file);
        }
    }

    /** Forces a folder's names to disk, where the system can do that for a folder. */
    public static void forceFolder(Path folder) throws IOException {
        watch.before(Step.FORCE_FOLDER, folder);
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            return;
        }
    }
}
