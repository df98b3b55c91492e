// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import spadework.disk.Disk;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.Store;
import spadework.store.StoredFolder;

/**
 * Copies of an office's folders on this machine, in which a window works as in any folder. What somebody saves, or a
 * step writes, goes to the office first or together with the copy; a copy that the office did not follow is made what
 * the office has before anybody looks at it again.
 */
public final class OfficeCopies implements JobsHome, AutoCloseable {
    private final Store store;
    private final Path root;
    private final String who;
    private final WorkingFolder copies;
    /** What the copies are copies of; one that is missing here, or may be otherwise by now, is fetched anew. */
    private final Map<String, StoredFolder> known = new HashMap<>();

    private final Set<String> open = ConcurrentHashMap.newKeySet();
    private volatile String books = "";

    /**
     * Makes copies below a folder.
     *
     * @param root belongs to this program alone
     * @param who is told to others who have the same job open
     * @throws IOException if the office has no company yet, by which jobs are priced
     */
    public OfficeCopies(Store store, Path root, String who) throws IOException {
        this.store = store;
        this.root = root.toAbsolutePath().normalize();
        this.who = who;
        this.copies = new WorkingFolder(store, this.root);
        Disk.folders(this.root);
        StoredFolder firm = current(StoredFolder.FIRM);
        copies.checkFirm(firm);
        if (firm.file("company.json").isEmpty()) {
            throw new OfficeRefusal("copies.nofirm", store.called());
        }
    }

    @Override
    public Optional<Path> tree() {
        return Optional.of(root);
    }

    /** The folder of the office that a job lies in; nothing for a job of this machine. */
    private Optional<String> name(Path job) {
        Path whole = job.toAbsolutePath().normalize();
        Path folder = whole.endsWith(FileKind.JOB_FILE) ? whole.getParent() : whole;
        return folder.startsWith(root) && !folder.equals(root)
                ? Optional.of(root.relativize(folder).toString().replace('\\', '/'))
                : Optional.empty();
    }

    private Path file(String name) {
        return root.resolve(name).resolve(FileKind.JOB_FILE);
    }

    @Override
    public boolean isShared(Path place) {
        return place.toAbsolutePath().normalize().startsWith(root);
    }

    @Override
    public String called() {
        return store.called();
    }

    @Override
    public synchronized Path begin(String job, int year) throws IOException {
        return file(JobBeginning.begin(store, job, year));
    }

    @Override
    public synchronized List<FoundJob> found(String words, int most) throws IOException {
        List<String> names =
                store.find(words, most).stream().map(FolderHead::name).toList();
        current(StoredFolder.FIRM);
        Map<String, String> versions = store.versions(names);
        List<FoundJob> found = new ArrayList<>();
        for (String name : names) {
            String version = versions.getOrDefault(name, "");
            StoredFolder whole = known.get(name);
            if (whole == null) {
                copies.fetchToRead(name, version);
            } else if (!whole.version().equals(version)) {
                current(name);
            }
            found.add(new FoundJob(file(name), version + books));
        }
        return found;
    }

    @Override
    public synchronized void refreshAll(Path folder) throws IOException {
        if (!folder.toAbsolutePath().normalize().startsWith(root)) {
            return;
        }
        current(StoredFolder.FIRM);
        Set<String> whole = Set.copyOf(known.keySet());
        copies.fetchAllToRead(whole);
        for (String name : whole) {
            current(name);
        }
    }

    @Override
    public synchronized void refresh(Path job) throws IOException {
        Optional<String> name = name(job);
        if (name.isPresent()) {
            current(StoredFolder.FIRM);
            if (current(name.get()).files().isEmpty()) {
                throw new OfficeRefusal("visit.unknown", name.get());
            }
        }
    }

    /** A folder as the office has it, and its copy. */
    private StoredFolder current(String name) throws IOException {
        StoredFolder copy = known.get(name);
        if (copy == null || !copy.version().equals(store.versions(List.of(name)).get(name))) {
            known.remove(name);
            copy = copies.fetch(name);
            known.put(name, copy);
        }
        if (name.equals(StoredFolder.FIRM)) {
            books = copy.version();
        }
        return copy;
    }

    @Override
    public synchronized JobFile.Saved save(JobFile file, String text) throws IOException {
        Optional<String> name = name(file.path());
        return name.isEmpty() ? file.save(text) : store.alone(name.get(), () -> saved(name.get(), file, text));
    }

    private JobFile.Saved saved(String name, JobFile file, String text) throws IOException {
        StoredFolder before = current(name);
        if (file.isChangedOnDisk()) {
            return JobFile.Saved.CHANGED_ON_DISK;
        }
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        FolderChange change = new FolderChange(before, Map.of(FileKind.JOB_FILE, bytes), Set.of());
        known.remove(name);
        StoredFolder after = change.made().equals(before) ? before : store.write(change);
        JobFile.Saved saved = file.save(text);
        known.put(name, after);
        return saved;
    }

    @Override
    public synchronized <T> T step(Path job, Work<T> work) throws IOException {
        Optional<String> name = name(job);
        return name.isEmpty() ? work.done() : store.alone(name.get(), () -> taken(name.get(), work));
    }

    private <T> T taken(String name, Work<T> work) throws IOException {
        StoredFolder firm = current(StoredFolder.FIRM);
        StoredFolder before = current(name);
        List<FolderBefore> said =
                new ArrayList<>(List.of(new FolderBefore(root, firm), new FolderBefore(root, before)));
        known.remove(name);
        known.remove(StoredFolder.FIRM);
        boolean kept = false;
        try {
            T done = work.done();
            known.put(name, copies.keep(before));
            known.put(StoredFolder.FIRM, copies.keep(firm));
            kept = true;
            return done;
        } finally {
            if (!kept) {
                known.remove(name);
                for (FolderBefore one : said) {
                    one.putBack();
                }
            }
        }
    }

    @Override
    public String books() {
        return books;
    }

    @Override
    public List<String> others(Path job) throws IOException {
        Optional<String> name = name(job);
        if (name.isEmpty()) {
            return List.of();
        }
        open.add(name.get());
        store.open(name.get(), who);
        return store.openTo(name.get(), who);
    }

    @Override
    public void left(Path job) throws IOException {
        Optional<String> name = name(job);
        if (name.isPresent() && open.remove(name.get())) {
            store.left(name.get(), who);
        }
    }

    /** Notes that nothing is open here any more, if the office can still be told. */
    @Override
    public void close() {
        try {
            for (String name : open) {
                store.left(name, who);
            }
        } catch (IOException away) {
            // Two minutes later nobody is told any more that it is open.
            return;
        } finally {
            open.clear();
        }
    }
}
