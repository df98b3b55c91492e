// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A sample in a folder of its own, there to be changed. */
public final class SampleCopies {
    private SampleCopies() {}

    /** Copies a sample with its pictures, company and price book; the answer is its job file. */
    public static Path of(String sample, Path folder) throws IOException {
        Path from = Path.of("sample-quotes");
        for (String file : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            if (!Files.exists(folder.resolve(file))) {
                Files.copy(from.resolve(file), folder.resolve(file));
            }
        }
        Path to = Files.createDirectories(folder.resolve(sample));
        try (Stream<Path> files = Files.list(from.resolve(sample))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return to.resolve("job.json");
    }

    /** Has the office of a copied sample read a language. */
    public static void readIn(String language, Path folder) throws IOException {
        Path company = folder.resolve("company.json");
        Files.writeString(
                company, Files.readString(company).replaceFirst("\\{", "{\"officeLanguage\": \"" + language + "\","));
    }
}
