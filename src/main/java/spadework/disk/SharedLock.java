// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One writer at a time, among programs and among threads of one program, by a lock file. The operating system gives
 * the lock back when a program dies, so none is ever left behind; the file itself stays and means nothing.
 *
 * <p>The system's lock belongs to the whole program and to the file itself, whatever names it has: two folders that
 * are hard-linked copies of each other share it. So threads need a lock of their own before it, one for each file and
 * not for each name. A thread that holds a lock may take it again.
 */
public final class SharedLock implements AutoCloseable {
    private static final String SECONDS = "spadework.lockSeconds";
    private static final int PAUSE_MILLIS = 5;
    /** The byte of the gate; all before it are the file's. No lock file is ever so long. */
    private static final long GATE = Long.MAX_VALUE - 1;

    private static final Map<Object, Held> ALL = new HashMap<>();

    /** The lock of one file in this program. */
    private static final class Held {
        private final ReentrantLock threads = new ReentrantLock(true);
        private FileChannel channel;
        private int depth;
        private boolean alone;
    }

    private final Held held;

    private SharedLock(Held held) {
        this.held = held;
    }

    /**
     * Waits until nobody else reads or writes. In a dry run it is read, and no lock is made.
     *
     * @param file of the lock; made where there is none
     * @throws IOException if it cannot be made, or another program does not let go of it
     */
    public static SharedLock toWrite(Path file) throws IOException {
        if (DryRun.isUnderWay()) {
            return toRead(file);
        }
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(folder.toString());
        }
        return taken(file, true);
    }

    /** Waits until nobody else writes. Where nobody has written yet, or nobody may, it is read without a lock. */
    public static SharedLock toRead(Path file) throws IOException {
        return Files.isReadable(file) ? taken(file, false) : new SharedLock(null);
    }

    private static SharedLock taken(Path file, boolean alone) throws IOException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(Long.getLong(SECONDS, 60));
        while (true) {
            Object key = key(file, alone);
            Held held;
            synchronized (ALL) {
                held = ALL.computeIfAbsent(key, first -> new Held());
            }
            lock(held, file, until);
            try {
                if (held.depth == 0) {
                    held.channel = channel(file, alone, until);
                    held.alone = alone;
                } else if (alone && !held.alone) {
                    throw new IllegalStateException("who only reads cannot write: " + file);
                }
                held.depth++;
            } catch (IOException | RuntimeException | Error untaken) {
                held.threads.unlock();
                throw untaken;
            }
            SharedLock lock = new SharedLock(held);
            if (key.equals(key(file, alone))) {
                return lock;
            }
            lock.close(); // Somebody took the file away and made a new one while we waited for the old.
        }
    }

    private static void lock(Held held, Path file, long until) throws IOException {
        try {
            if (!held.threads.tryLock(Math.max(1, until - System.nanoTime()), TimeUnit.NANOSECONDS)) {
                throw busy(file);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new FileSystemException(file.toString(), null, "waiting for another writer was broken off");
        }
    }

    /** What a file is, whatever it is called. */
    private static Object key(Path file, boolean make) throws IOException {
        // A program that closes a file loses every lock that it has on it: no thread may lock it while one makes it.
        synchronized (ALL) {
            if (make && !Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                try {
                    Disk.create(file).close();
                } catch (FileAlreadyExistsException other) {
                    // Made by another program at the same time, which is as good.
                }
            }
        }
        BasicFileAttributes attributes =
                Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        if (!attributes.isRegularFile()) {
            throw new FileSystemException(
                    file.toString(), null, "no plain file, though it has the name of a lock; take it away");
        }
        return attributes.fileKey() == null ? file.toRealPath() : attributes.fileKey();
    }

    private static FileChannel channel(Path file, boolean alone, long until) throws IOException {
        FileChannel channel = FileChannel.open(
                file,
                alone
                        ? Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)
                        : Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS));
        try {
            // Whoever holds the gate is next. Without it, who has just let go of the file takes it again before
            // anybody who waits has looked, and one of eight can wait forever.
            FileLock gate = locked(channel, file, GATE, 1, alone, until);
            locked(channel, file, 0, GATE, alone, until);
            gate.release();
            return channel;
        } catch (InterruptedException stopped) {
            channel.close();
            Thread.currentThread().interrupt();
            throw new FileSystemException(file.toString(), null, "waiting for another writer was broken off");
        } catch (IOException | RuntimeException | Error unlocked) {
            channel.close();
            throw unlocked;
        }
    }

    private static FileLock locked(FileChannel channel, Path file, long from, long length, boolean alone, long until)
            throws IOException, InterruptedException {
        while (true) {
            try {
                FileLock lock = channel.tryLock(from, length, !alone);
                if (lock != null) {
                    return lock;
                }
            } catch (OverlappingFileLockException elsewhereInThisProgram) {
                // As if another program had it.
            }
            if (System.nanoTime() > until) {
                throw busy(file);
            }
            TimeUnit.MILLISECONDS.sleep(PAUSE_MILLIS);
        }
    }

    private static FileSystemException busy(Path file) {
        return new FileSystemException(
                file.toString(),
                null,
                "held by another program for " + Long.getLong(SECONDS, 60)
                        + " seconds; close the other Spadework, or wait for it, and do it again; nothing was written");
    }

    @Override
    public void close() throws IOException {
        if (held == null) {
            return;
        }
        try {
            held.depth--;
            if (held.depth == 0) {
                held.channel.close();
            }
        } finally {
            held.threads.unlock();
        }
    }
}
