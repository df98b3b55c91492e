// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
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
 * @param service the entry of the service file ({@code .pg_service.conf}) in which the password stands; empty for none
 */
public record Server(
        String host, int port, String database, String user, Optional<String> password, Tls tls, String service) {

    /** Whether what goes there and back is encrypted. */
    public enum Tls {
        ON("require"),
        OFF("disable"),
        /** Encrypted, and the server shows by a certificate that it is the one of that name. */
        CHECKED("verify-full");

        private final String mode;

        Tls(String mode) {
            this.mode = mode;
        }

        /** By its word in the file of an office; {@link #ON} where there is none. */
        public static Tls of(String word) {
            return word.isEmpty() ? ON : valueOf(word.toUpperCase(Locale.ROOT));
        }

        /** As the driver calls it. */
        String mode() {
            return mode;
        }
    }

    /** A server without an entry in the service file. */
    public Server(String host, int port, String database, String user, Optional<String> password, boolean tls) {
        this(host, port, database, user, password, tls ? Tls.ON : Tls.OFF, "");
    }

    /** As it is called in messages: never with the password. */
    public String called() {
        return host + ":" + port + "/" + database;
    }

    /** As the driver takes it. */
    String url() {
        return "jdbc:postgresql://" + host + ":" + port + "/" + database + "?sslmode=" + tls.mode()
                + (service.isEmpty() ? "" : "&service=" + URLEncoder.encode(service, StandardCharsets.UTF_8));
    }
}
