// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import spadework.company.Company;
import spadework.finding.Fault;
import spadework.finding.Place;

/** The firm's logo as a data address, from the file that lies beside the company file or the job. */
public final class Logo {
    private Logo() {}

    public static Optional<String> of(Company company, Path jobFolder, PictureFiles.Album album) {
        return company.logo().flatMap(name -> find(jobFolder, name)).map(album::address);
    }

    /** What is wrong with the logo, if anything; one that is not there is left out. */
    public static Optional<Fault> fault(Company company, Path jobFolder, PictureFiles.Album album) {
        return company.logo()
                .flatMap(name -> find(jobFolder, name))
                .flatMap(file -> Photos.fault(
                        new Place("company.json", 0, 0, "/logo"),
                        file.getParent(),
                        file.getFileName().toString(),
                        album));
    }

    /** The file of that name in the folder or the nearest above it. */
    public static Optional<Path> find(Path jobFolder, String name) {
        for (Path folder = jobFolder.toAbsolutePath().normalize(); folder != null; folder = folder.getParent()) {
            Path file = folder.resolve(name).normalize();
            if (file.startsWith(folder) && Files.isRegularFile(file)) {
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }
}
