// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import spadework.job.Agreement;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.office.reply.TemplateFolder;

/** The shipped samples: every folder of sample-quotes that holds a job. */
public final class Samples {
    private static final Path ROOT = Path.of("sample-quotes");
    private static final Office OFFICE = Office.with(TemplateFolder.NONE);
    private static final Map<Path, Map<String, byte[]>> PRINTED = new HashMap<>();

    private Samples() {}

    /** A whole job of a homeowner who reads Spanish. */
    public static final Path SPANISH = ROOT.resolve("back-wall-in-spanish");

    /** Folders of jobs that are papered in English. */
    public static List<Path> papered() {
        return folders()
                .filter(folder -> !isRefused(folder) && !folder.equals(SPANISH))
                .toList();
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

    /**
     * All files of a sample by folder and name, as {@code kept/cost-sheet.pdf}. They are printed once for all tests of
     * a process: {@code SamplesTest} holds that a second print gives the same bytes.
     */
    public static synchronized Map<String, byte[]> printed(Path folder) {
        return PRINTED.computeIfAbsent(folder, Samples::print);
    }

    /** Prints them anew. */
    static Map<String, byte[]> print(Path folder) {
        try {
            Path out = Files.createTempDirectory("spadework-papers-");
            try {
                Outcome outcome = OFFICE.documents(folder, out, EnumSet.allOf(PaperKind.class));
                Map<String, byte[]> files = new TreeMap<>();
                for (Path file : ((Outcome.Printed) outcome).files()) {
                    files.put(file.getParent().getFileName() + "/" + file.getFileName(), Files.readAllBytes(file));
                }
                return files;
            } finally {
                try (Stream<Path> left = Files.walk(out)) {
                    left.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
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
