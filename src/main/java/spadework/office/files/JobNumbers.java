// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.Intake;

/**
 * The numbers of jobs. Papers, their folder and the register are named after a number, so two jobs must not have the
 * same one, nor two that would make the same folder.
 */
public final class JobNumbers {
    private static final String COMPANY = "company.json";

    private JobNumbers() {}

    /**
     * A fault for each of these jobs whose number another one has: one of these, or one that lies with the jobs of the
     * same company.
     *
     * @param jobs files or folders; by these the answer is told
     */
    public static Map<Path, Fault> taken(List<Path> jobs) throws IOException {
        Map<Path, Map<String, List<Path>>> trees = new TreeMap<>();
        Map<Path, String> named = new TreeMap<>();
        Map<String, List<Path>> together = new TreeMap<>();
        for (Path job : jobs) {
            Path file = real(Intake.fileOf(job));
            Optional<String> number = Intake.numberOf(file);
            if (number.isPresent() && named.putIfAbsent(file, number.get()) == null) {
                together.computeIfAbsent(key(number.get()), first -> new ArrayList<>())
                        .add(file);
            }
        }
        Map<Path, Fault> faults = new TreeMap<>();
        for (Path job : jobs) {
            Path file = real(Intake.fileOf(job));
            String number = named.get(file);
            if (number == null) {
                continue;
            }
            Optional<Path> tree = tree(file);
            List<Path> same = new ArrayList<>(together.get(key(number)));
            if (tree.isPresent()) {
                if (!trees.containsKey(tree.get())) {
                    trees.put(tree.get(), under(tree.get()));
                }
                same.addAll(trees.get(tree.get()).getOrDefault(key(number), List.of()));
            }
            same.stream()
                    .filter(other -> !other.equals(file))
                    .findFirst()
                    .ifPresent(other -> faults.put(job, fault(job, number, other)));
        }
        return faults;
    }

    /** The same for one job. */
    public static Optional<Fault> taken(Path job) throws IOException {
        return Optional.ofNullable(taken(List.of(job)).get(job));
    }

    /** The jobs of a tree by what their numbers make as the name of a folder. */
    private static Map<String, List<Path>> under(Path tree) throws IOException {
        Map<String, List<Path>> all = new TreeMap<>();
        for (Path file : JobTree.files(tree)) {
            Intake.numberOf(file)
                    .ifPresent(number -> all.computeIfAbsent(key(number), first -> new ArrayList<>())
                            .add(real(file)));
        }
        return all;
    }

    /** The folder with the jobs of the same company: the nearest above the job's own that has a company's file. */
    private static Optional<Path> tree(Path file) {
        Path own = file.getParent();
        for (Path folder = own == null ? null : own.getParent(); folder != null; folder = folder.getParent()) {
            if (Files.isRegularFile(folder.resolve(COMPANY))) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    private static String key(String number) {
        return FileName.safe(number).toLowerCase(Locale.ROOT);
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException notThere) {
            return file.toAbsolutePath().normalize();
        }
    }

    private static Fault fault(Path job, String number, Path other) {
        return new Fault(
                new Place(Intake.fileOf(job).toString(), 0, 0, "/number"),
                "the number \"" + number + "\", which " + other + " has as well",
                "a number that no other job has, nor one that gives the same folder name",
                "give one of the two jobs another number");
    }
}
