// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Files that lie in a folder or in one above it. */
public final class NearbyFiles {
    private NearbyFiles() {}

    /** The folder of a file, as the user named it; the working folder for a bare name. */
    static Path folderOf(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** The nearest file of that name, named from the folder as the user named it as far as that goes. */
    static Optional<Path> find(Path folder, String name) {
        for (Path above = folder.normalize(); above != null; above = above.getParent()) {
            if (Files.isRegularFile(above.resolve(name))) {
                return Optional.of(above.resolve(name));
            }
        }
        if (folder.isAbsolute()) {
            return Optional.empty();
        }
        return find(folder.toAbsolutePath(), name);
    }
}
