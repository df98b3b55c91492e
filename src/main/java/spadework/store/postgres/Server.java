// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.util.Optional;

/**
 * Where an office on PostgreSQL lies.
 *
 * @param host name of the machine
 * @param port 1 to 65535; 5432 where nothing else is agreed
 * @param database its name there
 * @param user the account that asks
 * @param password where it does not stand in the password file ({@code .pgpass}), which the driver reads itself
 * @param tls whether what goes there and back is encrypted
 */
public record Server(String host, int port, String database, String user, Optional<String> password, boolean tls) {
    /** As it is called in messages: never with the password. */
    public String called() {
        return host + ":" + port + "/" + database;
    }

    /** As the driver takes it. */
    String url() {
        return "jdbc:postgresql://" + host + ":" + port + "/" + database;
    }
}
