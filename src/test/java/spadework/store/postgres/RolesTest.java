// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.StoreFailure;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderFiles;

/** What each role may see and do, and what the server keeps from it: rows, files, searches, its own words. */
class RolesTest {
    private static final Path SAMPLES = Path.of("sample-quotes");
    private static final String CLOSED = "added-wall-then-closed";
    private static final String DRAFT = "stone-wall-engineer-first";
    private static final String BUILDING = "building";

    private static Server office;

    @BeforeAll
    static void office() throws IOException {
        office = OfficeServer.office();
        try (PostgresStore owner = PostgresStore.open(OfficeServer.member(office, "owner"), "office.json")) {
            keep(owner, StoredFolder.FIRM);
            keep(owner, CLOSED);
            keep(owner, DRAFT);
            owner.write(new FolderChange(
                    StoredFolder.empty(BUILDING),
                    Map.of(
                            "job.json",
                                    "{\"number\": \"2026-077\", \"notes\": [\"go low\"]}"
                                            .getBytes(StandardCharsets.UTF_8),
                            "for-the-crew/scope-of-work.pdf", "%PDF".getBytes(StandardCharsets.UTF_8),
                            "kept/costs.xlsx", "margin".getBytes(StandardCharsets.UTF_8),
                            "wet-wall.jpg", "jpg".getBytes(StandardCharsets.UTF_8)),
                    Set.of()));
        }
        OfficeServer.sql(office, "update folder set stands = 'accepted' where name = '" + BUILDING + "'");
    }

    @Test
    void crewSeesScopeAndPicturesOfJobsThatAreBeingBuilt() throws IOException {
        try (PostgresStore crew = PostgresStore.open(OfficeServer.member(office, "crew"), "office.json")) {
            assertThat(crew.list()).extracting(FolderHead::name).containsExactly(BUILDING);
            assertThat(crew.folder(BUILDING).files())
                    .extracting(StoredFile::path)
                    .containsExactly("for-the-crew/scope-of-work.pdf", "wet-wall.jpg");
            assertThat(crew.folder(CLOSED).files()).isEmpty();
            assertThat(crew.folder(StoredFolder.FIRM).files()).isEmpty();
            StoredFile scope = crew.folder(BUILDING).files().get(0);
            assertThat(crew.content(BUILDING, scope)).isEqualTo("%PDF".getBytes(StandardCharsets.UTF_8));
        }
    }

