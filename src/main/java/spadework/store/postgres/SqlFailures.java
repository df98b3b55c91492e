// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import spadework.store.StoreFailure;
import spadework.store.StoreFailure.Why;

/** What the server's answer means for whoever asked, by its SQLSTATE (PostgreSQL manual, appendix A). */
final class SqlFailures {
    private final Server server;

    SqlFailures(Server server) {
        this.server = server;
    }

    /** The answer of the server behind whatever a library made of it. */
    static Optional<SQLException> behind(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getSQLState() != null) {
                return Optional.of(sql);
            }
        }
        return Optional.empty();
    }

    static String state(Throwable thrown) {
        return behind(thrown).map(SQLException::getSQLState).orElse("");
    }

    /** Whether the same may go well if it is tried again: two steps stood in each other's way. */
    static boolean isWorthAnotherTry(Throwable thrown) {
        return switch (state(thrown)) {
            case "40001", "40P01" -> true;
            default -> false;
        };
    }

    /** Whether the connection broke off, so that nobody here knows how far the server came. */
    static boolean brokeOff(Throwable thrown) {
        String state = state(thrown);
        return state.startsWith("08") || state.startsWith("57P");
    }

    /** Whether the server did not show that it is the one of its name. */
    private boolean isDoubted(Throwable thrown) {
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            String words = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
            if (words.contains("certificate") || words.contains("pkix") || words.contains("hostnameverifier")) {
                return server.tls() == Server.Tls.CHECKED;
            }
        }
        return false;
    }

    /** Why an office was not opened. */
    StoreFailure unopened(Throwable thrown) {
        if (isDoubted(thrown)) {
            return new StoreFailure(Why.NOT_TRUSTED, thrown, server.called());
        }
        boolean encrypts = behind(thrown)
                .filter(sql -> String.valueOf(sql.getMessage()).contains("SSL"))
                .isEmpty();
        return switch (state(thrown)) {
            case "08004" ->
                encrypts
                        ? new StoreFailure(Why.PASSWORD, thrown, server.called(), server.user())
                        : new StoreFailure(Why.NO_TLS, thrown, server.called());
            case "", "08001", "08003", "08006", "57P03" -> new StoreFailure(Why.UNREACHABLE, thrown, server.called());
            case "23505" -> new StoreFailure(Why.OTHER, thrown, server.called(), "SQLSTATE 23505");
            default -> told(thrown, "");
        };
    }

    /** @param name of the folder in which a step was to be taken */
    StoreFailure told(Throwable thrown, String name) {
        String called = server.called();
        String state = state(thrown);
        return switch (state) {
            case "28P01", "28000" -> new StoreFailure(Why.PASSWORD, thrown, called, server.user());
            case "3D000" -> new StoreFailure(Why.NO_DATABASE, thrown, called);
            case "42501" -> new StoreFailure(Why.NOT_ALLOWED, thrown, called, server.user());
            case "55P03" -> new StoreFailure(Why.BUSY, thrown, name, Connections.WAIT.toSeconds());
            case "57014" -> new StoreFailure(Why.SLOW, thrown, called, Connections.STATEMENT.toSeconds());
            case "53100" -> new StoreFailure(Why.FULL, thrown, called);
            case "23505" -> new StoreFailure(Why.NUMBER_TAKEN, thrown, name);
            case "08001" -> new StoreFailure(Why.UNREACHABLE, thrown, called);
            default -> {
                if (brokeOff(thrown)) {
                    yield new StoreFailure(Why.WENT_AWAY, thrown, called);
                }
                // The server's own words may quote what was to be written; its code does not.
                yield new StoreFailure(Why.OTHER, thrown, called, state.isEmpty() ? "?" : "SQLSTATE " + state);
            }
        };
    }
}
