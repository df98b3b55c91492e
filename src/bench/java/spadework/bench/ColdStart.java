// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Cold start: the whole set of a sample, four PDFs and four workbooks, against {@link HandWritten}, which draws the
 * text of the four PDFs, and against general programs where they are installed ({@link InstalledPrograms}). Each run is
 * a fresh process; the programs take turns, so that a busy machine slows all alike.
 */
final class ColdStart {
    private static final Path TARGET = Path.of("target").toAbsolutePath();
    private static final Path WORK = TARGET.resolve("cold-start");
    private static final List<String> QUICK = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

    private ColdStart() {}

    /** Arguments: how often each program runs (default 9), the sample (default the first). */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int turns = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 9;
        Path sample = Path.of(arguments.length > 1 ? arguments[1] : "sample-quotes/block-basement-to-swale");
        Files.createDirectories(WORK);
        List<String> job = List.of(
                "documents", sample.toString(), "--out", WORK.resolve("ours").toString());
        List<String> jar = join(List.of("-jar", TARGET.resolve("spadework.jar").toString()), job);
        List<String> asShipped = join(List.of("@" + TARGET.resolve("spadework.args")), job);
        once(asShipped);
        List<String> hand = handWritten();
        Path archive = WORK.resolve("hand-written.jsa");
        once(join(QUICK, join(List.of("-XX:ArchiveClassesAtExit=" + archive), hand)));

        Map<String, List<String>> programs = new LinkedHashMap<>();
        programs.put("hand-written, no flags", hand);
        programs.put("hand-written, same flags", join(QUICK, join(List.of("-XX:SharedArchiveFile=" + archive), hand)));
        programs.put("hand-written, PDFBox as it comes", join(List.of("-Dsubstitution=true"), hand));
        programs.put("spadework, as shipped", asShipped);
        programs.put("spadework, java -jar", jar);
        programs.replaceAll((name, command) -> join(List.of("java"), command));
        programs.putAll(InstalledPrograms.of(WORK.resolve("ours"), WORK));
        Map<String, List<FreshProcess>> runs = new LinkedHashMap<>();
        for (int turn = 0; turn < turns; turn++) {
            for (Map.Entry<String, List<String>> program : programs.entrySet()) {
                runs.computeIfAbsent(program.getKey(), name -> new ArrayList<>())
                        .add(FreshProcess.run(program.getValue(), WORK.resolve("last-run.log")));
            }
        }
        print(runs);
    }

    private static List<String> handWritten() throws IOException {
        List<String> command = new ArrayList<>(List.of("-cp", handWrittenClassPath(), HandWritten.class.getName()));
        command.add("templates/fonts");
        command.add(WORK.resolve("hand-written").toString());
        try (Stream<Path> printed = Files.walk(WORK.resolve("ours"))) {
            for (Path pdf : printed.filter(file -> file.toString().endsWith(".pdf"))
                    .sorted()
                    .toList()) {
                Path runs = WORK.resolve(pdf.getFileName().toString().replace(".pdf", ".runs"));
                DrawnText.write(pdf, runs);
                command.add(runs.toString());
            }
        }
        return command;
    }

    /** Its own classes in a jar, since an archive takes no folders, and of the libraries only what PDFBox needs. */
    private static String handWrittenClassPath() throws IOException {
        Path own = HandWrittenJar.make(WORK.resolve("hand-written.jar"));
        List<String> path = new ArrayList<>(List.of(own.toString()));
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> Path.of(entry)
                        .getFileName()
                        .toString()
                        .matches("(pdfbox|pdfbox-io|fontbox|commons-logging)-[0-9.]+\\.jar"))
                .forEach(path::add);
        return String.join(File.pathSeparator, path);
    }

    private static FreshProcess once(List<String> arguments) throws IOException, InterruptedException {
        return FreshProcess.run(join(List.of("java"), arguments), WORK.resolve("last-run.log"));
    }

    private static void print(Map<String, List<FreshProcess>> runs) {
        say("%-33s %8s %8s %8s %8s %8s", "", "median s", "min s", "max s", "cpu s", "peak MB");
        runs.forEach((name, of) -> say(
                "%-33s %8.2f %8.2f %8.2f %8.2f %8.0f",
                name,
                median(of, FreshProcess::seconds),
                of.stream().mapToDouble(FreshProcess::seconds).min().orElseThrow(),
                of.stream().mapToDouble(FreshProcess::seconds).max().orElseThrow(),
                median(of, FreshProcess::cpuSeconds),
                median(of, FreshProcess::peakMegabytes)));
        for (String ours : List.of("spadework, as shipped", "spadework, java -jar")) {
            for (String hand : runs.keySet().stream()
                    .filter(name -> !name.startsWith("spadework"))
                    .toList()) {
                say(
                        "%s : %s = %.2f (cpu %.2f)",
                        ours,
                        hand,
                        median(runs.get(ours), FreshProcess::seconds) / median(runs.get(hand), FreshProcess::seconds),
                        median(runs.get(ours), FreshProcess::cpuSeconds)
                                / median(runs.get(hand), FreshProcess::cpuSeconds));
            }
        }
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }

    private static double median(List<FreshProcess> runs, ToDoubleFunction<FreshProcess> of) {
        double[] sorted = runs.stream().mapToDouble(of).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static List<String> join(List<String> first, List<String> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }
}
