// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import spadework.reason.SaidInFull;

/** A folder is no longer what it was when a step began; nothing was written over it. */
public final class FolderMoved extends IOException implements SaidInFull {
    private static final long serialVersionUID = 1L;

    private final transient StoredFolder now;

    /** @param paths what is different by now */
    public FolderMoved(StoredFolder now, Set<String> paths) {
        super(StoreText.of(
                "moved",
                now.name().equals(StoredFolder.FIRM) ? StoreText.of("firm") : now.name(),
                String.join(", ", new TreeSet<>(paths))));
        this.now = now;
    }

    /** The folder as it is now. */
    public StoredFolder now() {
        return now;
    }
}
