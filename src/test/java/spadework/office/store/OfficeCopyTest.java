// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;

/** An office moves from folders to a server and back without loss, and again and again without harm. */
class OfficeCopyTest {
    private static final Path SAMPLES = Path.of("sample-quotes");

    @TempDir
    private Path back;

    @Test
    void thereAndBackEveryByteIsTheSame() throws IOException {
        try (Store folders = new FolderStore(SAMPLES);
                Store server = PostgresStore.open(OfficeServer.office(), "office.json");
                Store again = new FolderStore(back)) {
            OfficeCopy.Copied there = new OfficeCopy(folders, server, false).all((done, all) -> {});
            assertThat(there.left()).isEmpty();
            assertThat(there.copied()).isEqualTo(folders.list().size() + 1);
            new OfficeCopy(server, again, false).all((done, all) -> {});
            assertThat(bytes(back)).isEqualTo(bytes(SAMPLES));
        }
    }

    @Test
    void copyingOnceMoreChangesNothing() throws IOException {
        try (Store folders = new FolderStore(SAMPLES);
                Store server = PostgresStore.open(OfficeServer.office(), "office.json")) {
            OfficeCopy copy = new OfficeCopy(folders, server, false);
            OfficeCopy.Copied first = copy.all((done, all) -> {});
            OfficeCopy.Copied second = copy.all((done, all) -> {});
            assertThat(second).isEqualTo(new OfficeCopy.Copied(0, first.copied(), List.of()));
            assertThat(server.history("added-wall-then-closed")).hasSize(1);
        }
    }

    @Test
    void folderThatSaysSomethingElseIsLeftAndTold() throws IOException {
        try (Store folders = new FolderStore(SAMPLES);
                Store server = PostgresStore.open(OfficeServer.office(), "office.json")) {
            OfficeCopy copy = new OfficeCopy(folders, server, false);
            copy.all((done, all) -> {});
            String job = "stone-wall-engineer-first";
            server.write(new FolderChange(
                    server.folder(job), Map.of("job.json", "{}".getBytes(StandardCharsets.UTF_8)), Set.of()));
            OfficeCopy.Copied second = copy.all((done, all) -> {});
            assertThat(second.copied()).isZero();
            assertThat(second.left())
                    .singleElement()
                    .asString()
                    .contains(job + " says something else at its new home (job.json)");
            assertThat(new OfficeCopy(folders, server, true)
                            .all((done, all) -> {})
                            .copied())
                    .isEqualTo(1);
            assertThat(server.folder(job)).isEqualTo(folders.folder(job));
        }
    }

    @Test
    void registerIsNeverCutByACopy() throws IOException {
        try (Store folders = new FolderStore(SAMPLES);
                Store server = PostgresStore.open(OfficeServer.office(), "office.json")) {
            new OfficeCopy(folders, server, false).all((done, all) -> {});
            Files.createDirectories(back.resolve("added-wall-then-closed"));
            Files.copy(
                    SAMPLES.resolve("added-wall-then-closed/job.json"),
                    back.resolve("added-wall-then-closed/job.json"));
            OfficeCopy.Copied copied = new OfficeCopy(new FolderStore(back), server, true).all((done, all) -> {});
            assertThat(copied.left()).singleElement().asString().contains("it only grows");
            assertThat(server.folder("added-wall-then-closed")).isEqualTo(folders.folder("added-wall-then-closed"));
        }
    }

    private static Map<String, String> bytes(Path root) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!file.getFileName().toString().endsWith(".lock")) {
                    all.put(
                            root.relativize(file).toString(),
                            new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return all;
    }
}
