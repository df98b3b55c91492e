// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.ThreadLocalRandom;

/** Writes a file so that a crash leaves the old one or the new one, never half of it. */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes beside the file, forces it to disk, then takes the file's place in one step. The file gets the rights
     * that every new file of this user gets. A crash may leave a hidden file that ends in {@code .part}.
     *
     * @throws IOException if it cannot be written; the old file is then untouched
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path beside = null;
        try {
            while (beside == null) {
                beside = written(partOf(file), content);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            forceFolder(file.toAbsolutePath().getParent());
        } finally {
            if (beside != null) {
                Files.deleteIfExists(beside);
            }
        }
    }

    /** The names that unfinished files of this file may have, as a glob. */
    static String partsOf(String name) {
        return "." + name + ".*.part";
    }

    private static Path partOf(Path file) {
        String mark = Long.toHexString(ThreadLocalRandom.current().nextLong());
        return file.resolveSibling("." + file.getFileName() + "." + mark + ".part");
    }

    /** The file as written, or nothing when another writer has the name. */
    private static Path written(Path beside, byte[] content) throws IOException {
        FileChannel opened;
        try {
            opened = FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException taken) {
            return null;
        }
        try (FileChannel channel = opened) {
            writeAll(channel, content);
            channel.force(true);
            return beside;
        } catch (IOException | RuntimeException | Error unwritten) {
            Files.deleteIfExists(beside);
            throw unwritten;
        }
    }

    static void writeAll(FileChannel channel, byte[] content) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(content);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    /** Forces the folder's names to disk, where the system can do that for a folder. */
    static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            return;
        }
    }
}
