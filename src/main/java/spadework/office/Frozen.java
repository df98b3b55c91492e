package spadework.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import spadework.intake.Intake;
import spadework.press.Templates;

/**
 * A source laid out in a folder of its own while it is worked with: a job with the company, the book and the words of
 * the day on which it was issued.
 */
final class Frozen implements AutoCloseable {
    private final Path folder;

    private Frozen(Path folder) {
        this.folder = folder;
    }

    /** Lays out a source; close it to take the folder away. */
    static Frozen of(Source source) throws IOException {
        Frozen frozen = new Frozen(Files.createTempDirectory("spadework-"));
        source.layInto(frozen.folder);
        return frozen;
    }

    Path job() {
        return folder.resolve(Source.JOB);
    }

    /** An intake that reads with the books of that day. */
    Intake intake() throws IOException {
        return Intake.startingFrom(
                Files.readAllBytes(folder.resolve(Source.BUNDLED_BOOK)),
                Files.readAllBytes(folder.resolve(Source.BUNDLED_RULES)));
    }

    /** An office that reads with the books of that day and prints with its words. */
    Office office() throws IOException {
        return new Office(intake(), Templates.with(folder.resolve(Source.TEMPLATES)));
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
