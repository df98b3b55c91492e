// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One writer at a time, among programs and among threads of one program. A lock of the operating system is held by the
 * whole program, so threads need one of their own before it.
 */
final class RegisterLock implements AutoCloseable {
    static final String NAME = "register.lock";

    private static final Map<Path, ReentrantLock> THREADS = new ConcurrentHashMap<>();

    private final ReentrantLock threads;
    private final FileChannel channel;

    private RegisterLock(ReentrantLock threads, FileChannel channel) {
        this.threads = threads;
        this.channel = channel;
    }

    /** Waits until nobody else reads or writes. */
    static RegisterLock toWrite(Path folder) throws IOException {
        return taken(folder, true, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /** Waits until nobody else writes. A folder that nobody has written to, or nobody may, is read without a lock. */
    static RegisterLock toRead(Path folder) throws IOException {
        return taken(folder, false, StandardOpenOption.READ);
    }

    private static RegisterLock taken(Path folder, boolean alone, StandardOpenOption... options) throws IOException {
        ReentrantLock threads = THREADS.computeIfAbsent(folder.toRealPath(), first -> new ReentrantLock());
        threads.lock();
        FileChannel channel = null;
        try {
            Path file = folder.resolve(NAME);
            if (!alone && !Files.isReadable(file)) {
                return new RegisterLock(threads, null);
            }
            channel = FileChannel.open(file, options);
            channel.lock(0, Long.MAX_VALUE, !alone);
            return new RegisterLock(threads, channel);
        } catch (IOException | RuntimeException | Error untaken) {
            threads.unlock();
            if (channel != null) {
                channel.close();
            }
            throw untaken;
        }
    }

    @Override
    public void close() throws IOException {
        try {
            if (channel != null) {
                channel.close();
            }
        } finally {
            threads.unlock();
        }
    }
}
