// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A run of the program in which no disk is changed. Whole files that would be written are noted and left alone. A file
 * that only grows cannot be gone on from without the line that was not written, so the run ends there ({@link Ended}):
 * whatever refuses a step refuses it before that.
 */
public final class DryRun implements AutoCloseable {
    private static volatile DryRun current;

    private final Set<Path> files = new LinkedHashSet<>();

    private DryRun() {}

    /** From here until it is closed nothing is written by this program. */
    public static DryRun begin() {
        DryRun run = new DryRun();
        current = run;
        return run;
    }

    /** Nothing more can be told without writing. */
    public static final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private Ended(Path file) {
            super(file + " would be written");
        }
    }

    static boolean isUnderWay() {
        return current != null;
    }

    /** Whether a whole file is only noted, not written. */
    static boolean takes(Path file) {
        DryRun run = current;
        if (run == null) {
            return false;
        }
        run.note(file);
        return true;
    }

    /** Ends a dry run at a change that what follows would build on. */
    static void end(Path file) {
        DryRun run = current;
        if (run != null) {
            run.note(file);
            throw new Ended(file);
        }
    }

    private synchronized void note(Path file) {
        files.add(file);
    }

    /** The files that would have been written, in their order. */
    public synchronized List<Path> files() {
        return new ArrayList<>(files);
    }

    @Override
    public void close() {
        current = null;
    }
}
