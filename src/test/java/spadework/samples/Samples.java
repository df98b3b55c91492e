// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import spadework.job.Agreement;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.reply.TemplateFolder;

/** The shipped samples: every folder of sample-quotes that holds a job. */
public final class Samples {
    private static final Path ROOT = Path.of("sample-quotes");
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);

    private Samples() {}

    /** Folders of jobs that are papered. */
    public static List<Path> papered() {
        return folders().filter(folder -> !isRefused(folder)).toList();
    }

    /** Folders of jobs that are refused. */
    public static List<Path> refused() {
        return folders().filter(Samples::isRefused).toList();
    }

    public static Office office() {
        return OFFICE;
    }

    /** A sample that is known to be read, priced. */
    public static Bid bid(Path folder) {
        return (Bid) OFFICE.bid(folder);
    }

    /** How many papers a job has: the four of a set, one for each change order, one once something was built. */
    public static int papersOf(Bid bid) {
        Agreement agreement = bid.dossier().job().agreement();
        return 4
                + (agreement.signing().isPresent() ? 1 : 0)
                + agreement.changes().size()
                + (agreement.asBuilt().isPresent() ? 1 : 0);
    }

    private static boolean isRefused(Path folder) {
        return folder.getFileName().toString().startsWith("refused-");
    }

    private static Stream<Path> folders() {
        try (Stream<Path> all = Files.list(ROOT)) {
            return all.filter(folder -> Files.isRegularFile(folder.resolve("job.json"))).sorted().toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
