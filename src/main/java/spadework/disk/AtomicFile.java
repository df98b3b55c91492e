// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ThreadLocalRandom;

/** Writes a file so that a crash leaves the old one or the new one, never half of it. */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes beside the file, forces it to disk, then takes the file's place in one step. The file gets the rights
     * that every new file of this user gets. A crash may leave a hidden file that ends in {@code .part}.
     *
     * @throws IOException if it cannot be written, or a link stands in its place; the old file is then untouched
     */
    public static void write(Path file, byte[] content) throws IOException {
        if (Files.isSymbolicLink(file)) {
            throw new FileSystemException(
                    file.toString(), null, "a link, which is not written through; name the file that it leads to");
        }
        if (DryRun.takes(file)) {
            return;
        }
        Path beside = null;
        try {
            while (beside == null) {
                beside = written(partOf(file), content);
            }
            Disk.move(beside, file);
            Disk.forceFolder(file.toAbsolutePath().getParent());
        } finally {
            if (beside != null) {
                Disk.delete(beside);
            }
        }
    }

    /** The names that unfinished files of this file may have, as a glob. */
    public static String partsOf(String name) {
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
            opened = Disk.create(beside);
        } catch (FileAlreadyExistsException taken) {
            return null;
        }
        try (FileChannel channel = opened) {
            Disk.write(beside, channel, content);
            Disk.force(beside, channel);
            return beside;
        } catch (IOException | RuntimeException | Error unwritten) {
            Disk.delete(beside);
            throw unwritten;
        }
    }
}
