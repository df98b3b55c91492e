// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.register.Sha256;

/**
 * A folder of an office, as it is at one time: that of a job, or the firm's own with the company and the price book.
 *
 * @param name of the folder below the office; {@link #FIRM} for the firm's own
 * @param files in the order of their paths
 */
public record StoredFolder(String name, List<StoredFile> files) {
    /** The name of the firm's own folder. */
    public static final String FIRM = "";

    public StoredFolder {
        files = files.stream().sorted(Comparator.comparing(StoredFile::path)).toList();
    }

    /** A folder in which nothing lies yet. */
    public static StoredFolder empty(String name) {
        return new StoredFolder(name, List.of());
    }

    /** What tells this state of the folder from every other: SHA-256 over its paths and what is in them. */
    public String version() {
        String all =
                files.stream().map(file -> file.sha256() + " " + file.path()).collect(Collectors.joining("\n"));
        return Sha256.of(all.getBytes(StandardCharsets.UTF_8));
    }

    /** A file by its path. */
    public Optional<StoredFile> file(String path) {
        return files.stream().filter(file -> file.path().equals(path)).findFirst();
    }

    /** The paths at which another state of this folder holds something else, or nothing, or something more. */
    public Set<String> differing(StoredFolder other) {
        return Stream.concat(files.stream(), other.files.stream())
                .map(StoredFile::path)
                .filter(path -> !sha(path).equals(other.sha(path)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private String sha(String path) {
        return file(path).map(StoredFile::sha256).orElse("");
    }
}
