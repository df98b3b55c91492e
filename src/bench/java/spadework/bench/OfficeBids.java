// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import spadework.office.files.JobsHome;
import spadework.office.portfolio.BidsService;
import spadework.office.store.OfficeCopies;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/**
 * An office on a server with many bids: how long a search, a list and the history of the price book take, 95 of 100
 * times, and how the server goes about them; beside it the same list over folders. All bids are generated.
 */
final class OfficeBids {
    private static final int TURNS = 200;
    private static final int BOOKS = 500;
    private static final int WHOLE = 60;
    private static final int PERSON_TURNS = 20;
    private static final int MOST = 50;
    private static final String HEADS = "select name, number, title, stands from folder where name <> '' and ";
    private static final String LATEST = " order by changed_at desc limit " + MOST;
    private static final List<String> WORDS =
            List.of("wrenfield", "sump", "clay bas", "2026-04", "quillfeather wall", "stone cellar", "zz", "block");

    private static final String FILL = """
            insert into folder (name, version, number, title, customer, stands, changed_at, words)
            select 'bid-' || n, 'x', 'B-' || n, title, person, 'draft', clock_timestamp() - n * interval '1 minute',
              to_tsvector('simple', 'b ' || n || ' ' || title || ' ' || person || ' ' || street || ' ' || notes)
            from (select n,
              (array['back basement wall','stone cellar','crawl space','block wall and sump'])[1 + n % 4] as title,
              'person' || n % 9973 || ' wrenfield' || n % 101 as person,
              n % 977 || ' quillfeather' || n % 89 || ' lane' as street,
              'clay hillside downspout ' || md5(n::text) || ' ' || md5((n * 7)::text) as notes
              from generate_series(1, :bids) n) generated on conflict do nothing
            """;

    private OfficeBids() {}

