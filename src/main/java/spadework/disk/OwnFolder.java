// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;

/** A folder that one running program has for itself, found again by the next one when that has ended. */
public final class OwnFolder implements AutoCloseable {
    private static final String LOCK = ".owned.lock";

    private final Path path;
    private final FileChannel channel;

    private OwnFolder(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /** The first of {@code name-1}, {@code name-2} … below a folder that no running program has. */
    public static OwnFolder below(Path folder, String name) throws IOException {
        for (int i = 1; ; i++) {
            Path path = folder.resolve(name + "-" + i);
            Disk.folders(path);
            FileChannel channel = Disk.open(path.resolve(LOCK));
            if (isFree(channel)) {
                return new OwnFolder(path, channel);
            }
            channel.close();
        }
    }

    private static boolean isFree(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException elsewhereInThisProgram) {
            return false;
        }
    }

    public Path path() {
        return path;
    }

    /** Lets others have it; what lies there stays. */
    @Override
    public void close() throws IOException {
        channel.close();
    }
}
