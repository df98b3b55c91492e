// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.store.postgres.OfficeServer;

/** With files at home nothing of a database is loaded: a program in a process of its own tells every class it loads. */
class FoldersLoadNoDatabaseTest {
    private static final String DATABASE =
            "(org.postgresql|com.zaxxer|org.flywaydb|org.jdbi|spadework.store.postgres)\\.\\S+";

    @TempDir
    private Path folder;

    private List<String> loaded(String... arguments) throws IOException, InterruptedException {
        Path out = folder.resolve("classes");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xlog:class+load:file=" + out,
                "-Duser.home=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                Spadework.class.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        process.waitFor();
        return Files.readAllLines(out, StandardCharsets.UTF_8).stream()
                .map(line -> line.replaceFirst("^(\\[[^]]*\\])+ ", "").replaceFirst(" .*", ""))
                .toList();
    }

    private static List<String> ofDatabases(List<String> classes) {
        return classes.stream().filter(name -> name.matches(DATABASE)).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "price sample-quotes/block-basement-to-swale",
                "bids sample-quotes/added-wall-then-closed",
                "office jobs --office OFFICE",
                "price added-wall-then-closed --office OFFICE"
            })
    void foldersLoadNothingOfIt(String command) throws Exception {
        Path office = Files.writeString(
                folder.resolve("office.json"),
                "{\"format\": 1, \"folders\": \"" + Path.of("sample-quotes").toAbsolutePath() + "\"}");
        List<String> classes =
                loaded(command.replace("OFFICE", office.toString()).split(" "));
        assertThat(classes).as(Files.readString(folder.resolve("said"))).contains("spadework.cli.Spadework");
        assertThat(Files.readString(folder.resolve("said"))).containsAnyOf("$", "2026-0");
        assertThat(ofDatabases(classes)).isEmpty();
    }

    @Test
    void serverLoadsIt() throws Exception {
        Path office = Files.writeString(folder.resolve("office.json"), OfficeServer.file(OfficeServer.office()));
        assertThat(ofDatabases(loaded("office", "jobs", "--office", office.toString())))
                .as("what this test looks for is found where it is")
                .isNotEmpty();
    }
}
