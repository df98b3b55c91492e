// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/**
 * A disk without room from one of its operations on: half of the bytes get onto it, and nothing new after that. As in
 * Java, who makes a file is told its name, and who writes to one is not.
 */
public final class FullDisk implements Disk.Watch, AutoCloseable {
    private final int from;
    private int operations;

    private FullDisk(int from) {
        this.from = from;
        Disk.watchedBy(this);
    }

    /** Full from the operation of that number, from 1; never with {@code Integer.MAX_VALUE}. */
    public static FullDisk from(int operation) {
        return new FullDisk(operation);
    }

    /** How many operations took room. */
    public synchronized int operations() {
        return operations;
    }

    @Override
    public synchronized void before(Disk.Step step, Path file) throws IOException {
        boolean takesRoom = step == Disk.Step.CREATE || step == Disk.Step.FOLDER;
        if (takesRoom && ++operations >= from) {
            throw new FileSystemException(file.toString(), null, "No space left on device");
        }
    }

    @Override
    public synchronized void before(Path file, FileChannel channel, ByteBuffer content) throws IOException {
        if (content.hasRemaining() && ++operations >= from) {
            ByteBuffer part = content.duplicate();
            part.limit(content.limit() / 2);
            while (part.hasRemaining()) {
                channel.write(part);
            }
            throw new IOException("No space left on device");
        }
    }

    @Override
    public void close() {
        Disk.unwatched();
    }
}
