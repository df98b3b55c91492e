// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.intake.Intake;
import spadework.office.Office;
import spadework.office.records.JobSource;
import spadework.press.template.Templates;

/**
 * A source laid out in a folder of its own while it is worked with: a job with the company, the book and the words of
 * the day on which it was issued.
 */
public final class SourceCheckout implements AutoCloseable {
    private final Path folder;
    private Optional<Office> office = Optional.empty();

    private SourceCheckout(Path folder) {
        this.folder = folder;
    }

    /** Lays out a source; close it to take the folder away. */
    public static SourceCheckout of(JobSource source) throws IOException {
        SourceCheckout checkout = new SourceCheckout(Files.createTempDirectory("spadework-"));
        source.layInto(checkout.folder);
        return checkout;
    }

    public Path job() {
        return folder.resolve(JobSource.JOB);
    }

    /** An intake that reads with the books of that day. */
    Intake intake() throws IOException {
        return Intake.startingFrom(
                Files.readAllBytes(folder.resolve(JobSource.BUNDLED_BOOK)),
                Files.readAllBytes(folder.resolve(JobSource.BUNDLED_RULES)));
    }

    /**
     * An office that reads with the books of that day and prints with its words; made once, as reading all templates
     * took a step most of its time.
     */
    public Office office() throws IOException {
        if (office.isEmpty()) {
            office = Optional.of(new Office(intake(), Templates.with(folder.resolve(JobSource.TEMPLATES))));
        }
        return office.get();
    }

    @Override
    public void close() {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        } catch (IOException left) {
            // A folder for passing files that cannot be taken away does no harm.
            return;
        }
    }
}
