// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as it is handed out, started as a contractor starts it. */
class JarIT {
    private static final Path LAUNCHER =
            Path.of("src/main/launch/bin/spadework").toAbsolutePath();
    private static final Path TARGET = Path.of("target").toAbsolutePath();
    private static final Path SAMPLE =
            Path.of("sample-quotes/block-basement-to-swale").toAbsolutePath();

    @TempDir
    private Path folder;

    private record Run(int exit, String out, String err) {}

    /** Without it the template engine is the one for Java 8, which cannot read a record. */
    @Test
    void jarSaysThatItHoldsClassesForNewerJava() throws IOException {
        try (JarFile jar = new JarFile(TARGET.resolve("spadework.jar").toFile())) {
            assertThat(jar.getManifest().getMainAttributes().getValue("Multi-Release"))
                    .isEqualTo("true");
            assertThat(jar.stream().map(entry -> entry.getName()))
                    .anyMatch(name -> name.startsWith("META-INF/versions/16/freemarker/"));
        }
    }

    @Test
    void pricesASample() throws Exception {
        Run run = java("-jar", TARGET.resolve("spadework.jar").toString(), "price", SAMPLE.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out().lines().reduce((first, last) -> last).orElseThrow())
                .startsWith("Total")
                .contains("$");
    }

    @Test
    void printsTheWholeSetFromAnyFolderByTheLaunchArguments() throws Exception {
        Run run = java("@" + TARGET.resolve("spadework.args"), "documents", SAMPLE.toString(), "--out", "papers");
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        try (Stream<Path> files = Files.walk(folder.resolve("papers"))) {
            assertThat(files.filter(Files::isRegularFile)
                            .map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "proposal.pdf",
                            "scope-of-work.pdf",
                            "warranty.pdf",
                            "cost-sheet.pdf",
                            "proposal.xlsx",
                            "scope-of-work.xlsx",
                            "warranty.xlsx",
                            "cost-sheet.xlsx");
        }
    }

    /** Only where the Java that runs this has an archive of its own, on which ours builds. */
    @Test
    void takesItsClassesFromTheArchive() throws Exception {
        Path base = Path.of(System.getProperty("java.home"), "lib", "server", "classes.jsa");
        assumeThat(base).isRegularFile();
        Run run = java(
                "-XX:+UseSerialGC",
                "-XX:SharedArchiveFile=" + TARGET.resolve("spadework.jsa"),
                "-Xlog:class+load:file=classes.log",
                "-jar",
                TARGET.resolve("spadework.jar").toString(),
                "--version");
        assertThat(run.exit()).isZero();
        List<String> loaded = Files.readAllLines(folder.resolve("classes.log"));
        assertThat(loaded.stream().filter(line -> line.contains(DocumentsCommand.class.getName() + " ")))
                .singleElement()
                .asString()
                .endsWith("shared objects file (top)");
    }

    /** A copied jar is another jar to the archive, which then must not be used, nor be a word about it. */
    @Test
    void startsWithoutAWordWhenTheArchiveDoesNotFit() throws Exception {
        Path copy = Files.copy(TARGET.resolve("spadework.jar"), folder.resolve("copy.jar"));
        Path arguments = folder.resolve("copy.args");
        Files.writeString(
                arguments,
                Files.readString(TARGET.resolve("spadework.args"))
                        .replace(TARGET.resolve("spadework.jar").toString(), copy.toString()));
        Run run = java("@" + arguments, "price", SAMPLE.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Total").doesNotContain("warning");
    }

    /** Without options the jar starts itself with those that fit, which nobody sees; with options it keeps them. */
    @Test
    void jarStartsItselfAndHandsOnWhatComesOfIt() throws Exception {
        String jar = TARGET.resolve("spadework.jar").toString();
        Run refused = java("-jar", jar, "price", "nowhere");
        assertThat(refused.exit()).isEqualTo(1);
        assertThat(refused.err()).contains("nowhere");
        assertThat(java("-Dkept=yes", "-jar", jar, "price", "nowhere")).isEqualTo(refused);
        assertThat(java("-Xshare:auto", "-jar", jar, "price", SAMPLE.toString()))
                .isEqualTo(java("-jar", jar, "price", SAMPLE.toString()));
    }

    /** In a folder with a space, called through a link; the first papers leave the archive for the next run. */
    @Test
    void launcherStartsTheProgramWhereverItsFolderLies() throws Exception {
        assumeThat(Path.of("/bin/sh")).isExecutable();
        Path home = folder.resolve("moved here/spadework");
        Files.createDirectories(home.resolve("bin"));
        Files.createDirectories(home.resolve("lib"));
        Path launcher = Files.copy(LAUNCHER, home.resolve("bin/spadework"));
        assertThat(launcher.toFile().setExecutable(true)).isTrue();
        Files.createLink(home.resolve("lib/spadework.jar"), TARGET.resolve("spadework.jar"));
        Path link = Files.createSymbolicLink(folder.resolve("called"), launcher);

        Run priced = run(List.of(link.toString(), "price", SAMPLE.toString()));
        assertThat(priced.err()).isEmpty();
        assertThat(priced.out()).contains("Total");
        assertThat(run(List.of(link.toString(), "documents", SAMPLE.toString(), "--out", "papers"))
                        .exit())
                .isZero();
        assertThat(home.resolve("lib/spadework.jsa")).isNotEmptyFile();
        Run again = run(List.of(link.toString(), "price", SAMPLE.toString()));
        assertThat(again).isEqualTo(priced);
        assertThat(run(List.of(link.toString(), "price", "nowhere")).exit()).isEqualTo(1);
    }

    private Run java(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(arguments));
        return run(command);
    }

    private Run run(List<String> command) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor(5, TimeUnit.MINUTES))
                .as("ended within five minutes")
                .isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
