// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.samples.GeneratedJobsFolder;

/**
 * Looks across bids in fresh processes as shipped, with 96 MB of heap: where they stand, a word, an item. A quarter as
 * many, and four times as many, tell whether the memory grows with the number of jobs.
 */
final class ThousandBids {
    private static final Path WORK = Path.of("target", "thousand-bids").toAbsolutePath();

    private static final int RUNS = 5;

    private ThousandBids() {}

    /** Argument: how many bids (default 1000). */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        for (int size : List.of(count / 4, count, count * 4)) {
            across(size);
        }
    }

    private static void across(int count) throws IOException, InterruptedException {
        Path tree = WORK.resolve("jobs-" + count);
        if (!Files.exists(tree)) {
            GeneratedJobsFolder.make(tree, count);
        }
        run("bids", count, "bids", tree.toString(), "--on", "2026-10-01");
        run("bids --find", count, "bids", tree.toString(), "--on", "2026-10-01", "--find", "sump");
        run("book history", count, "book", "history", "STONE-MACH", tree.toString());
    }

    private static void run(String what, int count, String... command) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                "java", "-Xmx96m", "@" + Path.of("target", "spadework.args").toAbsolutePath()));
        line.addAll(List.of(command));
        List<Double> seconds = new ArrayList<>();
        double memory = 0;
        double work = 0;
        for (int i = 0; i < RUNS; i++) {
            FreshProcess run = FreshProcess.run(line, WORK.resolve("run.log"));
            seconds.add(run.seconds());
            work += run.cpuSeconds() / RUNS;
            memory = Math.max(memory, run.peakMegabytes());
        }
        seconds.sort(null);
        System.out.println(String.format(
                Locale.ROOT,
                "%s over %d jobs: median %.2f s, least %.2f s, work of all cores %.2f s, peak memory %.0f MB",
                what,
                count,
                seconds.get(RUNS / 2),
                seconds.get(0),
                work,
                memory));
    }
}
