// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Base64;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.press.signing.SelfMadeKey;
import spadework.store.StoreFailure;
import spadework.store.StoreFailure.Why;

/** Who is let in, by which password and from where; and that nobody listens in. The server asks for both. */
class ServerDoorTest {
    private static final String PASSWORD = "walls and water";
    private static final String PASS_FILE = "org.postgresql.pgpassfile";
    private static final String SERVICE_FILE = "org.postgresql.pgservicefile";

    @TempDir
    static Path folder;

    private static EmbeddedPostgres running;
    private static int port;

    @BeforeAll
    static void server() throws Exception {
        KeyStore keys = KeyStore.getInstance("PKCS12");
        keys.load(new ByteArrayInputStream(SelfMadeKey.file("localhost", LocalDate.now(), "x")), "x".toCharArray());
        Path key = pem(
                "server.key",
                "PRIVATE KEY",
                keys.getKey("papers", "x".toCharArray()).getEncoded());
        Files.setPosixFilePermissions(key, PosixFilePermissions.fromString("rw-------"));
        Path certificate =
                pem("server.crt", "CERTIFICATE", keys.getCertificate("papers").getEncoded());
        Path data = folder.resolve("data");
        running = EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setServerConfig("ssl", "on")
                .setServerConfig("ssl_key_file", key.toString())
                .setServerConfig("ssl_cert_file", certificate.toString())
                .start();
        port = running.getPort();
        try (Connection open = running.getPostgresDatabase().getConnection();
                Statement statement = open.createStatement()) {
            statement.execute("create user ada password '" + PASSWORD + "' superuser");
            statement.execute("create database office");
            Files.writeString(data.resolve("pg_hba.conf"), "hostssl all all all scram-sha-256\n");
            statement.execute("select pg_reload_conf()");
        }
        Server owner = server(Optional.of(PASSWORD), Server.Tls.ON, "");
        // The new rules hold once the server has read them.
        for (int i = 0;
                i < 100
                        && refusal(server(Optional.of("wrong"), Server.Tls.ON, ""))
                                        .why()
                                != Why.PASSWORD;
                i++) {
            Thread.sleep(50);
        }
        PostgresStore.setUp(owner);
    }

    private static Path pem(String name, String what, byte[] bytes) throws IOException {
        return Files.writeString(
                folder.resolve(name),
                "-----BEGIN " + what + "-----\n" + Base64.getMimeEncoder().encodeToString(bytes) + "\n-----END " + what
                        + "-----\n");
    }

    @AfterAll
    static void stop() throws IOException {
        running.close();
    }

    @AfterEach
    void forget() {
        System.clearProperty(PASS_FILE);
        System.clearProperty(SERVICE_FILE);
    }

    private static Server server(Optional<String> password, Server.Tls tls, String service) {
        return new Server("localhost", port, "office", "ada", password, tls, service);
    }

    private static StoreFailure refusal(Server server) {
        return catchThrowableOfType(
                StoreFailure.class,
                () -> PostgresStore.open(server, "office.json").close());
    }

    private static void opens(Server server) throws IOException {
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            assertThat(store.list()).isEmpty();
        }
    }

    @Test
    void rightPasswordOpensAndAWrongOneIsTold() throws IOException {
        opens(server(Optional.of(PASSWORD), Server.Tls.ON, ""));
        StoreFailure refused = refusal(server(Optional.of("wrong"), Server.Tls.ON, ""));
        assertThat(refused.why()).isEqualTo(Why.PASSWORD);
        assertThat(refused)
                .hasMessageContaining("did not let ada in")
                .hasMessageContaining("PGPASSWORD")
                .hasMessageNotContaining("wrong");
    }

    @Test
    void passwordComesFromThePasswordFile() throws IOException {
        assertThat(refusal(server(Optional.empty(), Server.Tls.ON, "")).why()).isEqualTo(Why.PASSWORD);
        Path file = Files.writeString(folder.resolve("pgpass"), "localhost:" + port + ":office:ada:" + PASSWORD + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        System.setProperty(PASS_FILE, file.toString());
        opens(server(Optional.empty(), Server.Tls.ON, ""));
    }

    @Test
    void passwordComesFromTheServiceFile() throws IOException {
        Path file = Files.writeString(folder.resolve("services"), "[crew house]\npassword=" + PASSWORD + "\n");
        System.setProperty(SERVICE_FILE, file.toString());
        opens(server(Optional.empty(), Server.Tls.ON, "crew house"));
        StoreFailure refused = refusal(server(Optional.empty(), Server.Tls.ON, "nothing"));
        assertThat(refused).hasMessageContaining("Nothing was done");
    }

    @Test
    void whatGoesThereAndBackIsEncrypted() throws Exception {
        try (Connection open = DriverManager.getConnection(
                        server(Optional.empty(), Server.Tls.ON, "").url(), "ada", PASSWORD);
                Statement statement = open.createStatement();
                ResultSet row = statement.executeQuery("select ssl from pg_stat_ssl where pid = pg_backend_pid()")) {
            assertThat(row.next()).isTrue();
            assertThat(row.getBoolean(1)).isTrue();
        }
        assertThat(refusal(server(Optional.of(PASSWORD), Server.Tls.OFF, "")).why())
                .as("this server lets nobody in unencrypted")
                .isEqualTo(Why.PASSWORD);
    }

    @Test
    void serverThatNobodyVouchesForIsNotTrustedWhereThatIsAskedFor() {
        StoreFailure refused = refusal(server(Optional.of(PASSWORD), Server.Tls.CHECKED, ""));
        assertThat(refused.why()).isEqualTo(Why.NOT_TRUSTED);
        assertThat(refused).hasMessageContaining(".postgresql/root.crt");
    }
}
