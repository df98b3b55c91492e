// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.office.files.JobFile;
import spadework.office.files.JobsHome;
import spadework.register.Event;
import spadework.register.Register;
import spadework.store.FolderChange;
import spadework.store.FolderMoved;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/** Copies of folders of an office in which somebody works: both have the same, or the copy what the office has. */
class OfficeCopiesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 8, 10);

    @TempDir
    private Path folder;

    private Store office;
    private OfficeCopies copies;
    private Path job;

    @BeforeEach
    void open() throws IOException {
        office = PostgresStore.open(OfficeServer.office(), "office.json");
        write(StoredFolder.FIRM, "company.json", "{\"name\": \"A\"}");
        write(StoredFolder.FIRM, "price-book.json", "{\"items\": []}");
        write("j", "job.json", "{\"number\": \"2026-001\", \"title\": \"stone\"}");
        write("j", "wet.jpg", "picture");
        copies = new OfficeCopies(office, folder.resolve("copies"), "ana");
        job = root().resolve("j").resolve("job.json");
    }

    @AfterEach
    void close() {
        copies.close();
        office.close();
    }

    private Path root() {
        return copies.tree().orElseThrow();
    }

    private void write(String name, String path, String text) throws IOException {
        office.write(
                new FolderChange(office.folder(name), Map.of(path, text.getBytes(StandardCharsets.UTF_8)), Set.of()));
    }

    private String text(String name, String path) throws IOException {
        StoredFile file = office.folder(name).file(path).orElseThrow();
        return new String(office.content(name, file), StandardCharsets.UTF_8);
    }

    @Test
    void officeWithoutACompanyIsTold() throws IOException {
        try (Store bare = PostgresStore.open(OfficeServer.office(), "office.json")) {
            assertThatThrownBy(() -> new OfficeCopies(bare, folder.resolve("bare"), "ana"))
                    .hasMessageContaining("has no company.json yet")
                    .hasMessageContaining("spadework office copy");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"crew", "bookkeeper"})
    void whoMayNotSeeWhatJobsArePricedByOpensNoWindow(String role) throws IOException {
        Server server = OfficeServer.office();
        try (Store owner = PostgresStore.open(server, "office.json");
                Store member = PostgresStore.open(OfficeServer.member(server, role), "office.json")) {
            for (String name : new String[] {StoredFolder.FIRM, "built"}) {
                owner.write(new FolderChange(
                        owner.folder(name), Map.of("company.json", "{}".getBytes(StandardCharsets.UTF_8)), Set.of()));
            }
            String stands = role.equals("crew") ? "accepted" : "closed";
            OfficeServer.sql(server, "update folder set stands = '" + stands + "' where name = 'built'");
            assertThatThrownBy(() -> new OfficeCopies(member, folder.resolve(role), role))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("does not let you do that. Ask the owner for the right");
        }
    }

    @Test
    void jobThatTheOfficeDoesNotHaveIsTold() {
        assertThatThrownBy(() -> copies.refresh(root().resolve("nothing").resolve("job.json")))
                .hasMessageContaining("The office has no job nothing");
    }

    @Test
    void savingGoesOnlyOverWhatWasSeen() throws IOException {
        copies.refresh(job);
        JobFile file = JobFile.at(job);
        assertThat(copies.save(file, "{\"number\": \"2026-001\", \"title\": \"block\"}"))
                .isEqualTo(JobFile.Saved.DONE);
        assertThat(text("j", "job.json")).contains("block");
        write("j", "job.json", "{\"number\": \"2026-001\", \"title\": \"theirs\"}");
        assertThat(copies.save(file, "{\"number\": \"2026-001\", \"title\": \"mine\"}"))
                .isEqualTo(JobFile.Saved.CHANGED_ON_DISK);
        assertThat(text("j", "job.json")).contains("theirs");
        assertThat(file.changedElsewhere()).contains("theirs");
    }

    @Test
    void stepBringsWhatItChangedInTheJobAndInTheFirmsBooks() throws IOException {
        copies.refresh(job);
        copies.step(job, () -> {
            Register.of(job.getParent()).append(DAY, Event.NOTE, Map.of("text", "done"));
            Files.writeString(job.resolveSibling("paper.pdf"), "%PDF");
            return Files.writeString(root().resolve("price-book.json"), "{\"items\": [1]}");
        });
        assertThat(text("j", "register.jsonl")).contains("done");
        assertThat(text("j", "paper.pdf")).isEqualTo("%PDF");
        assertThat(text(StoredFolder.FIRM, "price-book.json")).isEqualTo("{\"items\": [1]}");
    }

    @Test
    void stepOverAStateThatSomebodyElseChangedIsUndoneHereToo() throws IOException {
        copies.refresh(job);
        assertThatThrownBy(() -> copies.step(job, () -> {
                    Register.of(job.getParent()).append(DAY, Event.NOTE, Map.of("text", "mine"));
                    Files.writeString(job, "{\"number\": \"2026-001\", \"title\": \"mine\"}");
                    write("j", "notes.txt", "theirs, and they did not ask for their turn");
                    return job;
                }))
                .isInstanceOf(FolderMoved.class);
        assertThat(office.folder("j").file("register.jsonl")).isEmpty();
        assertThat(job).content().contains("stone");
        assertThat(job.resolveSibling("register.jsonl")).doesNotExist();
        copies.refresh(job);
        assertThat(job.resolveSibling("notes.txt")).content().startsWith("theirs");
    }

    @Test
    void jobsAreFoundWithoutTheirPicturesUntilOneIsOpened() throws IOException {
        assertThat(copies.found("stone", 10))
                .extracting(JobsHome.FoundJob::file)
                .containsExactly(job);
        assertThat(job).exists();
        assertThat(job.resolveSibling("wet.jpg")).doesNotExist();
        copies.refresh(job);
        assertThat(job.resolveSibling("wet.jpg")).exists();
        write("j", "job.json", "{\"number\": \"2026-001\", \"title\": \"block\"}");
        assertThat(copies.found("block", 10))
                .extracting(JobsHome.FoundJob::file)
                .containsExactly(job);
        assertThat(job).content().contains("block");
        assertThat(job.resolveSibling("wet.jpg"))
                .as("an open job is kept whole")
                .exists();
        assertThat(copies.found("stone", 10)).isEmpty();
    }

    @Test
    void allJobsAreThereToBeRead() throws IOException {
        write("k", "job.json", "{\"number\": \"2026-002\"}");
        Files.createDirectories(root().resolve("gone"));
        Files.writeString(root().resolve("gone").resolve("job.json"), "{}");
        copies.refreshAll(root());
        try (Stream<Path> all = Files.walk(root())) {
            assertThat(all.filter(path -> path.endsWith("job.json"))
                            .map(path -> root().relativize(path).toString()))
                    .containsExactlyInAnyOrder("j/job.json", "k/job.json");
        }
    }

    @Test
    void fileOfThisMachineIsNoOfficesJob() throws IOException {
        Path other = Files.writeString(folder.resolve("job.json"), "{}");
        assertThat(copies.isShared(other)).isFalse();
        assertThat(copies.save(JobFile.at(other), "{\"a\": 1}")).isEqualTo(JobFile.Saved.DONE);
        assertThat(copies.others(other)).isEmpty();
        assertThat(office.list()).hasSize(1);
    }
}
