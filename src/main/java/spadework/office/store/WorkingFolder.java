// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderFiles;

/**
 * A copy of folders of an office on this machine, in which steps are taken as in any folder. Before a step it is made
 * what the office has; afterwards the office gets what the step changed, all of it or nothing.
 */
public final class WorkingFolder {
    private final Store store;
    private final Path root;

    /** @param root where the copies lie; it belongs to this program alone */
    public WorkingFolder(Store store, Path root) {
        this.store = store;
        this.root = root.toAbsolutePath().normalize();
    }

    /** A step in a job's folder on this machine. */
    @FunctionalInterface
    public interface Step<T> {
        T in(Path folder) throws IOException;
    }

    /**
     * Takes a step in a job of the office while nobody else takes one there. A step that throws has changed nothing in
     * the office.
     *
     * @throws spadework.store.FolderMoved if somebody changed the job or the firm's folder in between after all
     */
    public <T> T step(String job, Step<T> step) throws IOException {
        return store.alone(job, () -> {
            StoredFolder firm = fetch(StoredFolder.FIRM);
            StoredFolder before = fetch(job);
            T done = step.in(path(job));
            keep(before);
            keep(firm);
            return done;
        });
    }

    /** Makes the copy of a folder what the office has. */
    public StoredFolder fetch(String name) throws IOException {
        StoredFolder wanted = store.folder(name);
        StoredFolder here = FolderFiles.read(root, name);
        Path folder = path(name);
        Disk.folders(folder);
        Set<String> differing = new HashSet<>(here.differing(wanted));
        for (StoredFile file : wanted.files()) {
            if (differing.remove(file.path())) {
                Path target = InsideFolder.writable(folder, file.path());
                Disk.folders(target.getParent());
                AtomicFile.write(target, store.content(name, file));
            }
        }
        for (String left : differing) {
            Disk.delete(InsideFolder.writable(folder, left));
        }
        return wanted;
    }

    /** Gives the office what is different in the copy by now. */
    public StoredFolder keep(StoredFolder before) throws IOException {
        FolderChange change = changed(before).orElse(null);
        return change == null ? before : store.write(change);
    }

    /** What was changed in the copy since it was made. */
    Optional<FolderChange> changed(StoredFolder before) throws IOException {
        StoredFolder now = FolderFiles.read(root, before.name());
        Map<String, byte[]> written = new TreeMap<>();
        Set<String> deleted = new HashSet<>();
        for (String path : now.differing(before)) {
            if (now.file(path).isPresent()) {
                written.put(path, Files.readAllBytes(InsideFolder.existing(path(before.name()), path)));
            } else {
                deleted.add(path);
            }
        }
        FolderChange change = new FolderChange(before, written, deleted);
        return change.isEmpty() ? Optional.empty() : Optional.of(change);
    }

    private Path path(String name) {
        return name.equals(StoredFolder.FIRM) ? root : root.resolve(name);
    }
}
