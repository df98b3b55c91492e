// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * A program that dies at one of its operations on the disk: that one and all later ones do not happen. Bytes that were
 * written and not forced may be lost, as when the power fails.
 */
public final class DyingDisk implements Disk.Watch, AutoCloseable {

    /** What dying looks like from inside: no code of the program catches it. */
    public static final class Death extends Error {
        private static final long serialVersionUID = 1L;

        private Death(String at) {
            super(at);
        }
    }

    /** How a program dies at a write. */
    public enum Manner {
        /** Before the first byte. */
        BEFORE,
        /** When half of the bytes are written. */
        HALF,
        /** When all are written, none forced: half of what was not forced is lost with the power. */
        POWER
    }

    private final int at;
    private final Manner manner;
    private final Set<Path> unforced = new LinkedHashSet<>();
    private int operations;
    private boolean dead;

    private DyingDisk(int at, Manner manner) {
        this.at = at;
        this.manner = manner;
        Disk.watchedBy(this);
    }

    /** Dies at the operation of that number, from 1; never with 0. */
    public static DyingDisk at(int operation, Manner manner) {
        return new DyingDisk(operation, manner);
    }

    /** How many operations there were. */
    public synchronized int operations() {
        return operations;
    }

    @Override
    public synchronized void before(Disk.Step step, Path file) throws IOException {
        next(step + " " + file.getFileName());
        if (step == Disk.Step.FORCE) {
            unforced.remove(file);
        }
    }

    @Override
    public synchronized void before(Path file, FileChannel channel, ByteBuffer content) throws IOException {
        boolean now = operations + 1 == at;
        if (now && manner != Manner.BEFORE) {
            ByteBuffer part = content.duplicate();
            part.limit(manner == Manner.HALF ? content.limit() / 2 : content.limit());
            while (part.hasRemaining()) {
                channel.write(part);
            }
        }
        unforced.add(file);
        next("WRITE " + file.getFileName());
    }

    private void next(String what) throws IOException {
        if (dead) {
            throw new Death("already dead at " + what);
        }
        operations++;
        if (operations == at) {
            dead = true;
            if (manner == Manner.POWER) {
                losePower();
            }
            throw new Death("operation " + at + ", " + what);
        }
    }

    private void losePower() throws IOException {
        for (Path file : unforced) {
            if (Files.isRegularFile(file) && file.getFileName().toString().endsWith(".part")) {
                try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                    channel.truncate(channel.size() / 2);
                }
            }
        }
    }

    @Override
    public void close() {
        Disk.unwatched();
    }
}
