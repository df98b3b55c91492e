// SPDX-License-Identifier: Apache-2.0
package spadework.store.folder;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.register.Sha256;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderName;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/** The files of an office in folders: what belongs to it, and how they are written. Links are not followed. */
public final class FolderFiles {
    private static final String LOCKS = ".lock";

    private FolderFiles() {}

    /** The names of all job folders below a folder, in their order. */
    public static List<String> jobs(Path root) throws IOException {
        List<String> names = new ArrayList<>();
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                if (folder.equals(root)) {
                    return FileVisitResult.CONTINUE;
                }
                if (!isOurs(folder)) {
                    return FileVisitResult.SKIP_SUBTREE;
                }
                if (isJob(folder)) {
                    names.add(name(root, folder));
                    return FileVisitResult.SKIP_SUBTREE;
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return names.stream().sorted().toList();
    }

    /**
     * A folder as it is on disk; what lies in job folders is not the firm's.
     *
     * @throws IOException if a file cannot be read
     */
    public static StoredFolder read(Path root, String name) throws IOException {
        Path folder = at(root, name);
        if (!Files.isDirectory(folder)) {
            return StoredFolder.empty(name);
        }
        List<StoredFile> files = new ArrayList<>();
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path inside, BasicFileAttributes attributes) {
                boolean other = !inside.equals(folder)
                        && (!isOurs(inside) || (name.equals(StoredFolder.FIRM) && isJob(inside)));
                return other ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (attributes.isRegularFile()
                        && isOurs(file)
                        && !file.toString().endsWith(LOCKS)) {
                    byte[] bytes = Files.readAllBytes(file);
                    files.add(new StoredFile(name(folder, file), Sha256.of(bytes), bytes.length));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return new StoredFolder(name, files);
    }

    /**
     * Writes a change into the folder of a job or the firm: papers first, then the job, the register last, so that
     * whatever breaks off in between leaves at most a paper that no register names.
     */
    public static void write(Path root, FolderChange change) throws IOException {
        Path folder = at(root, change.name());
        Map<String, byte[]> last = new TreeMap<>();
        Disk.folders(folder);
        for (Map.Entry<String, byte[]> file : change.written().entrySet()) {
            if (FileKind.of(change.name(), file.getKey()) == FileKind.REGISTER
                    || file.getKey().equals("job.json")) {
                last.put(file.getKey(), file.getValue());
            } else {
                write(folder, file.getKey(), file.getValue());
            }
        }
        for (String path : change.deleted()) {
            Disk.delete(InsideFolder.writable(folder, path));
        }
        // By name: job.json, register.head, register.jsonl; a head that is ahead would be a fault, so it goes last.
        byte[] head = last.remove(FileKind.CHAIN_HEAD);
        for (Map.Entry<String, byte[]> file : last.entrySet()) {
            write(folder, file.getKey(), file.getValue());
        }
        if (head != null) {
            write(folder, FileKind.CHAIN_HEAD, head);
        }
    }

    private static void write(Path folder, String path, byte[] bytes) throws IOException {
        if (!FolderName.isPath(path)) {
            throw new IOException(path);
        }
        Path file = InsideFolder.writable(folder, path);
        Disk.folders(file.getParent());
        AtomicFile.write(file, bytes);
    }

    /** Where a folder lies. */
    static Path at(Path root, String name) {
        return name.equals(StoredFolder.FIRM) ? root : root.resolve(FolderName.checked(name));
    }

    private static boolean isOurs(Path path) {
        return !path.getFileName().toString().startsWith(".");
    }

    private static boolean isJob(Path folder) {
        return Files.isRegularFile(folder.resolve("job.json"));
    }

    private static String name(Path root, Path path) {
        return root.relativize(path).toString().replace('\\', '/');
    }
}