    @Test
    void bookkeeperSeesTheMoneyOfClosedJobs() throws IOException {
        try (PostgresStore books = PostgresStore.open(OfficeServer.member(office, "bookkeeper"), "office.json")) {
            assertThat(books.list()).extracting(FolderHead::name).containsExactly(CLOSED);
            assertThat(books.folder(CLOSED).files())
                    .extracting(file -> FileKind.of(CLOSED, file.path()))
                    .containsOnly(FileKind.MONEY, FileKind.REGISTER);
            StoredFile chain = books.folder(CLOSED).file(FileKind.CHAIN).orElseThrow();
            assertThat(books.content(CLOSED, chain))
                    .isEqualTo(Files.readAllBytes(SAMPLES.resolve(CLOSED).resolve(FileKind.CHAIN)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"crew", "bookkeeper"})
    void whoOnlyReadsWritesNothing(String role) throws IOException {
        try (PostgresStore store = PostgresStore.open(OfficeServer.member(office, role), "office.json")) {
            for (String name : new String[] {"new", BUILDING, CLOSED}) {
                StoreFailure refused = catchThrowableOfType(
                        StoreFailure.class,
                        () -> store.write(
                                new FolderChange(store.folder(name), Map.of("a.txt", new byte[1]), Set.of())));
                assertThat(refused.why()).isEqualTo(StoreFailure.Why.NOT_ALLOWED);
                assertThat(refused).hasMessageContaining("Ask the owner for the right. Nothing was done.");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"crew", "bookkeeper"})
    void nobodyFindsByWordsWhatIsKeptFromThem(String role) throws IOException {
        try (PostgresStore store = PostgresStore.open(OfficeServer.member(office, role), "office.json")) {
            StoreFailure refused = catchThrowableOfType(StoreFailure.class, () -> store.find("low", 10));
            assertThat(refused.why()).isEqualTo(StoreFailure.Why.NOT_ALLOWED);
            assertThat(refused.getMessage()).doesNotContain("low", "margin");
        }
    }

    @Test
    void nobodyReadsAFileByItsSum() throws IOException {
        StoredFile costs;
        try (PostgresStore owner = PostgresStore.open(office, "office.json")) {
            costs = owner.folder(BUILDING).file("kept/costs.xlsx").orElseThrow();
        }
        for (String role : new String[] {"crew", "bookkeeper"}) {
            try (PostgresStore store = PostgresStore.open(OfficeServer.member(office, role), "office.json")) {
                assertThatThrownBy(() -> store.content(BUILDING, costs)).isInstanceOf(NoSuchFileException.class);
            }
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "crew       | select job from folder",
                "crew       | select words from folder",
                "crew       | select text from register_line",
                "crew       | select files from folder_version",
                "crew       | update file set kind = 'crew'",
                "crew       | alter table content disable row level security",
                "bookkeeper | select job from folder",
                "bookkeeper | insert into register_line values (1, 1, '{}')",
                "bookkeeper | delete from file",
                "estimator  | update register_line set text = '{}'",
                "estimator  | delete from register_line",
                "estimator  | truncate register_line",
                "estimator  | update folder_version set what = ''",
                "estimator  | delete from folder",
                "estimator  | drop trigger register_stays on register_line",
                "estimator  | update content set bytes = ''",
                "owner      | update register_line set text = '{}'",
                "owner      | delete from register_line",
                "owner      | delete from folder_version",
                "owner      | alter table register_line disable trigger all"
            })
    void serverRefusesByItsOwnLanguageToo(String role, String words) throws IOException {
        Server member = OfficeServer.member(office, role.strip());
        assertThatThrownBy(() -> OfficeServer.sql(member, words))
                .hasMessageFindingMatch("permission denied|must be owner|the register only grows");
    }

    @ParameterizedTest(name = "{0}: {1} of {2}")
    @CsvSource({
        "crew, count(*), folder, 1",
        "crew, count(*), file, 2",
        "crew, count(*), content, 2",
        "bookkeeper, count(*), folder, 1"
    })
    void rowsOfOthersAreNotThereForThem(String role, String what, String table, String wanted) throws IOException {
        Server member = OfficeServer.member(office, role);
        String check = "do $$ begin if (select " + what + " from " + table + ") <> " + wanted
                + " then raise exception 'sees more'; end if; end $$";
        OfficeServer.sql(member, check);
        assertThatThrownBy(() -> OfficeServer.sql(office, check)).hasMessageContaining("sees more");
    }

    @Test
    void estimatorPricesWithTheBooksAndLeavesMarginAndRulesToTheOwner() throws IOException {
        try (PostgresStore estimator = PostgresStore.open(OfficeServer.member(office, "estimator"), "office.json")) {
            StoredFolder firm = estimator.folder(StoredFolder.FIRM);
            assertThat(firm.file("company.json")).isPresent();
            StoredFolder book = estimator.write(
                    new FolderChange(firm, Map.of("price-book.json", "{}".getBytes(StandardCharsets.UTF_8)), Set.of()));
            for (String path : new String[] {"company.json", "state-rules.json"}) {
                assertThatThrownBy(() -> estimator.write(new FolderChange(book, Map.of(path, new byte[1]), Set.of())))
                        .as(path)
                        .isInstanceOf(StoreFailure.class)
                        .extracting(refused -> ((StoreFailure) refused).why())
                        .isEqualTo(StoreFailure.Why.NOT_ALLOWED);
            }
            assertThat(estimator.folder(StoredFolder.FIRM)).isEqualTo(book);
        }
    }

    private static void keep(PostgresStore store, String name) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        for (StoredFile file : FolderFiles.read(SAMPLES, name).files()) {
            files.put(file.path(), Files.readAllBytes(SAMPLES.resolve(name).resolve(file.path())));
        }
        store.write(new FolderChange(store.folder(name), files, Set.of()));
    }
}
