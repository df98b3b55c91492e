// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;

/** Connections to the server, a few at a time. Every statement ends within its time. */
final class Connections {
    /** No statement of a step takes so long. */
    static final Duration STATEMENT = Duration.ofSeconds(60);
    /** So long one waits for whoever takes a step in the same folder. */
    static final Duration WAIT = Duration.ofSeconds(30);

    private static final Duration CONNECT = Duration.ofSeconds(5);
    private static final int MOST = 4;

    private Connections() {}

    /** @throws com.zaxxer.hikari.pool.HikariPool.PoolInitializationException if the first connection is refused */
    static HikariDataSource to(Server server) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("office");
        config.setJdbcUrl(server.url());
        config.setUsername(server.user());
        server.password().ifPresent(config::setPassword);
        config.setMaximumPoolSize(MOST);
        config.setMinimumIdle(0);
        config.setConnectionTimeout(CONNECT.toMillis());
        config.setInitializationFailTimeout(1);
        config.setSchema(Migrations.SCHEMA);
        config.addDataSourceProperty("connectTimeout", CONNECT.toSeconds());
        config.addDataSourceProperty("tcpKeepAlive", true);
        config.addDataSourceProperty("ApplicationName", "spadework");
        config.addDataSourceProperty(
                "options",
                "-c statement_timeout=" + STATEMENT.toMillis() + " -c lock_timeout=" + WAIT.toMillis()
                        // What is acknowledged is on the server's disk, whatever the server does for others.
                        + " -c synchronous_commit=on -c idle_in_transaction_session_timeout=" + STATEMENT.toMillis());
        return new HikariDataSource(config);
    }
}
