// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import spadework.store.StoreFailure;

/** The tables of an office, brought up version by version; never down. */
final class Migrations {
    /** Where the tables lie in the database. */
    static final String SCHEMA = "spadework";
    /** The version of the tables that this program works with: the last file of the folder. */
    static final int WANTED = 2;

    static final String FOLDER = "spadework/store/migration";

    private static final String VERSION =
            "select coalesce(max(version::int), 0) from flyway_schema_history where success"
                    + " and version is not null";

    private Migrations() {}

    /**
     * Brings the tables up. What is there already stays as it is.
     *
     * @return how many versions it went up
     */
    static int up(Server server) {
        return Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(server.url(), server.user(), server.password().orElse(null))
                .schemas(SCHEMA)
                .defaultSchema(SCHEMA)
                .createSchemas(true)
                .cleanDisabled(true)
                .locations("classpath:" + FOLDER)
                .load()
                .migrate()
                .migrationsExecuted;
    }

    /**
     * Holds the tables to this program.
     *
     * @param office what names the office, for the command that mends it
     * @throws StoreFailure if there are none, or they are older or newer than this program wants
     */
    static void check(Handle handle, Server server, String office) throws StoreFailure {
        boolean setUp = handle.createQuery("select to_regclass(:table) is not null")
                .bind("table", SCHEMA + ".flyway_schema_history")
                .mapTo(Boolean.class)
                .one();
        if (!setUp) {
            throw new StoreFailure(StoreFailure.Why.NOT_SET_UP, null, server.called(), office);
        }
        int there = handle.createQuery(VERSION).mapTo(Integer.class).one();
        if (there < WANTED) {
            throw new StoreFailure(StoreFailure.Why.TOO_OLD, null, server.called(), there, WANTED, office);
        }
        if (there > WANTED) {
            throw new StoreFailure(StoreFailure.Why.TOO_NEW, null, server.called(), there, WANTED);
        }
    }
}
