// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** A PostgreSQL server for tests: one for each process, with a database of its own for each test. */
public final class OfficeServer {
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static EmbeddedPostgres running;
    private static Server pattern;

    private OfficeServer() {}

    private static synchronized int port() throws IOException {
        String given = System.getProperty("spadework.postgres");
        if (given != null) {
            return Integer.parseInt(given);
        }
        if (running == null) {
            running = EmbeddedPostgres.builder()
                    .setServerConfig("fsync", "off")
                    .setServerConfig("max_connections", "200")
                    .start();
        }
        return running.getPort();
    }

    /** A database in which there is no office yet. */
    public static synchronized Server bare() throws IOException {
        String name = name();
        Server server = as("postgres", name);
        sql(as("postgres", "postgres"), "create database " + name);
        return server;
    }

    /** A new office: a copy of one that was set up. */
    public static synchronized Server office() throws IOException {
        if (pattern == null) {
            pattern = bare();
            PostgresStore.setUp(pattern);
        }
        String name = name();
        sql(as("postgres", "postgres"), "create database " + name + " template " + pattern.database());
        return as("postgres", name);
    }

    /** The database from which others are looked after. */
    static Server maintenance() throws IOException {
        return as("postgres", "postgres");
    }

    private static String name() {
        return "office_" + ProcessHandle.current().pid() + "_" + COUNT.incrementAndGet();
    }

    /** The text of the file that names an office; whose password is given apart. */
    public static String file(Server office) {
        return "{\"format\": 1, \"host\": \"" + office.host() + "\", \"port\": \"" + office.port()
                + "\", \"database\": \"" + office.database() + "\", \"user\": \"" + office.user()
                + "\", \"tls\": \"off\"}";
    }

    /** An account with a role in an office. */
    public static Server member(Server office, String role) throws IOException {
        String user = office.database() + "_" + role;
        sql(
                office,
                "do $$ begin if not exists (select 1 from pg_roles where rolname = '" + user
                        + "') then create user " + user + " password 'x' in role spadework_" + role
                        + "; end if; end $$");
        return new Server(office.host(), office.port(), office.database(), user, Optional.of("x"), false);
    }

    private static Server as(String user, String database) throws IOException {
        return new Server("localhost", port(), database, user, Optional.of("postgres"), false);
    }

    /** Says something to a server as an account of it. */
    public static void sql(Server server, String words) throws IOException {
        try (Connection connection = DriverManager.getConnection(
                        server.url() + "&currentSchema=spadework",
                        server.user(),
                        server.password().orElse(""));
                Statement statement = connection.createStatement()) {
            statement.execute(words);
        } catch (SQLException refused) {
            throw new IOException(refused.getMessage(), refused);
        }
    }
}
