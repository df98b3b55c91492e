// SPDX-License-Identifier: Apache-2.0
package spadework.store.folder;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.disk.SharedFile;
import spadework.register.Sha256;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.FolderMoved;
import spadework.store.FolderSummary;
import spadework.store.FolderVersion;
import spadework.store.RegisterGrowth;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/** An office in folders of a disk. One writer at a time, by a lock file of the folder; no former states are kept. */
public final class FolderStore implements Store {
    private static final String LOCKED = "step";

    private final Path root;
    private final FolderNumbers numbers;

    /** @param root the folder in which the jobs lie; it may have nothing in it yet */
    public FolderStore(Path root) {
        this.root = root.toAbsolutePath().normalize();
        this.numbers = new FolderNumbers(this.root);
    }

    @Override
    public List<FolderHead> list() throws IOException {
        List<FolderHead> heads = new ArrayList<>();
        for (FolderSummary summary : summaries()) {
            heads.add(summary.head());
        }
        return heads;
    }

    @Override
    public List<FolderHead> find(String words, int most) throws IOException {
        List<String> wanted = Arrays.stream(words.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        List<FolderHead> heads = new ArrayList<>();
        for (FolderSummary summary : summaries()) {
            List<String> there =
                    Arrays.asList(summary.words().toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"));
            if (heads.size() < most
                    && wanted.stream().allMatch(word -> there.stream().anyMatch(one -> one.startsWith(word)))) {
                heads.add(summary.head());
            }
        }
        return heads;
    }

    private List<FolderSummary> summaries() throws IOException {
        List<FolderSummary> all = new ArrayList<>();
        for (String name : Files.isDirectory(root) ? FolderFiles.jobs(root) : List.<String>of()) {
            Path folder = FolderFiles.at(root, name);
            Path chain = folder.resolve(FileKind.CHAIN);
            all.add(FolderSummary.of(
                    name,
                    Files.readAllBytes(InsideFolder.existing(folder, "job.json")),
                    Files.isRegularFile(chain) ? Files.readAllBytes(chain) : new byte[0]));
        }
        return all;
    }

    @Override
    public Map<String, String> versions(List<String> names) throws IOException {
        Map<String, String> versions = new TreeMap<>();
        for (String name : names) {
            StoredFolder now = folder(name);
            if (!now.files().isEmpty()) {
                versions.put(name, now.version());
            }
        }
        return versions;
    }

    @Override
    public int lastNumber(int year) throws IOException {
        return alone(StoredFolder.FIRM, () -> numbers.last(year));
    }

    @Override
    public StoredFolder folder(String name) throws IOException {
        return FolderFiles.read(root, name);
    }

    @Override
    public byte[] content(String name, StoredFile file) throws IOException {
        Path folder = FolderFiles.at(root, name);
        byte[] bytes = Files.readAllBytes(InsideFolder.existing(folder, file.path()));
        if (!Sha256.of(bytes).equals(file.sha256())) {
            throw new NoSuchFileException(folder.resolve(file.path()).toString());
        }
        return bytes;
    }

    @Override
    public StoredFolder write(FolderChange change) throws IOException {
        try {
            return writtenAlone(change);
        } catch (FileSystemException unwritten) {
            throw full(unwritten);
        }
    }

    private StoredFolder writtenAlone(FolderChange change) throws IOException {
        return alone(change.name(), () -> {
            StoredFolder now = folder(change.name());
            if (!now.version().equals(change.basis().version())) {
                throw new FolderMoved(now, now.differing(change.basis()));
            }
            if (change.written().containsKey(FileKind.CHAIN) || change.deleted().contains(FileKind.CHAIN)) {
                byte[] before = now.file(FileKind.CHAIN).isPresent()
                        ? content(change.name(), now.file(FileKind.CHAIN).get())
                        : new byte[0];
                byte[] after = change.written().getOrDefault(FileKind.CHAIN, new byte[0]);
                RegisterGrowth.check(change.name(), before, after);
            }
            byte[] job = change.written().get(FileKind.JOB_FILE);
            if (job != null && !change.name().equals(StoredFolder.FIRM)) {
                return alone(StoredFolder.FIRM, () -> {
                    checkNumber(change.name(), job);
                    return written(change);
                });
            }
            return written(change);
        });
    }

    private StoredFolder written(FolderChange change) throws IOException {
        FolderFiles.write(root, change);
        return folder(change.name());
    }

    private void checkNumber(String name, byte[] job) throws IOException {
        String number = FolderSummary.of(name, job, new byte[0]).head().number();
        if (numbers.take(name, number).isPresent()) {
            throw new StoreFailure(StoreFailure.Why.NUMBER_TAKEN, null, name);
        }
    }

    private IOException full(FileSystemException unwritten) {
        String reason = String.valueOf(unwritten.getReason()).toLowerCase(Locale.ROOT);
        boolean full = Set.of("no space", "disk full", "quota").stream().anyMatch(reason::contains);
        return full ? new StoreFailure(StoreFailure.Why.FULL, unwritten, called()) : unwritten;
    }

    @Override
    public <T> T alone(String name, Work<T> work) throws IOException {
        Path folder = FolderFiles.at(root, name);
        Disk.folders(folder);
        return SharedFile.alone(folder.resolve(LOCKED), work::done);
    }

    @Override
    public List<FolderVersion> history(String name) throws IOException {
        StoredFolder now = folder(name);
        if (now.files().isEmpty()) {
            return List.of();
        }
        Instant at = Instant.EPOCH;
        for (StoredFile file : now.files()) {
            Instant changed = Files.getLastModifiedTime(
                            FolderFiles.at(root, name).resolve(file.path()))
                    .toInstant();
            at = changed.isAfter(at) ? changed : at;
        }
        return List.of(new FolderVersion(1, now.version(), at, "", ""));
    }

    @Override
    public void open(String name, String who) {
        // Nobody can tell who reads a folder.
    }

    @Override
    public void left(String name, String who) {
        // Nobody could tell that it was open.
    }

    @Override
    public List<String> openTo(String name, String who) {
        return List.of();
    }

    @Override
    public String called() {
        return root.toString();
    }

    @Override
    public void close() {
        // Nothing is held between calls.
    }
}
