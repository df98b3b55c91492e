// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.FolderName;
import spadework.store.FolderStanding;
import spadework.store.FolderVersion;
import spadework.store.RegisterGrowth;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoreFailure.Why;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/**
 * An office on PostgreSQL. A step is one transaction: its papers, its register lines and the job, or nothing. The
 * register is rows that nobody changes; the server itself holds each to the one before it. Who may see what is the
 * server's to decide, row by row.
 */
public final class PostgresStore implements Store {
    /** So often a step is tried that stands in the way of another. */
    private static final int TRIES = 8;

    private static final String HEADS = "select name, number, title, stands from folder where name <> ''";

    private final Server server;
    private final SqlFailures failures;
    private final HikariDataSource source;
    private final Jdbi jdbi;

    private PostgresStore(Server server, HikariDataSource source) {
        this.server = server;
        this.failures = new SqlFailures(server);
        this.source = source;
        this.jdbi = Jdbi.create(source);
    }

    /**
     * Opens an office.
     *
     * @param office what names it, for the messages that tell a command
     * @throws StoreFailure if it cannot be reached, does not let this account in, or has other tables
     */
    public static PostgresStore open(Server server, String office) throws StoreFailure {
        SqlFailures failures = new SqlFailures(server);
        HikariDataSource source;
        try {
            source = Connections.to(server);
        } catch (RuntimeException refused) {
            throw failures.unopened(refused);
        }
        PostgresStore store = new PostgresStore(server, source);
        try {
            store.jdbi.useHandle(handle -> Migrations.check(handle, server, office));
        } catch (StoreFailure unfit) {
            store.close();
            throw unfit;
        } catch (JdbiException refused) {
            store.close();
            throw failures.unopened(refused);
        }
        return store;
    }

    /**
     * Makes a database an office, or brings its tables up to this program.
     *
     * @return how many versions they went up
     * @throws StoreFailure if it cannot be reached, or the account may not make tables
     */
    public static int setUp(Server server) throws StoreFailure {
        try {
            return Migrations.up(server);
        } catch (RuntimeException refused) {
            throw new SqlFailures(server).unopened(refused);
        }
    }

    /** What is asked of the server. */
    private interface Asked<T> {
        T by(Handle handle) throws IOException;
    }

    private <T> T asked(String name, Asked<T> question) throws IOException {
        try {
            return jdbi.withHandle(question::by);
        } catch (JdbiException refused) {
            throw failures.told(refused, name);
        }
    }

    @Override
    public List<FolderHead> list() throws IOException {
        return asked(
                "",
                handle -> handle.createQuery(HEADS + " order by name collate \"C\"")
                        .map((row, context) -> head(row))
                        .list());
    }

    @Override
    public List<FolderHead> find(String words, int most) throws IOException {
        String wanted = SearchWords.of(words);
        return asked(
                "",
                handle -> handle.createQuery(HEADS
                                + (wanted.isEmpty() ? "" : " and words @@ to_tsquery('simple', :words)")
                                + " order by changed_at desc limit :most")
                        .bind("words", wanted)
                        .bind("most", most)
                        .map((row, context) -> head(row))
                        .list());
    }

    private static FolderHead head(ResultSet row) throws SQLException {
        return new FolderHead(
                row.getString("name"),
                row.getString("number"),
                row.getString("title"),
                FolderStanding.ofWord(row.getString("stands")));
    }

    @Override
    public Map<String, String> versions(List<String> names) throws IOException {
        Map<String, String> versions = new TreeMap<>();
        return asked("", handle -> {
            handle.createQuery("select name, version from folder where name = any(:names)")
                    .bindArray("names", String.class, names)
                    .map((row, context) -> versions.put(row.getString("name"), row.getString("version")))
                    .list();
            return versions;
        });
    }

    @Override
    public int lastNumber(int year) throws IOException {
        return asked(
                "",
                handle -> handle.createQuery("select coalesce(max(cast(substring(n from :pattern) as int)), 0)"
                                + " from (select name from folder where name like :begins union all"
                                + " select number from folder where number <> '' and number like :begins) as said (n)"
                                + " where n ~ :pattern")
                        .bind("begins", year + "-%")
                        .bind("pattern", "^" + year + "-([0-9]{3,6})$")
                        .mapTo(Integer.class)
                        .one());
    }

    @Override
    public StoredFolder folder(String name) throws IOException {
        String checked = FolderName.checked(name);
        return asked(checked, handle -> folder(handle, checked));
    }

