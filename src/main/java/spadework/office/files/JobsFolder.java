// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.disk.AtomicFile;
import spadework.disk.ChangedElsewhere;
import spadework.disk.Disk;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.finding.Fault;
import spadework.intake.Intake;

/** The folder in which jobs live: it holds the company's file and the price book, and a folder for each job. */
public final class JobsFolder {
    private static final String COMPANY = "company.json";
    private static final String BOOK = "price-book.json";
    private static final String SAMPLE = "block-basement-to-swale";

    private static final Pattern NUMBERED = Pattern.compile("(\\d{4})-(\\d{3,6})");

    private JobsFolder() {}

    /** Whether jobs can be priced there. */
    public static boolean isReady(Path jobs) {
        return Files.isRegularFile(jobs.resolve(COMPANY)) && Files.isRegularFile(jobs.resolve(BOOK));
    }

    /** Where jobs live when nobody says otherwise. */
    public static Path usual() {
        return Path.of(System.getProperty("user.home"), "spadework-jobs");
    }

    /**
     * The company's file that a firm begins with: the words of {@code start-company.json}, its own particulars in it.
     */
    public static String startOfCompany() throws IOException {
        return text("/spadework/office/start-company.json");
    }

    /** Every fault of a company's file that is still being filled in. */
    public static List<Fault> faultsOfCompany(String text) {
        return new Intake().faultsOfCompany(text, COMPANY);
    }

    /**
     * Makes the folder ready. A file that is there already stays as it is.
     *
     * @param company text of the company's file
     * @return the two files
     * @throws IOException if a file cannot be written
     */
    public static List<Path> open(Path jobs, String company) throws IOException {
        Disk.folders(jobs);
        begin(jobs.toAbsolutePath().resolve(COMPANY), company.getBytes(StandardCharsets.UTF_8));
        begin(jobs.toAbsolutePath().resolve(BOOK), bytes("/spadework/office/start-price-book.json"));
        return List.of(jobs.resolve(COMPANY), jobs.resolve(BOOK));
    }

    /**
     * Puts the descriptions of the formats there, by which an editor completes and explains keys.
     *
     * @return the files
     * @throws IOException if one cannot be written
     */
    public static List<Path> schemas(Path jobs) throws IOException {
        Path folder = jobs.resolve("schemas");
        Disk.folders(folder);
        List<Path> files = new ArrayList<>();
        for (String name : List.of("job", "company", "price-book", "state-rules")) {
            Path file = folder.resolve(name + ".schema.json");
            AtomicFile.write(file.toAbsolutePath(), bytes("/spadework/intake/" + name + ".schema.json"));
            files.add(file);
        }
        return files;
    }

    /** Whether a job lies in the folder already. */
    public static boolean hasJobs(Path jobs) throws IOException {
        try (Stream<Path> folders = Files.list(jobs)) {
            return folders.anyMatch(folder -> Files.isRegularFile(folder.resolve("job.json")));
        }
    }

    /**
     * A number that no job of the folder has: the year and the next of its jobs, as {@code 2026-014}.
     *
     * @throws IOException if the folder cannot be read
     */
    public static String freeNumber(Path jobs, int year) throws IOException {
        int highest = 0;
        if (Files.isDirectory(jobs)) {
            try (Stream<Path> folders = Files.list(jobs)) {
                for (Path folder : folders.toList()) {
                    Matcher numbered = NUMBERED.matcher(folder.getFileName().toString());
                    if (numbered.matches() && Integer.parseInt(numbered.group(1)) == year) {
                        highest = Math.max(highest, Integer.parseInt(numbered.group(2)));
                    }
                }
            }
        }
        return String.format(Locale.ROOT, "%d-%03d", year, highest + 1);
    }

    /**
     * Puts the sample into a folder of its own among the jobs, with its own company and price book. What is there of
     * it already stays as it is.
     *
     * @return the sample's job file
     * @throws IOException if it cannot be written
     */
    public static Path sample(Path jobs) throws IOException {
        Path samples = jobs.toAbsolutePath().resolve("samples");
        Path job = samples.resolve(SAMPLE);
        Disk.folders(job);
        for (String file : List.of(
                COMPANY,
                BOOK,
                "fennimarsh-mark.jpg",
                SAMPLE + "/job.json",
                SAMPLE + "/test-pit.jpg",
                SAMPLE + "/wet-joint.jpg")) {
            Path target = samples.resolve(file);
            begin(target, bytes("/samples/" + file));
        }
        return job.resolve("job.json");
    }

    /** Writes a file that is not there; one that is, or that somebody else makes at the same time, stays. */
    private static void begin(Path target, byte[] content) throws IOException {
        if (!Files.exists(target)) {
            try {
                SharedFile.replace(target, Snapshot.NONE, content);
            } catch (ChangedElsewhere made) {
                return;
            }
        }
    }

    private static String text(String resource) throws IOException {
        return new String(bytes(resource), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String resource) throws IOException {
        try (InputStream in = JobsFolder.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("the program lacks " + resource);
            }
            return in.readAllBytes();
        }
    }
}
