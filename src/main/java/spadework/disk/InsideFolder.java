// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** Whether a file lies in the folder in which it is named, links and all. */
public final class InsideFolder {
    private InsideFolder() {}

    /**
     * A file of a folder that is there.
     *
     * @param name of the file, or a path below the folder
     * @throws java.nio.file.NoSuchFileException if it is not there
     * @throws FileSystemException if it, or a folder on the way, is a link that leads out of the folder
     */
    public static Path existing(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        if (!file.toRealPath().startsWith(folder.toRealPath())) {
            throw leadsOut(file, folder);
        }
        return file;
    }

    /**
     * A file of a folder that may be there or not, to be written.
     *
     * @throws FileSystemException if it is a link, or a folder on the way is one that leads out of the folder
     */
    public static Path writable(Path folder, String name) throws IOException {
        Path file = folder.resolve(name);
        Path there = file.getParent();
        if (!file.normalize().startsWith(folder.normalize()) || Files.isSymbolicLink(file)) {
            throw leadsOut(file, folder);
        }
        while (!Files.exists(there, LinkOption.NOFOLLOW_LINKS) && there.startsWith(folder)) {
            there = there.getParent();
        }
        if (Files.exists(folder)
                && there.startsWith(folder)
                && !there.toRealPath().startsWith(folder.toRealPath())) {
            throw leadsOut(file, folder);
        }
        return file;
    }

    /**
     * A file that is no link out of the folder in which it lies.
     *
     * @throws java.nio.file.NoSuchFileException if it is not there
     */
    public static Path itself(Path file) throws IOException {
        Path whole = file.toAbsolutePath();
        existing(whole.getParent(), whole.getFileName().toString());
        return file;
    }

    /** Whether a file is there and lies in the folder, links and all. */
    public static boolean isFile(Path folder, String name) {
        try {
            return Files.isRegularFile(existing(folder, name));
        } catch (IOException notInIt) {
            return false;
        }
    }

    private static FileSystemException leadsOut(Path file, Path folder) {
        return new FileSystemException(
                file.toString(), null, "a link that leads out of " + folder + "; put the file itself there");
    }
}
