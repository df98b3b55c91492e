// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.draft.Draft;
import spadework.draft.DraftMerge;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderName;
import spadework.store.Store;
import spadework.store.StoreText;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderFiles;

/** A job taken along to where there is no signal, and brought back. */
public final class Visit {
    /** What was taken along lies beside it, hidden, so that it can be told what changed. */
    private static final String BASIS = ".office-basis";

    private final Store store;

    public Visit(Store store) {
        this.store = store;
    }

    /** Which side is taken where both changed the same field. */
    public enum Side {
        /** Nothing is written, and the fields are shown. */
        NEITHER,
        /** What was changed on the visit. */
        MINE,
        /** What was changed in the office. */
        THEIRS
    }

    /**
     * What came of bringing a job back.
     *
     * @param done whether the office has it now
     * @param clashes fields that both changed, a sentence each
     */
    public record Brought(boolean done, List<String> clashes) {
        public Brought {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * Takes a job and the firm's files along into a folder that has nothing in it.
     *
     * @return the job's folder
     * @throws IOException if something lies there, or the office has no such job
     */
    public Path take(String job, Path to) throws IOException {
        Path root = to.toAbsolutePath().normalize();
        WorkingFolder copy = new WorkingFolder(store, root);
        copy.checkJob(job);
        StoredFolder there = store.folder(job);
        if (Files.exists(root)
                && !FolderFiles.read(root, StoredFolder.FIRM).files().isEmpty()) {
            throw new OfficeRefusal("visit.full", root);
        }
        Disk.folders(root);
        copy.fetch(StoredFolder.FIRM);
        copy.fetch(job);
        List<String> basis = new ArrayList<>(List.of(job));
        there.files().forEach(file -> basis.add(file.sha256() + " " + file.length() + " " + file.path()));
        AtomicFile.write(root.resolve(BASIS), String.join("\n", basis).getBytes(StandardCharsets.UTF_8));
        AtomicFile.write(
                root.resolve(BASIS + "-job"),
                store.content(job, there.file(FileKind.JOB_FILE).orElseThrow()));
        return root.resolve(job);
    }

    /**
     * Brings a job back that was taken along. What only one side changed is put together; what both changed in another
     * way is shown.
     *
     * @param from the folder that it was taken to
     * @throws IOException if nothing was taken along there
     */
    public Brought bring(Path from, Side side) throws IOException {
        Path root = from.toAbsolutePath().normalize();
        if (!Files.isRegularFile(root.resolve(BASIS))) {
            throw new OfficeRefusal("visit.none", root);
        }
        StoredFolder basis = basis(root);
        return store.alone(basis.name(), () -> brought(root, basis, side));
    }

    private static StoredFolder basis(Path root) throws IOException {
        List<String> lines = Files.readAllLines(root.resolve(BASIS), StandardCharsets.UTF_8);
        List<StoredFile> files = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] parts = line.split(" ", 3);
            files.add(new StoredFile(parts[2], parts[0], Long.parseLong(parts[1])));
        }
        return new StoredFolder(FolderName.checked(lines.get(0)), files);
    }

    private Brought brought(Path root, StoredFolder basis, Side side) throws IOException {
        FolderChange mine =
                new WorkingFolder(store, root).changed(basis).orElse(new FolderChange(basis, Map.of(), Set.of()));
        StoredFolder now = store.folder(basis.name());
        Set<String> theirs = now.differing(basis);
        Map<String, byte[]> written = new TreeMap<>(mine.written());
        Set<String> deleted = new HashSet<>(mine.deleted());
        List<String> clashes = new ArrayList<>();
        if (theirs.contains(FileKind.CHAIN) && written.containsKey(FileKind.CHAIN)) {
            // Two registers that went on from one line are never one: neither side can be taken.
            return new Brought(false, List.of(StoreText.of("visit.register", basis.name())));
        }
        for (String path : theirs) {
            boolean both = written.containsKey(path) || deleted.contains(path);
            if (both && path.equals(FileKind.JOB_FILE) && written.containsKey(path)) {
                merge(root, now, side, written, clashes);
            } else if (both) {
                clashes.add(StoreText.of("visit.file", path));
                if (side == Side.THEIRS) {
                    written.remove(path);
                    deleted.remove(path);
                }
            }
        }
        if (!clashes.isEmpty() && side == Side.NEITHER) {
            return new Brought(false, clashes);
        }
        FolderChange change = new FolderChange(now, written, deleted);
        if (!change.isEmpty()) {
            store.write(change);
        }
        AtomicFile.write(root.resolve(BASIS + "-brought"), basis.version().getBytes(StandardCharsets.US_ASCII));
        Disk.delete(root.resolve(BASIS));
        Disk.delete(root.resolve(BASIS + "-job"));
        return new Brought(true, clashes);
    }

    private void merge(Path root, StoredFolder now, Side side, Map<String, byte[]> written, List<String> clashes)
            throws IOException {
        Draft before = draft(Files.readAllBytes(root.resolve(BASIS + "-job")));
        Draft mine = draft(written.get(FileKind.JOB_FILE));
        StoredFile file = now.file(FileKind.JOB_FILE).orElseThrow();
        Draft theirs = draft(store.content(now.name(), file));
        boolean ours = side == Side.MINE;
        DraftMerge.Merged merged = ours ? DraftMerge.of(before, theirs, mine) : DraftMerge.of(before, mine, theirs);
        for (DraftMerge.Clash clash : merged.clashes()) {
            clashes.add(StoreText.of(
                    "visit.field",
                    clash.pointer(),
                    clash.before(),
                    ours ? clash.theirs() : clash.mine(),
                    ours ? clash.mine() : clash.theirs()));
        }
        written.put(FileKind.JOB_FILE, merged.draft().text().getBytes(StandardCharsets.UTF_8));
    }

    private static Draft draft(byte[] job) throws IOException {
        return Draft.read(new String(job, StandardCharsets.UTF_8))
                .orElseThrow(() -> new OfficeRefusal("visit.unreadable"));
    }
}
