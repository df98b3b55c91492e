// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** All papers of a thousand jobs in one process that is given 256 MB of heap. A job is a sample with its own number. */
final class ThousandJobs {
    private static final Path WORK = Path.of("target", "thousand-jobs").toAbsolutePath();
    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final List<String> PRINTED = List.of(
            "block-basement-to-swale",
            "poured-basement-with-sump",
            "crawl-space-between-houses",
            "stone-wall-engineer-first");
    private static final Pattern COLLECTED = Pattern.compile("(Pause \\w+).* (\\d+)M->(\\d+)M\\(");

    private ThousandJobs() {}

    /** Argument: how many jobs (default 1000). */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        Path out = WORK.resolve("documents");
        Path log = WORK.resolve("heap.log");
        List<String> command = new ArrayList<>(List.of(
                "java",
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-Xlog:gc:file=" + log,
                "-jar",
                "target/spadework.jar",
                "documents"));
        for (int i = 1; i <= count; i++) {
            command.add(job(i).toString());
        }
        command.addAll(List.of("--out", out.toString()));
        FreshProcess run = FreshProcess.run(command, WORK.resolve("run.log"));

        System.out.println(String.format(
                Locale.ROOT,
                "%d jobs, %d files, exit 0, %.0f s, %.2f jobs/s, cpu %.0f s, peak memory of the process %.0f MB",
                count,
                files(out),
                run.seconds(),
                count / run.seconds(),
                run.cpuSeconds(),
                run.peakMegabytes()));
        System.out.println(heap(Files.readAllLines(log)));
    }

    private static Path job(int number) throws IOException {
        String name = String.format(Locale.ROOT, "J-%04d", number);
        Path folder = Files.createDirectories(WORK.resolve("jobs").resolve(name));
        for (String above : List.of("company.json", "price-book.json")) {
            Files.writeString(WORK.resolve("jobs").resolve(above), Files.readString(SAMPLES.resolve(above)));
        }
        Path source = SAMPLES.resolve(PRINTED.get(number % PRINTED.size()));
        copyPhotos(source, folder);
        String sample = Files.readString(source.resolve("job.json"));
        String own = sample.replaceFirst("\"number\":\\s*\"[^\"]*\"", "\"number\": \"" + name + "\"")
                .replaceFirst("\"names\":\\s*\\[\\s*\"", "$0Customer " + number + " ");
        Files.writeString(folder.resolve("job.json"), own);
        return folder;
    }

    private static void copyPhotos(Path source, Path folder) throws IOException {
        try (Stream<Path> files = Files.list(source)) {
            for (Path photo :
                    files.filter(file -> file.toString().endsWith(".jpg")).toList()) {
                Files.copy(photo, folder.resolve(photo.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** The most that was in use, and what was left after the first and after the last full collections. */
    private static String heap(List<String> log) {
        int most = 0;
        List<Integer> full = new ArrayList<>();
        for (String line : log) {
            Matcher pause = COLLECTED.matcher(line);
            if (pause.find()) {
                most = Math.max(most, Integer.parseInt(pause.group(2)));
                if (pause.group(1).equals("Pause Full")) {
                    full.add(Integer.parseInt(pause.group(3)));
                }
            }
        }
        return "peak heap " + most + " MB, left after each full collection, in MB: " + full;
    }

    private static long files(Path out) throws IOException {
        try (Stream<Path> printed = Files.walk(out)) {
            return printed.filter(Files::isRegularFile).count();
        }
    }
}
