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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import spadework.finding.Fault;
import spadework.finding.Place;

/** The documents of a register: files in the folder {@code issued} of the job folder. */
final class Documents {
    static final String FOLDER = "issued";

    private static final Pattern PLAIN = Pattern.compile("[^./\\\\\\p{Cntrl}][^/\\\\:\\p{Cntrl}]*");

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
    List<RegisteredFile> write(Map<String, byte[]> files) throws IOException {
        for (String name : files.keySet()) {
            if (!PLAIN.matcher(name).matches()) {
                throw new IllegalArgumentException("no plain file name: \"" + name + "\"");
            }
            if (Files.exists(issued().resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                throw new FileAlreadyExistsException(
                        issued().resolve(name).toString(), null, "an issued document is never written over");
            }
        }
        List<RegisteredFile> written = new ArrayList<>();
        if (!files.isEmpty()) {
            Files.createDirectories(issued());
        }
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            AtomicFile.write(issued().resolve(file.getKey()), file.getValue());
            written.add(new RegisteredFile(FOLDER + "/" + file.getKey(), Sha256.of(file.getValue())));
        }
        return written;
    }

    /** Takes away files of those names that no line names: a crash kept them from ever being issued. */
    void clear(Set<String> names, List<Entry> entries) throws IOException {
        Set<String> registered = new HashSet<>();
        entries.forEach(entry -> entry.files().forEach(file -> registered.add(file.name())));
        for (String name : names) {
            if (!registered.contains(FOLDER + "/" + name)) {
                Files.deleteIfExists(issued().resolve(name));
            }
        }
    }

    /** Takes away unfinished files that a crash left. Only the one who may write calls this. */
    void sweep() throws IOException {
        sweep(folder, AtomicFile.partsOf(Head.NAME));
        if (Files.isDirectory(issued())) {
            sweep(issued(), AtomicFile.partsOf("*"));
        }
    }

    private static void sweep(Path in, String glob) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(in, glob)) {
            for (Path part : left) {
                Files.deleteIfExists(part);
            }
        }
    }

    /** What is wrong with a registered file, if anything. */
    Optional<Fault> compare(Entry entry, RegisteredFile file) throws IOException {
        Path path = folder.resolve(file.name()).normalize();
        String line =
                "the file that line " + entry.line() + " of " + Chain.NAME + " names, with SHA-256 " + file.sha256();
        String fix = "bring the file back from a copy, or from whoever it was given to";
        if (!path.startsWith(folder.normalize())) {
            return Optional.of(new Fault(Place.ofFile(file.name()), "a name outside of the job folder", line, fix));
        }
        if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
            String found = Files.exists(path, LinkOption.NOFOLLOW_LINKS) ? "something that is no file" : "no such file";
            return Optional.of(new Fault(Place.ofFile(path.toString()), found, line, fix));
        }
        String sha256;
        try (InputStream in = Files.newInputStream(path)) {
            sha256 = Sha256.of(in);
        }
        return sha256.equals(file.sha256())
                ? Optional.empty()
                : Optional.of(new Fault(Place.ofFile(path.toString()), "other bytes, SHA-256 " + sha256, line, fix));
    }

    /** The names of all files that lie in the folder, as lines name them. */
    TreeSet<String> lying() throws IOException {
        TreeSet<String> names = new TreeSet<>();
        if (Files.isDirectory(issued())) {
            try (DirectoryStream<Path> all = Files.newDirectoryStream(issued())) {
                all.forEach(file -> names.add(FOLDER + "/" + file.getFileName()));
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

    private Path issued() {
        return folder.resolve(FOLDER);
    }
}
