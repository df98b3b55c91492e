// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import spadework.cli.Spadework;

/**
 * Where {@code java -jar} begins. A jar cannot say with which options Java is to run it, and those that a long-running
 * server wants make a short run twice as long. So a jar that was started without any option starts itself once more
 * with those that fit; whoever gave options keeps them.
 */
public final class JarStart {
    /** How long the program has to end once it was told to, before it is ended. */
    private static final int SECONDS_TO_END = 10;

    private JarStart() {}

    /** @throws IOException if Java cannot be started a second time */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path jar = Path.of(URI.create(JarStart.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toString()));
        if (ManagementFactory.getRuntimeMXBean().getInputArguments().isEmpty() && Files.isRegularFile(jar)) {
            System.exit(again(jar, arguments));
        }
        Spadework.main(arguments);
    }

    private static int again(Path jar, String... arguments) throws IOException, InterruptedException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        Process program = new ProcessBuilder(command(java, jar, List.of(arguments)))
                .inheritIO()
                .start();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> end(program)));
        return program.waitFor();
    }

    /** The options are those of the launchers, with the archive of classes where the build left one beside the jar. */
    static List<String> command(Path java, Path jar, List<String> arguments) {
        List<String> command = new ArrayList<>(List.of(
                java.toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-Xlog:disable",
                "-Xlog:all=error:stderr"));
        Path archive = jar.resolveSibling("spadework.jsa");
        if (Files.isRegularFile(archive)) {
            command.add("-XX:SharedArchiveFile=" + archive);
        }
        command.add("-jar");
        command.add(jar.toString());
        command.addAll(arguments);
        return command;
    }

    /** Whoever ends the first process means the program: it may finish what it is writing. */
    private static void end(Process program) {
        program.destroy();
        try {
            if (!program.waitFor(SECONDS_TO_END, TimeUnit.SECONDS)) {
                program.destroyForcibly();
            }
        } catch (InterruptedException stopped) {
            program.destroyForcibly();
        }
    }
}
