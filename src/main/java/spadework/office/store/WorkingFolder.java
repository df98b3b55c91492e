// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoreText;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderFiles;

/**
 * A copy of folders of an office on this machine, in which steps are taken as in any folder. Before a step it is made
 * what the office has; afterwards the office gets what the step changed, all of it or nothing.
 */
public final class WorkingFolder {
    /** Beside what was fetched to be read alone: the version that it is of. */
    private static final String READ = ".office-version";

    private static final Set<FileKind> READ_FROM =
            EnumSet.of(FileKind.JOB, FileKind.REGISTER, FileKind.STATE_RULES, FileKind.KEPT);

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
        Disk.delete(path(name).resolve(READ));
        return fetched(name, file -> true);
    }

    /**
     * Makes the copy of a job's folder what the office has, as far as it takes to read and price it: without pictures
     * and printed papers. Nothing is asked for that is here already.
     *
     * @param version of the folder in the office
     */
    void fetchToRead(String name, String version) throws IOException {
        Path mark = path(name).resolve(READ);
        if (!Files.isRegularFile(mark) || !Files.readString(mark).equals(version)) {
            StoredFolder there = fetched(name, file -> READ_FROM.contains(FileKind.of(name, file.path())));
            AtomicFile.write(mark, there.version().getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** The same for several jobs of the office. */
    void fetchToRead(List<String> names) throws IOException {
        Map<String, String> versions = store.versions(names);
        for (String name : names) {
            fetchToRead(name, versions.getOrDefault(name, ""));
        }
    }

    /**
     * The same for all of them; what the office has no more, or keeps from whoever asks, is here no more either.
     *
     * @param whole jobs that are fetched whole, and not here
     */
    void fetchAllToRead(Set<String> whole) throws IOException {
        List<String> names = store.list().stream().map(FolderHead::name).toList();
        fetchToRead(names.stream().filter(name -> !whole.contains(name)).toList());
        Set<String> gone = new TreeSet<>(FolderFiles.jobs(root));
        names.forEach(gone::remove);
        for (String name : gone) {
            fetch(name);
        }
    }

    /**
     * Does something over all jobs of the office, which reads them; of the firm's own files the office gets what was
     * changed.
     */
    public <T> T overAll(Step<T> step) throws IOException {
        StoredFolder firm = fetch(StoredFolder.FIRM);
        checkFirm(firm);
        fetchAllToRead(Set.of());
        T done = step.in(root);
        keep(firm);
        return done;
    }

    /**
     * Holds that jobs can be priced by what is seen of the firm's files.
     *
     * @throws StoreFailure if they are kept from whoever asks
     */
    void checkFirm(StoredFolder firm) throws IOException {
        if (firm.files().isEmpty() && !store.list().isEmpty()) {
            throw withheld();
        }
    }

    /** Not everybody may read what a job is priced from. */
    private StoreFailure withheld() {
        return new StoreFailure(StoreFailure.Why.NOT_ALLOWED, null, store.called(), StoreText.of("you"));
    }

    /**
     * Holds that a job can be worked on.
     *
     * @throws StoreFailure if its file is kept from whoever asks
     * @throws IOException if there is no such job
     */
    public void checkJob(String name) throws IOException {
        StoredFolder job = store.folder(name);
        if (job.files().isEmpty()) {
            throw new OfficeRefusal("visit.unknown", name);
        }
        if (job.file(FileKind.JOB_FILE).isEmpty()) {
            throw withheld();
        }
    }

    /** Does something with the firm's own files alone. */
    public <T> T inFirm(Step<T> step) throws IOException {
        return store.alone(StoredFolder.FIRM, () -> {
            StoredFolder firm = fetch(StoredFolder.FIRM);
            if (firm.files().isEmpty()) {
                throw withheld();
            }
            T done = step.in(root);
            keep(firm);
            return done;
        });
    }

    private StoredFolder fetched(String name, Predicate<StoredFile> needed) throws IOException {
        StoredFolder wanted = store.folder(name);
        StoredFolder here = FolderFiles.read(root, name);
        Path folder = path(name);
        Disk.folders(folder);
        Set<String> differing = new HashSet<>(here.differing(wanted));
        for (StoredFile file : wanted.files()) {
            if (needed.test(file) && differing.remove(file.path())) {
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
