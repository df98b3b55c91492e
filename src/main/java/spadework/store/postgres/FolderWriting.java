// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import spadework.draft.Draft;
import spadework.register.Sha256;
import spadework.store.FileKind;
import spadework.store.FolderChange;
import spadework.store.FolderMoved;
import spadework.store.FolderSummary;
import spadework.store.RegisterGrowth;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/** One step written into its folder, inside a transaction. */
final class FolderWriting {
    private final Handle handle;
    private final FolderChange change;
    private final Map<String, byte[]> written;

    FolderWriting(Handle handle, FolderChange change) {
        this.handle = handle;
        this.change = change;
        this.written = whole(change);
    }

    /** The files as they are kept: of the register whole lines alone, whatever a crash left behind them. */
    private static Map<String, byte[]> whole(FolderChange change) {
        Map<String, byte[]> files = new TreeMap<>(change.written());
        if (isJob(change)) {
            files.computeIfPresent(FileKind.CHAIN, (path, bytes) -> RegisterGrowth.file(RegisterGrowth.lines(bytes)));
        }
        return files;
    }

    /** The folder once the change is written. */
    static StoredFolder after(FolderChange change) {
        return new FolderChange(change.basis(), whole(change), change.deleted()).made();
    }

    private static boolean isJob(FolderChange change) {
        return !change.name().equals(StoredFolder.FIRM);
    }

    /**
     * Writes all of it.
     *
     * @throws FolderMoved if the folder is no longer what the change was made from
     */
    StoredFolder written() throws IOException {
        handle.createUpdate("insert into folder (name, version) values (:name, '') on conflict (name) do nothing")
                .bind("name", change.name())
                .execute();
        long id = handle.createQuery("select id from folder where name = :name for update")
                .bind("name", change.name())
                .mapTo(Long.class)
                .one();
        StoredFolder now = new StoredFolder(
                change.name(),
                handle.createQuery("select path, sha256, length from file where folder = :id")
                        .bind("id", id)
                        .map((row, context) -> new StoredFile(row.getString(1), row.getString(2), row.getLong(3)))
                        .list());
        if (!now.version().equals(change.basis().version())) {
            throw new FolderMoved(now, now.differing(change.basis()));
        }
        if (isJob(change)) {
            grow(id);
        }
        contents();
        files(id);
        StoredFolder after = after(change);
        describe(id, after);
        keepVersion(id, after);
        return after;
    }

    private void grow(long id) throws IOException {
        if (!written.containsKey(FileKind.CHAIN) && !change.deleted().contains(FileKind.CHAIN)) {
            return;
        }
        List<String> before = handle.createQuery("select text from register_line where folder = :id order by line")
                .bind("id", id)
                .mapTo(String.class)
                .list();
        List<String> added = RegisterGrowth.check(
                change.name(), RegisterGrowth.file(before), written.getOrDefault(FileKind.CHAIN, new byte[0]));
        int line = before.size();
        for (String text : added) {
            line++;
            handle.createUpdate("insert into register_line (folder, line, text) values (:id, :line, :text)")
                    .bind("id", id)
                    .bind("line", line)
                    .bind("text", text)
                    .execute();
        }
    }

    private void contents() {
        PreparedBatch batch = handle.prepareBatch(
                "insert into content (sha256, bytes) values (:sha256, :bytes) on conflict (sha256) do nothing");
        // In one order, so that two steps with the same files never wait for each other.
        Map<String, byte[]> bySum = new TreeMap<>();
        written.forEach((path, bytes) -> {
            if (!(isJob(change) && path.equals(FileKind.CHAIN))) {
                bySum.put(Sha256.of(bytes), bytes);
            }
        });
        bySum.forEach(
                (sum, bytes) -> batch.bind("sha256", sum).bind("bytes", bytes).add());
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    private void files(long id) {
        for (String path : change.deleted()) {
            handle.createUpdate("delete from file where folder = :id and path = :path")
                    .bind("id", id)
                    .bind("path", path)
                    .execute();
        }
        PreparedBatch batch = handle.prepareBatch("insert into file (folder, path, kind, sha256, length)"
                + " values (:id, :path, :kind, :sha256, :length) on conflict (folder, path)"
                + " do update set kind = excluded.kind, sha256 = excluded.sha256, length = excluded.length");
        written.forEach((path, bytes) -> batch.bind("id", id)
                .bind("path", path)
                .bind("kind", FileKind.of(change.name(), path).word())
                .bind("sha256", Sha256.of(bytes))
                .bind("length", bytes.length)
                .add());
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    /** What lists and searches show of it. */
    private void describe(long id, StoredFolder after) {
        byte[] job = bytes(after, FileKind.JOB_FILE);
        FolderSummary summary = FolderSummary.of(change.name(), job, bytes(after, FileKind.CHAIN));
        Optional<String> json =
                Draft.read(new String(job, StandardCharsets.UTF_8)).map(Draft::text);
        handle.createUpdate("update folder set version = :version, changed_at = clock_timestamp(), number = :number,"
                        + " title = :title, customer = :customer, stands = :stands, job = cast(:job as jsonb),"
                        + " words = to_tsvector('simple', :words) where id = :id")
                .bind("version", after.version())
                .bind("number", summary.head().number())
                .bind("title", summary.head().title())
                .bind("customer", summary.customer())
                .bind("stands", summary.head().stands().word())
                .bind("job", json.orElse(null))
                .bind("words", SearchWords.plain(summary.words()))
                .bind("id", id)
                .execute();
    }

    private byte[] bytes(StoredFolder after, String path) {
        if (!isJob(change)) {
            return new byte[0];
        }
        if (written.containsKey(path)) {
            return written.get(path);
        }
        return after.file(path)
                .flatMap(file -> PostgresStore.content(handle, change.name(), file))
                .orElse(new byte[0]);
    }

    private void keepVersion(long id, StoredFolder after) {
        Set<String> touched = new TreeSet<>(written.keySet());
        touched.addAll(change.deleted());
        List<String> files = new ArrayList<>();
        after.files().forEach(file -> files.add(file.sha256() + " " + file.path()));
        handle.createUpdate("insert into folder_version (folder, count, version, what, files)"
                        + " select :id, coalesce(max(count), 0) + 1, :version, :what, to_jsonb(cast(:files as text[]))"
                        + " from folder_version where folder = :id")
                .bind("id", id)
                .bind("version", after.version())
                .bind("what", String.join(", ", touched))
                .bindArray("files", String.class, files)
                .execute();
    }
}