    /** Arguments: how many bids (default 100000), and how many folders beside them (default as many). */
    public static void main(String[] arguments) throws IOException, SQLException {
        int bids = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
        int folders = arguments.length > 1 ? Integer.parseInt(arguments[1]) : bids;
        Path folder = Files.createTempDirectory("office-bids");
        Server server = OfficeServer.office();
        try (Connection sql = DriverManager.getConnection(
                        "jdbc:postgresql://" + server.host() + ":" + server.port() + "/" + server.database()
                                + "?currentSchema=spadework",
                        server.user(),
                        server.password().orElse(""));
                Statement statement = sql.createStatement();
                Store store = PostgresStore.open(server, "office.json")) {
            statement.execute(FILL.replace(":bids", Integer.toString(bids)));
            statement.execute("vacuum analyze folder");
            fillBook(store);
            fillWhole(store);
            System.gc();
            long before = used();
            ask(store, bids);
            firstPage(store, folder.resolve("copies"), bids);
            crowd(server, 5);
            crowd(server, 50);
            System.gc();
            System.out.printf(Locale.ROOT, "memory before and after: %d and %d MB%n", before >> 20, used() >> 20);
            plan(statement, HEADS + "words @@ to_tsquery('simple', 'clay:* & bas:*')" + LATEST);
            plan(statement, HEADS + "words @@ to_tsquery('simple', 'person77:*')" + LATEST);
            plan(statement, HEADS + "true" + LATEST);
            plan(
                    statement,
                    "select number from folder where number <> '' and number like '2026-%' order by number desc");
            plan(
                    statement,
                    "select v.count, v.version, v.at, v.by, v.what from folder_version v"
                            + " join folder d on d.id = v.folder where d.name = '' order by v.count desc");
        }
        folders(folder.resolve("jobs"), folders);
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
        System.exit(0);
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static void fillBook(Store store) throws IOException {
        Path samples = Path.of("sample-quotes");
        Map<String, byte[]> files = new TreeMap<>();
        for (String path : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            files.put(path, Files.readAllBytes(samples.resolve(path)));
        }
        StoredFolder firm = store.write(new FolderChange(store.folder(StoredFolder.FIRM), files, Set.of()));
        String book = new String(files.get("price-book.json"), StandardCharsets.UTF_8);
        for (int i = 1; i < BOOKS; i++) {
            byte[] changed = (book + " ".repeat(i)).getBytes(StandardCharsets.UTF_8);
            firm = store.write(new FolderChange(firm, Map.of("price-book.json", changed), Set.of()));
        }
    }

    /** So many bids that somebody works on: whole, as the sample. */
    private static void fillWhole(Store store) throws IOException {
        String job = Files.readString(Path.of("sample-quotes", "block-basement-to-swale", "job.json"));
        for (int i = 1; i <= WHOLE; i++) {
            String numbered = job.replace("\"2026-014\"", "\"2026-" + (500 + i) + "\"");
            store.write(new FolderChange(
                    StoredFolder.empty("2026-" + (500 + i)),
                    Map.of("job.json", numbered.getBytes(StandardCharsets.UTF_8)),
                    Set.of()));
        }
    }

    private static void ask(Store store, int bids) throws IOException {
        for (String words : WORDS) {
            int found = store.find(words, MOST).size();
            tell(bids + " bids, search \"" + words + "\", " + found + " shown", () -> store.find(words, MOST));
        }
        tell(bids + " bids, list of the " + MOST + " changed last", () -> store.find("", MOST));
        tell("history of a price book changed " + BOOKS + " times", () -> store.history(StoredFolder.FIRM));
        tell(bids + " bids, the next number of a year", () -> store.lastNumber(2026));
    }

    private static void firstPage(Store store, Path root, int bids) throws IOException {
        try (OfficeCopies copies = new OfficeCopies(store, root, "ana")) {
            tellOnce(bids + " bids, the first page of the window, fetched and priced", () -> priced(copies));
            tellOnce(bids + " bids, the same, priced again", () -> priced(copies));
            tell(bids + " bids, whether anything on it changed", () -> copies.found("", MOST));
        }
    }

    private static Object priced(OfficeCopies copies) throws IOException {
        List<Path> files =
                copies.found("", MOST).stream().map(JobsHome.FoundJob::file).toList();
        return BidsService.rows(files, LocalDate.of(2026, 8, 10), BidsService.Wanted.ALL);
    }

    /** So many people at once, each with a program and a job of his own, who search, look at the list and save. */
    private static void crowd(Server server, int people) throws IOException {
        ExecutorService crowd = Executors.newFixedThreadPool(people);
        try {
            List<Future<List<Long>>> all = new ArrayList<>();
            for (int i = 0; i < people; i++) {
                String job = "crowd-" + people + "-" + i;
                all.add(crowd.submit(() -> turns(server, job)));
            }
            List<Long> nanos = new ArrayList<>();
            for (Future<List<Long>> one : all) {
                nanos.addAll(one.get());
            }
            told(people + " people at once: a search, the list and a saving together", nanos);
        } catch (InterruptedException | ExecutionException broken) {
            throw new IOException(broken);
        } finally {
            crowd.shutdownNow();
        }
    }

    private static List<Long> turns(Server server, String job) throws IOException {
        List<Long> nanos = new ArrayList<>();
        try (Store store = PostgresStore.open(server, "office.json")) {
            StoredFolder now = store.folder(job);
            for (int i = 0; i < PERSON_TURNS; i++) {
                long start = System.nanoTime();
                store.find("wrenfield77", MOST);
                store.find("", MOST);
                byte[] text = ("{\"title\": \"stone cellar " + i + "\"}").getBytes(StandardCharsets.UTF_8);
                now = store.write(new FolderChange(now, Map.of("job.json", text), Set.of()));
                nanos.add(System.nanoTime() - start);
            }
        }
        return nanos;
    }

    /** The same list and search over as many folders. */
    private static void folders(Path jobs, int bids) throws IOException {
        for (int n = 1; n <= bids; n++) {
            Path job = Files.createDirectories(jobs.resolve("bid-" + n));
            Files.writeString(
                    job.resolve("job.json"),
                    "{\"number\": \"B-" + n + "\", \"title\": \"stone cellar\", \"customer\": {\"names\": [\"wrenfield"
                            + n % 101 + "\"]}, \"notes\": [\"clay hillside " + n * 7 + "\"]}");
        }
        try (Store store = new FolderStore(jobs)) {
            for (int turn = 1; turn <= 2; turn++) {
                tellOnce(bids + " folders, list, turn " + turn, store::list);
                tellOnce(
                        bids + " folders, search \"wrenfield77\", turn " + turn, () -> store.find("wrenfield77", MOST));
            }
        }
    }

    private static void tellOnce(String what, Asked asked) throws IOException {
        long start = System.nanoTime();
        asked.answer();
        System.out.printf(Locale.ROOT, "%s: %.1f s%n", what, (System.nanoTime() - start) / 1e9);
    }

    private interface Asked {
        Object answer() throws IOException;
    }

    private static void tell(String what, Asked asked) throws IOException {
        List<Long> nanos = new ArrayList<>();
        for (int i = 0; i < TURNS; i++) {
            long start = System.nanoTime();
            asked.answer();
            nanos.add(System.nanoTime() - start);
        }
        told(what, nanos);
    }

    private static void told(String what, List<Long> nanos) {
        Collections.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 95 of 100 within %.1f ms%n",
                what,
                nanos.get(nanos.size() / 2) / 1e6,
                nanos.get(nanos.size() * 95 / 100) / 1e6);
    }

    private static void plan(Statement statement, String query) throws SQLException {
        System.out.println("plan of: " + query);
        try (ResultSet rows =
                statement.executeQuery("explain (analyze, costs off, timing off, summary off) " + query)) {
            while (rows.next()) {
                System.out.println("  " + rows.getString(1));
            }
        }
    }
}
