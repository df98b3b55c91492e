// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.finding.Fault;
import spadework.finding.Place;

/**
 * The documents of a register. What the homeowner gets and what the contractor keeps lie in folders of their own, so
 * that mailing the one never mails the other. Registers of before have both in one folder, {@code issued}, and stay so.
 */
final class Documents {
    private static final List<String> FOLDERS =
            List.of(IssuedFolders.HOMEOWNER, IssuedFolders.KEPT, IssuedFolders.FORMER);

    private static final Pattern PLAIN =
            Pattern.compile("[^./\\\\\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}][^/\\\\:\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]*");

    private final Path folder;

    Documents(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes documents, each whole or not at all, and answers what a line says of them.
     *
     * @throws FileAlreadyExistsException before anything is written, if one of the names is taken
     * @throws IllegalArgumentException before anything is written, if a name is no plain file name
     */
    List<RegisteredFile> write(Issue issue) throws IOException {
        Map<String, byte[]> files = files(issue);
        for (String name : files.keySet()) {
            if (!PLAIN.matcher(name.substring(name.indexOf('/') + 1)).matches()) {
                throw new IllegalArgumentException("no plain file name: \"" + name + "\"");
            }
            Path file = InsideFolder.writable(folder, name);
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                throw new FileAlreadyExistsException(file.toString(), null, "an issued document is never written over");
            }
        }
        List<RegisteredFile> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Disk.folders(path.getParent());
            AtomicFile.write(path, file.getValue());
            written.add(new RegisteredFile(file.getKey(), Sha256.of(file.getValue())));
        }
        return written;
    }

    private static Map<String, byte[]> files(Issue issue) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        issue.papers().forEach((name, bytes) -> files.put(IssuedFolders.HOMEOWNER + "/" + name, bytes));
        issue.kept().forEach((name, bytes) -> files.put(IssuedFolders.KEPT + "/" + name, bytes));
        return files;
    }

    /** Takes away files of those names that no line names: a crash kept them from ever being issued. */
    void clear(Issue issue, List<Entry> entries) throws IOException {
        Set<String> registered = new HashSet<>();
        entries.forEach(entry -> entry.files().forEach(file -> registered.add(file.name())));
        for (String name : files(issue).keySet()) {
            if (!registered.contains(name)) {
                Disk.delete(folder.resolve(name));
            }
        }
    }

    /** Takes away unfinished files that a crash left. Only the one who may write calls this. */
    void sweep() throws IOException {
        sweep(folder, AtomicFile.partsOf(Head.NAME));
        sweep(folder, AtomicFile.partsOf(HashChain.NAME));
        for (String name : FOLDERS) {
            if (Files.isDirectory(folder.resolve(name))) {
                sweep(folder.resolve(name), AtomicFile.partsOf("*"));
            }
        }
    }

    private static void sweep(Path in, String glob) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(in, glob)) {
            for (Path part : left) {
                Disk.delete(part);
            }
        }
    }

    /**
     * Holds the register's own files and folders to the job folder.
     *
     * @throws IOException if one of them is a link that leads out of it
     */
    void stayInside() throws IOException {
        for (String name : FOLDERS) {
            InsideFolder.writable(folder, name + "/document");
        }
        for (String name : List.of(HashChain.NAME, Head.NAME)) {
            InsideFolder.writable(folder, name);
        }
    }

    /** What is wrong with a registered file, if anything. */
    Optional<Fault> compare(Entry entry, RegisteredFile file) throws IOException {
        Path path = folder.resolve(file.name()).normalize();
        String line = "the file that line " + entry.line() + " of " + HashChain.NAME + " names, with SHA-256 "
                + file.sha256();
        String fix = "bring the file back from a copy, or from whoever it was given to";
        if (!path.startsWith(folder.normalize())) {
            return Optional.of(new Fault(Place.ofFile(file.name()), "a name outside of the job folder", line, fix));
        }
        if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
            String found = Files.exists(path, LinkOption.NOFOLLOW_LINKS) ? "something that is no file" : "no such file";
            return Optional.of(new Fault(Place.ofFile(path.toString()), found, line, fix));
        }
        String sha256;
        if (!InsideFolder.isFile(folder, file.name())) {
            return Optional.of(
                    new Fault(Place.ofFile(path.toString()), "a link that leads out of the job folder", line, fix));
        }
        try (InputStream in = Files.newInputStream(path)) {
            sha256 = Sha256.of(in);
        }
        return sha256.equals(file.sha256())
                ? Optional.empty()
                : Optional.of(new Fault(Place.ofFile(path.toString()), "other bytes, SHA-256 " + sha256, line, fix));
    }

    /** The names of all files that lie in the folders, as lines name them. */
    TreeSet<String> lying() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        for (String name : FOLDERS) {
            if (Files.isDirectory(folder.resolve(name))) {
                try (DirectoryStream<Path> all = Files.newDirectoryStream(folder.resolve(name))) {
                    all.forEach(file -> names.add(name + "/" + file.getFileName()));
                }
            }
        }
        return names;
    }

    Fault unregistered(String name) {
        return new Fault(
                Place.ofFile(folder.resolve(name).toString()),
                "a file that no line names",
                "issued documents",
                "nothing, if a crash kept it from being registered: it was never issued; otherwise move it away");
    }
}
