// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** A file is no longer what it was when it was read; nothing was written over it. */
public final class ChangedElsewhere extends FileSystemException {
    private static final long serialVersionUID = 1L;

    private final transient Snapshot now;

    /** @param what was changed, in words; empty where nobody can tell */
    public ChangedElsewhere(Path file, Snapshot now, String what) {
        super(
                file.toString(),
                null,
                "changed by another program since it was read" + (what.isEmpty() ? "" : " (" + what + ")")
                        + "; nothing was written; look at it and do it again");
        this.now = now;
    }

    /** What the file says now. */
    public Snapshot now() {
        return now;
    }
}
