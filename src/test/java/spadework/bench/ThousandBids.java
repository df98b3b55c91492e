package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.samples.BidTree;

/** Looks across a thousand bids in fresh processes that are given 96 MB of heap: where they stand, a word, an item. */
final class ThousandBids {
    private static final Path WORK = Path.of("target", "thousand-bids").toAbsolutePath();

    private ThousandBids() {}

    /** Argument: how many bids (default 1000). */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int count = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1000;
        Path tree = WORK.resolve("jobs-" + count);
        if (!Files.exists(tree)) {
            BidTree.make(tree, count);
        }
        run("bids", tree, count, "bids", tree.toString(), "--on", "2026-10-01");
        run("bids --find", tree, count, "bids", tree.toString(), "--on", "2026-10-01", "--find", "sump");
        run("book history", tree, count, "book", "history", "STONE-MACH", tree.toString());
    }

    private static void run(String what, Path tree, int count, String... command) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of("java", "-Xmx96m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1",
                "-cp", System.getProperty("java.class.path"), "spadework.cli.Spadework"));
        line.addAll(List.of(command));
        List<Double> seconds = new ArrayList<>();
        double memory = 0;
        for (int i = 0; i < 3; i++) {
            FreshProcess run = FreshProcess.run(line, WORK.resolve("run.log"));
            seconds.add(run.seconds());
            memory = Math.max(memory, run.peakMegabytes());
        }
        seconds.sort(null);
        System.out.println(String.format(Locale.ROOT, "%s over %d jobs: median %.2f s, least %.2f s, peak memory %.0f MB",
                what, count, seconds.get(1), seconds.get(0), memory));
    }
}
