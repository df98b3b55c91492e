// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spadework.register.Sha256;

/**
 * What a step changed in a folder. It is written whole, and only over the state that the step began with.
 *
 * @param basis what the folder was when the step began
 * @param written bytes of new and changed files, by path
 * @param deleted paths of files that are no more
 */
public record FolderChange(StoredFolder basis, Map<String, byte[]> written, Set<String> deleted) {

    public FolderChange {
        written = Collections.unmodifiableMap(new TreeMap<>(written));
        deleted = Collections.unmodifiableSet(new TreeSet<>(deleted));
    }

    /** The folder that it is made to. */
    public String name() {
        return basis.name();
    }

    /** The folder once it is written. */
    public StoredFolder made() {
        Map<String, StoredFile> files = new TreeMap<>();
        basis.files().forEach(file -> files.put(file.path(), file));
        deleted.forEach(files::remove);
        written.forEach((path, bytes) -> files.put(path, new StoredFile(path, Sha256.of(bytes), bytes.length)));
        return new StoredFolder(name(), List.copyOf(files.values()));
    }

    public boolean isEmpty() {
        return written.isEmpty() && deleted.isEmpty();
    }
}
