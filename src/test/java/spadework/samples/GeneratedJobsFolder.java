// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import spadework.office.Office;
import spadework.office.Outcome;
import spadework.office.SampleJobFolder;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.office.agreement.LostProposal;
import spadework.office.reply.TemplateFolder;

/**
 * A generated tree of jobs: of ten, seven drafts that differ in number, date and the length of a wall, one that is
 * issued, one that is signed, one that is lost.
 */
public final class GeneratedJobsFolder {
    private static final Path SAMPLES = Path.of("sample-quotes");
    /** Samples that nobody has signed. */
    private static final List<String> OPEN = List.of(
            "block-basement-to-swale",
            "crawl-space-between-houses",
            "poured-basement-with-sump",
            "stone-wall-engineer-first");

    private static final String SEED = "block-basement-to-swale";

    private GeneratedJobsFolder() {}

    private static final int FEW = 100;

    /** Makes a tree of that many jobs; in a large one those with a register are copies, number and all. */
    public static void make(Path root, int count) throws IOException {
        Files.createDirectories(root);
        for (String above : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(SAMPLES.resolve(above), root.resolve(above));
        }
        List<Path> samples = OPEN.stream().map(SAMPLES::resolve).toList();
        List<Path> seeds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Path folder = root.resolve(String.format(Locale.ROOT, "%03d/J-%05d", i / 100, i));
            int kind = i % 10;
            if (kind >= 7 && i >= 10 && count > FEW) {
                copy(seeds.get(kind - 7), folder);
                continue;
            }
            copy(kind >= 7 ? SAMPLES.resolve(SEED) : samples.get(i % samples.size()), folder);
            if (kind < 7) {
                vary(folder, i);
            } else {
                number(folder, i);
                register(folder, kind);
                seeds.add(folder);
            }
        }
    }

    private static void register(Path folder, int kind) throws IOException {
        SampleJobFolder.makeSignable(folder);
        Office office = Office.with(TemplateFolder.NONE);
        done(new Issuing(office, SampleJobFolder.TODAY).issue(folder));
        if (kind == 8) {
            done(new Accepting(office, SampleJobFolder.TODAY).accept(folder, List.of(), SampleJobFolder.yes()));
        }
        if (kind == 9) {
            done(LostProposal.lose(folder, LocalDate.of(2026, 9, 1), "took a lower bid", SampleJobFolder.TODAY));
        }
    }

    private static void done(Outcome outcome) {
        if (!(outcome instanceof Outcome.Issued)) {
            throw new IllegalStateException(outcome.toString());
        }
    }

    private static void number(Path folder, int number) throws IOException {
        Path file = folder.resolve("job.json");
        Files.writeString(
                file,
                Files.readString(file).replaceFirst("\"number\":\\s*\"[^\"]*\"", "\"number\": \"J-" + number + "\""));
    }

    private static void vary(Path folder, int number) throws IOException {
        Path file = folder.resolve("job.json");
        String day = LocalDate.of(2026, 6, 1).plusDays(number % 60).toString();
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceFirst("\"number\":\\s*\"[^\"]*\"", "\"number\": \"J-" + number + "\"")
                        .replaceFirst("\"issued\":\\s*\"[^\"]*\"", "\"issued\": \"" + day + "\"")
                        .replaceFirst("\"thickness\": \"8 in\"", "\"thickness\": \"" + (8 + number % 5) + " in\""));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = from.relativize(file).toString();
                if (name.startsWith("expected") || name.startsWith("documents")) {
                    continue;
                }
                Files.createDirectories(to.resolve(name).getParent());
                Files.copy(file, to.resolve(name));
            }
        }
    }
}
