// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.store.FolderChange;
import spadework.store.StoreFailure;
import spadework.store.StoreFailure.Why;
import spadework.store.StoredFolder;

/** Whatever keeps an office from being used is told in one sentence with what to do, and nothing is done. */
class ServerFailuresTest {

    @Test
    void serverThatCannotBeReached() {
        Server nowhere = new Server("localhost", 1, "office", "ada", Optional.of("x"), false);
        assertThat(refusal(nowhere))
                .hasMessageContaining("The office at localhost:1/office cannot be reached")
                .hasMessageContaining("Check that this machine has a network")
                .extracting(StoreFailure::why)
                .isEqualTo(Why.UNREACHABLE);
    }

    @Test
    void accountThatIsNotKnown() throws IOException {
        Server office = OfficeServer.office();
        Server stranger =
                new Server(office.host(), office.port(), office.database(), "nobody", Optional.of("wrong"), false);
        assertThat(refusal(stranger))
                .hasMessageContaining("did not let nobody in")
                .hasMessageContaining("PGPASSWORD")
                .extracting(StoreFailure::why)
                .isEqualTo(Why.PASSWORD);
    }

    @Test
    void serverThatDoesNotEncrypt() throws IOException {
        Server office = OfficeServer.office();
        Server encrypted =
                new Server(office.host(), office.port(), office.database(), office.user(), office.password(), true);
        assertThat(refusal(encrypted))
                .hasMessageContaining("does not encrypt what goes there and back")
                .extracting(StoreFailure::why)
                .isEqualTo(Why.NO_TLS);
    }

    @Test
    void databaseThatIsNotThere() throws IOException {
        Server office = OfficeServer.office();
        Server other = new Server(office.host(), office.port(), "nothing", office.user(), office.password(), false);
        assertThat(refusal(other)).extracting(StoreFailure::why).isEqualTo(Why.NO_DATABASE);
    }

    @Test
    void databaseThatIsNoOffice() throws IOException {
        assertThat(refusal(OfficeServer.bare()))
                .hasMessageContaining("spadework office set-up office.json")
                .extracting(StoreFailure::why)
                .isEqualTo(Why.NOT_SET_UP);
    }

    @Test
    void tablesThatAreTooOld() throws IOException {
        Server office = OfficeServer.office();
        OfficeServer.sql(office, "update flyway_schema_history set version = '0'");
        assertThat(refusal(office))
                .hasMessageContaining("tables of version 0, and this program wants version " + Migrations.WANTED)
                .extracting(StoreFailure::why)
                .isEqualTo(Why.TOO_OLD);
    }

    @Test
    void tablesThatAreTooNew() throws IOException {
        Server office = OfficeServer.office();
        OfficeServer.sql(office, "update flyway_schema_history set version = '99'");
        assertThat(refusal(office))
                .hasMessageContaining("tables of version 99")
                .hasMessageContaining("Install the program that the rest of the office has")
                .extracting(StoreFailure::why)
                .isEqualTo(Why.TOO_NEW);
    }

    @Test
    void serverThatGoesAwayBetweenTwoSteps() throws IOException {
        Server office = OfficeServer.office();
        try (PostgresStore store = PostgresStore.open(office, "office.json")) {
            store.folder("j");
            OfficeServer.sql(
                    OfficeServer.maintenance(), "alter database " + office.database() + " allow_connections false");
            OfficeServer.sql(
                    OfficeServer.maintenance(),
                    "select pg_terminate_backend(pid) from pg_stat_activity where datname = '" + office.database()
                            + "'");
            FolderChange change = new FolderChange(StoredFolder.empty("j"), Map.of("a.txt", new byte[1]), Set.of());
            StoreFailure gone = catchThrowableOfType(StoreFailure.class, () -> store.write(change));
            assertThat(gone).hasMessageContaining(office.called()).hasMessageContaining("othing was done");
            OfficeServer.sql(
                    OfficeServer.maintenance(), "alter database " + office.database() + " allow_connections true");
            assertThat(store.folder("j").files()).isEmpty();
            assertThat(store.write(change).files()).hasSize(1);
        }
    }

    /** The server's own words for a full disk, said at each table that a step writes. */
    @ParameterizedTest
    @ValueSource(strings = {"folder", "content", "file", "register_line", "folder_version"})
    void diskThatIsFullInTheMiddleOfAStep(String table) throws IOException {
        Server office = OfficeServer.office();
        FolderChange change = new FolderChange(
                StoredFolder.empty("j"),
                Map.of(
                        "job.json", "{}".getBytes(StandardCharsets.UTF_8),
                        "register.jsonl", register(),
                        "for-the-homeowner/proposal.pdf", new byte[] {1}),
                Set.of());
        try (PostgresStore store = PostgresStore.open(office, "office.json")) {
            OfficeServer.sql(
                    office,
                    "create function no_room() returns trigger language plpgsql as $$ begin raise exception"
                            + " 'could not extend file' using errcode = '53100'; end $$;"
                            + " create trigger no_room before insert on " + table
                            + " for each row execute function no_room()");
            StoreFailure full = catchThrowableOfType(StoreFailure.class, () -> store.write(change));
            assertThat(full.why()).isEqualTo(Why.FULL);
            assertThat(full)
                    .hasMessageContaining("The disk of the office at " + office.called() + " is full")
                    .hasMessageContaining("Nothing was done");
            assertThat(store.folder("j").files()).isEmpty();
            assertThat(store.list()).isEmpty();
            OfficeServer.sql(office, "drop trigger no_room on " + table);
            assertThat(store.write(change).files()).hasSize(3);
        }
    }

    private static byte[] register() throws IOException {
        return Files.readAllBytes(Path.of("sample-quotes/added-wall-then-closed/register.jsonl"));
    }

    @Test
    void tablesOfTheVersionBeforeAreBroughtUpAndKeepWhatTheyHold() throws IOException {
        Server office = OfficeServer.bare();
        Flyway.configure()
                .dataSource(office.url(), office.user(), office.password().orElse(null))
                .schemas(Migrations.SCHEMA)
                .locations("classpath:" + Migrations.FOLDER)
                .target("1")
                .load()
                .migrate();
        OfficeServer.sql(office, "insert into folder (name, version, number) values ('j', 'v', '2026-007')");
        assertThat(refusal(office).why()).isEqualTo(Why.TOO_OLD);
        assertThat(PostgresStore.setUp(office)).isEqualTo(Migrations.WANTED - 1);
        try (PostgresStore store = PostgresStore.open(office, "office.json")) {
            assertThat(store.lastNumber(2026)).isEqualTo(7);
        }
    }

    @Test
    void setUpAgainChangesNothing() throws IOException {
        Server office = OfficeServer.office();
        assertThat(PostgresStore.setUp(office)).isZero();
    }

    @Test
    void programWantsTheLastOfItsTables() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources", Migrations.FOLDER))) {
            assertThat(files.map(file -> file.getFileName().toString())
                            .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                            .max())
                    .hasValue(Migrations.WANTED);
        }
    }

    private static StoreFailure refusal(Server server) {
        return catchThrowableOfType(
                StoreFailure.class,
                () -> PostgresStore.open(server, "office.json").close());
    }
}