    private static StoredFolder folder(Handle handle, String name) {
        return new StoredFolder(
                name,
                handle.createQuery("select f.path, f.sha256, f.length from file f join folder d on d.id = f.folder"
                                + " where d.name = :name")
                        .bind("name", name)
                        .map((row, context) -> new StoredFile(row.getString(1), row.getString(2), row.getLong(3)))
                        .list());
    }

    @Override
    public byte[] content(String name, StoredFile file) throws IOException {
        return asked(name, handle -> content(handle, name, file))
                .orElseThrow(() -> new NoSuchFileException(name + "/" + file.path()));
    }

    static Optional<byte[]> content(Handle handle, String name, StoredFile file) {
        if (file.path().equals(FileKind.CHAIN) && !name.equals(StoredFolder.FIRM)) {
            return Optional.of(RegisterGrowth.file(handle.createQuery("select r.text from register_line r"
                            + " join folder d on d.id = r.folder where d.name = :name order by r.line")
                    .bind("name", name)
                    .mapTo(String.class)
                    .list()));
        }
        return handle.createQuery("select bytes from content where sha256 = :sha256")
                .bind("sha256", file.sha256())
                .mapTo(byte[].class)
                .findOne();
    }

    @Override
    public StoredFolder write(FolderChange change) throws IOException {
        FolderName.checked(change.name());
        for (int tries = 1; ; tries++) {
            AtomicBoolean committing = new AtomicBoolean();
            try {
                return jdbi.inTransaction(handle -> {
                    StoredFolder after = new FolderWriting(handle, change).written();
                    committing.set(true);
                    return after;
                });
            } catch (JdbiException refused) {
                if (SqlFailures.isWorthAnotherTry(refused) && tries < TRIES) {
                    continue;
                }
                if (committing.get() && SqlFailures.brokeOff(refused)) {
                    return foundOut(change, refused);
                }
                throw failures.told(refused, change.name());
            }
        }
    }

    /** The server went away while a step was being written: what it knows once it is back is what happened. */
    private StoredFolder foundOut(FolderChange change, JdbiException refused) throws IOException {
        StoredFolder now;
        try {
            now = folder(change.name());
        } catch (IOException stillAway) {
            throw new StoreFailure(Why.UNSURE, refused, server.called());
        }
        if (now.version().equals(FolderWriting.after(change).version())) {
            return now;
        }
        throw failures.told(refused, change.name());
    }

    @Override
    public <T> T alone(String name, Work<T> work) throws IOException {
        FolderName.checked(name);
        return asked(name, handle -> {
            handle.select("select pg_advisory_lock(hashtextextended(?, 0))", "spadework " + name)
                    .mapToMap()
                    .list();
            try {
                return work.done();
            } finally {
                unlock(handle, name);
            }
        });
    }

    /** A connection that broke off has no lock any more. */
    private static void unlock(Handle handle, String name) {
        try {
            handle.select("select pg_advisory_unlock(hashtextextended(?, 0))", "spadework " + name)
                    .mapToMap()
                    .list();
        } catch (JdbiException gone) {
            if (!SqlFailures.brokeOff(gone)) {
                throw gone;
            }
        }
    }

    @Override
    public List<FolderVersion> history(String name) throws IOException {
        return asked(
                name,
                handle -> handle.createQuery("select v.count, v.version, v.at, v.by, v.what"
                                + " from folder_version v join folder d on d.id = v.folder where d.name = :name"
                                + " order by v.count desc")
                        .bind("name", name)
                        .map((row, context) -> new FolderVersion(
                                row.getLong("count"),
                                row.getString("version"),
                                row.getTimestamp("at").toInstant(),
                                row.getString("by"),
                                row.getString("what")))
                        .list());
    }

    @Override
    public void open(String name, String who) throws IOException {
        asked(
                name,
                handle -> handle.createUpdate("insert into presence (folder, who) values (:name, :who)"
                                + " on conflict (folder, who) do update set seen_at = clock_timestamp()")
                        .bind("name", name)
                        .bind("who", who)
                        .execute());
    }

    @Override
    public void left(String name, String who) throws IOException {
        asked(
                name,
                handle -> handle.createUpdate("delete from presence where folder = :name and who = :who")
                        .bind("name", name)
                        .bind("who", who)
                        .execute());
    }

    @Override
    public List<String> openTo(String name, String who) throws IOException {
        return asked(
                name,
                handle -> handle.createQuery("select who from presence where folder = :name and who <> :who"
                                + " and seen_at > clock_timestamp() - interval '2 minutes' order by who")
                        .bind("name", name)
                        .bind("who", who)
                        .mapTo(String.class)
                        .list());
    }

    @Override
    public String called() {
        return server.called();
    }

    @Override
    public void close() {
        source.close();
    }
}
