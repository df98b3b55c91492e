// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a jar that was started without options starts. */
class JarStartTest {
    @TempDir
    private Path folder;

    @Test
    void optionsOfAShortRunThenTheJarThenWhatWasAskedForUnchanged() {
        Path jar = folder.resolve("spadework.jar");
        List<String> command = JarStart.command(Path.of("java"), jar, List.of("price", "a job", "--with", "x=\"1\""));
        assertThat(command).startsWith("java", "-XX:+UseSerialGC");
        assertThat(command).endsWith("-jar", jar.toString(), "price", "a job", "--with", "x=\"1\"");
        assertThat(command).noneMatch(option -> option.contains("SharedArchiveFile"));
    }

    @Test
    void archiveOfClassesBesideTheJarIsUsed() throws IOException {
        Files.createFile(folder.resolve("spadework.jsa"));
        assertThat(JarStart.command(Path.of("java"), folder.resolve("spadework.jar"), List.of()))
                .contains("-XX:SharedArchiveFile=" + folder.resolve("spadework.jsa"));
    }
}
