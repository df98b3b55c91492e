// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/** What each role may not see, tried by the commands themselves: what they print, write, and say no with. */
class RoleCommandsTest {
    private static final String CLOSED = "added-wall-then-closed";
    private static final String DRAFT = "stone-wall-engineer-first";
    private static final String BUILDING = "building";
    private static final String COPIES = "spadework.copies";

    /** Of customers, costs and notes of the jobs in this office. */
    private static final List<String> SECRETS = List.of(
            "Hathersage", "go low on this one", "margin 31", "perHour", "overhead", "\"wage", "27 Tansy Hollow");

    @TempDir
    private Path folder;

    private Server office;
    private StringWriter said;

    @BeforeEach
    void office() throws IOException {
        System.setProperty(COPIES, folder.resolve("copies").toString());
        office = OfficeServer.office();
        try (Store samples = new FolderStore(Path.of("sample-quotes"));
                Store store = PostgresStore.open(office, "office.json")) {
            for (String name : new String[] {StoredFolder.FIRM, CLOSED, DRAFT}) {
                Map<String, byte[]> files = new TreeMap<>();
                for (StoredFile file : samples.folder(name).files()) {
                    files.put(file.path(), samples.content(name, file));
                }
                store.write(new FolderChange(store.folder(name), files, Set.of()));
            }
            store.write(new FolderChange(
                    StoredFolder.empty(BUILDING),
                    Map.of(
                            "job.json", bytes("{\"number\": \"2026-077\", \"notes\": [\"go low on this one\"]}"),
                            "for-the-crew/scope-of-work.pdf", bytes("%PDF scope"),
                            "kept/costs.txt", bytes("margin 31"),
                            "wet-wall.jpg", bytes("jpg")),
                    Set.of()));
        }
        OfficeServer.sql(office, "update folder set stands = 'accepted' where name = '" + BUILDING + "'");
    }

    private static byte[] bytes(String words) {
        return words.getBytes(StandardCharsets.UTF_8);
    }

    @AfterEach
    void forget() {
        System.clearProperty(COPIES);
    }

    private int as(String role, String... arguments) throws IOException {
        Server member = OfficeServer.member(office, role);
        Path file = Files.writeString(folder.resolve(role + ".json"), OfficeServer.file(member));
        said = new StringWriter();
        PrintWriter to = new PrintWriter(said, true);
        String[] whole = Stream.concat(Stream.of(arguments), Stream.of("--office", file.toString()))
                .toArray(String[]::new);
        return Spadework.run(new Spadework(LocalDate.of(2026, 8, 10)), to, to, whole);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "crew, price building",
        "crew, price added-wall-then-closed",
        "crew, check building",
        "crew, documents building",
        "crew, issue building",
        "crew, register list added-wall-then-closed",
        "crew, register check building",
        "crew, bids .",
        "crew, feedback .",
        "crew, book list",
        "crew, book history DIG-MACH .",
        "crew, warranty list .",
        "crew, office jobs hathersage",
        "crew, office history building",
        "crew, office who building",
        "crew, office take building --to visit-of-the-crew",
        "crew, office begin pom.xml",
        "bookkeeper, price added-wall-then-closed",
        "bookkeeper, documents building",
        "bookkeeper, bids .",
        "bookkeeper, book show DIG-MACH",
        "bookkeeper, office jobs low",
        "bookkeeper, office history added-wall-then-closed",
        "bookkeeper, office take added-wall-then-closed --to visit-of-the-books",
        "bookkeeper, set added-wall-then-closed title=x",
        "estimator, office history nothing"
    })
    void whatARoleMayNotDoIsRefusedAndSaysNothingOfIt(String role, String command) throws IOException {
        assertThat(as(role, command.split(" "))).as(said::toString).isNotZero();
        assertThat(said.toString()).isNotBlank().doesNotContain(SECRETS).doesNotContain("internal fault");
        assertThat(secretsOnDisk()).isEmpty();
    }

    /** Files on this machine that hold what was kept from a role. */
    private List<String> secretsOnDisk() throws IOException {
        if (!Files.exists(folder.resolve("copies"))) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder.resolve("copies"))) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> {
                        try {
                            String text = Files.readString(file, StandardCharsets.ISO_8859_1);
                            return SECRETS.stream().anyMatch(text::contains);
                        } catch (IOException unreadable) {
                            throw new UncheckedIOException(unreadable);
                        }
                    })
                    .map(Path::toString)
                    .toList();
        }
    }

    @Test
    void crewListsTheJobsThatAreBuiltAndCopiesTheirScope() throws IOException {
        assertThat(as("crew", "office", "jobs")).as(said::toString).isZero();
        assertThat(said.toString()).contains("2026-077").doesNotContain("2026-041", "Hathersage");
        Server member = OfficeServer.member(office, "crew");
        Path file = Files.writeString(folder.resolve("crew.json"), OfficeServer.file(member));
        Path along = folder.resolve("along");
        StringWriter out = new StringWriter();
        PrintWriter to = new PrintWriter(out, true);
        assertThat(Spadework.run(
                        new Spadework(LocalDate.of(2026, 8, 10)),
                        to,
                        to,
                        "office",
                        "copy",
                        file.toString(),
                        along.toString()))
                .as(out.toString())
                .isZero();
        try (Stream<Path> all = Files.walk(along)) {
            assertThat(all.filter(Files::isRegularFile)
                            .map(one -> along.relativize(one).toString())
                            .filter(one -> !one.endsWith(".lock")))
                    .containsExactlyInAnyOrder("building/for-the-crew/scope-of-work.pdf", "building/wet-wall.jpg");
        }
    }

    @Test
    void bookkeeperListsClosedJobsAndCopiesTheirMoney() throws IOException {
        assertThat(as("bookkeeper", "office", "jobs")).as(said::toString).isZero();
        assertThat(said.toString()).contains("2026-041").doesNotContain("2026-077");
    }

    @Test
    void whatAnEstimatorDoesStandsUnderHisName() throws IOException {
        as("estimator", "bids", ".");
        assertThat(said.toString()).contains("Hathersage");
        assertThat(as("estimator", "set", DRAFT, "title=Looked at again"))
                .as(said::toString)
                .isZero();
        assertThat(as("owner", "office", "history", DRAFT)).isZero();
        assertThat(said.toString()).contains("_estimator: job.json");
    }
}
