// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.store.FileKind;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderFiles;

/** What a copy of a folder said before a step, to put it back where the office did not get what the step did. */
final class FolderBefore {
    private final Path root;
    private final StoredFolder before;
    private final Map<String, byte[]> bytes = new TreeMap<>();

    /** @param before the folder, which is what lies on the disk */
    FolderBefore(Path root, StoredFolder before) throws IOException {
        this.root = root;
        this.before = before;
        for (StoredFile file : before.files()) {
            // Pictures and papers are added by a step, and never written over.
            if (!file.path().contains("/") && FileKind.of(before.name(), file.path()) != FileKind.PICTURE) {
                bytes.put(file.path(), Files.readAllBytes(InsideFolder.existing(folder(), file.path())));
            }
        }
    }

    private Path folder() {
        return root.resolve(before.name());
    }

    /** Puts it back, as far as a step may have changed it. */
    void putBack() throws IOException {
        for (String path : FolderFiles.read(root, before.name()).differing(before)) {
            Path file = InsideFolder.writable(folder(), path);
            if (bytes.containsKey(path)) {
                AtomicFile.write(file, bytes.get(path));
            } else if (before.file(path).isEmpty()) {
                Disk.delete(file);
            }
        }
    }
}
