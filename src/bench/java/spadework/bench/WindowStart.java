// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.awt.GraphicsEnvironment;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import spadework.office.files.JobsFolder;

/**
 * From start to a usable window: the list of jobs, and a job, against a bare window with one table of the same look.
 * Each run is a fresh process; the programs take turns.
 */
final class WindowStart {
    private static final Path TARGET = Path.of("target").toAbsolutePath();
    private static final Path WORK = TARGET.resolve("window-start");
    private static final List<String> COMMON = List.of("-XX:+UseSerialGC", "-XX:-UsePerfData", "-Xlog:disable");

    private WindowStart() {}

    /** Arguments: how often each program runs (default 9). */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (GraphicsEnvironment.isHeadless()) {
            System.out.println("window start: no screen here");
            return;
        }
        int turns = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 9;
        Path jobs = WORK.resolve("jobs");
        Files.createDirectories(WORK);
        if (!Files.exists(jobs)) {
            JobsFolder.open(jobs, Files.readString(Path.of("sample-quotes", "company.json")));
            JobsFolder.sample(jobs);
        }
        String job = Path.of("sample-quotes", "block-basement-to-swale")
                .toAbsolutePath()
                .toString();
        String path = System.getProperty("java.class.path");
        String settings = "-Djava.util.prefs.userRoot=" + WORK.resolve("settings");
        FreshProcess.run(
                command(List.of(settings), path, KeptJobs.class, jobs.toString()), WORK.resolve("last-run.log"));
        Map<String, List<String>> programs = new LinkedHashMap<>();
        programs.put("bare window, one table", command(COMMON, path, BareWindow.class));
        programs.put("list of jobs, no archive", command(join(COMMON, settings), path, FormWindow.class, "form"));
        programs.put("job, no archive", command(join(COMMON, settings), path, FormWindow.class, "form", job));
        Path packed = TARGET.resolve("spadework.jar");
        if (Files.exists(packed)) {
            // As bin/spadework does it: the first window leaves the archive for the next.
            Path archive = WORK.resolve("spadework-form.jsa");
            Files.deleteIfExists(archive);
            List<String> quick = join(join(COMMON, "-XX:TieredStopAtLevel=1"), settings);
            String jars = packed + File.pathSeparator + ownJar();
            once(command(join(quick, "-XX:ArchiveClassesAtExit=" + archive), jars, FormWindow.class, "form", job));
            List<String> shipped = join(quick, "-XX:SharedArchiveFile=" + archive);
            programs.put("list of jobs, as shipped", command(shipped, jars, FormWindow.class, "form"));
            programs.put("job, as shipped", command(shipped, jars, FormWindow.class, "form", job));
        }
        Map<String, List<Double>> runs = new LinkedHashMap<>();
        for (int turn = 0; turn < turns; turn++) {
            for (Map.Entry<String, List<String>> program : programs.entrySet()) {
                runs.computeIfAbsent(program.getKey(), name -> new ArrayList<>())
                        .add(once(program.getValue()));
            }
        }
        double bare = median(runs.get("bare window, one table"));
        runs.forEach((name, of) -> System.out.println(String.format(
                Locale.ROOT,
                "%-28s median %5.0f ms, least %5.0f ms: %.2f times the bare window",
                name,
                median(of),
                of.stream().mapToDouble(Double::doubleValue).min().orElseThrow(),
                median(of) / bare)));
    }

    /** An archive takes no folders. */
    private static Path ownJar() throws IOException {
        Path file = WORK.resolve("windows.jar");
        try (OutputStream out = Files.newOutputStream(file);
                JarOutputStream jar = new JarOutputStream(out)) {
            for (Class<?> one : List.of(FormWindow.class, WindowWatch.class)) {
                String entry = one.getName().replace('.', '/') + ".class";
                jar.putNextEntry(new JarEntry(entry));
                try (InputStream in = WindowStart.class.getResourceAsStream("/" + entry)) {
                    in.transferTo(jar);
                }
                jar.closeEntry();
            }
        }
        return file;
    }

    private static List<String> command(List<String> flags, String path, Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of("java"));
        command.addAll(flags);
        command.addAll(List.of("-cp", path, main.getName()));
        command.addAll(Arrays.asList(arguments));
        return command;
    }

    private static List<String> join(List<String> flags, String one) {
        return Stream.concat(flags.stream(), Stream.of(one)).toList();
    }

    private static double once(List<String> program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(program);
        command.add(1, "-Dspadework.asked=" + System.currentTimeMillis());
        Path log = WORK.resolve("last-run.log");
        FreshProcess.run(command, log);
        return Files.readAllLines(log).stream()
                .filter(line -> line.startsWith("usable after "))
                .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")))
                .findFirst()
                .orElseThrow();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
    }
}
