// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spadework.office.store.OfficeFile;
import spadework.store.FolderChange;
import spadework.store.Store;
import spadework.store.StoredFolder;

/**
 * An office on a server with many bids: how long a search, a list and the history of the price book take, 95 of 100
 * times, and how the server goes about them. The database it is given is filled with generated bids first.
 */
final class OfficeBids {
    private static final int TURNS = 200;
    private static final int BOOKS = 500;
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

    /** Arguments: the file of an office, where to ask it by SQL, the account, and how many bids (default 100000). */
    public static void main(String[] arguments) throws IOException, SQLException {
        Path office = Path.of(arguments[0]);
        int bids = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 100_000;
        try (Connection sql = DriverManager.getConnection(
                        arguments[1] + "?currentSchema=spadework", arguments[2], System.getenv("PGPASSWORD"));
                Statement statement = sql.createStatement();
                Store store =
                        OfficeFile.read(office, System.getenv("PGPASSWORD")).open()) {
            statement.execute(FILL.replace(":bids", Integer.toString(bids)));
            statement.execute("analyze folder");
            StoredFolder firm = store.folder(StoredFolder.FIRM);
            for (int i = store.history(StoredFolder.FIRM).size(); i < BOOKS; i++) {
                byte[] book = ("{\"note\": \"" + i + "\"}").getBytes(StandardCharsets.UTF_8);
                firm = store.write(new FolderChange(firm, Map.of("price-book.json", book), Set.of()));
            }
            System.gc();
            long before =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            for (String words : WORDS) {
                int found = store.find(words, 50).size();
                tell(bids + " bids, search \"" + words + "\", " + found + " shown", () -> store.find(words, 50));
            }
            tell(bids + " bids, list of the 50 changed last", () -> store.find("", 50));
            tell("history of a price book changed " + BOOKS + " times", () -> store.history(StoredFolder.FIRM));
            System.gc();
            long after =
                    Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
            System.out.printf(Locale.ROOT, "memory before and after: %d and %d MB%n", before >> 20, after >> 20);
            plan(statement, "words @@ to_tsquery('simple', 'clay:* & bas:*')");
            plan(statement, "words @@ to_tsquery('simple', 'person77:*')");
            plan(statement, "true");
        }
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
        Collections.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 95 of 100 within %.1f ms%n",
                what,
                nanos.get(TURNS / 2) / 1e6,
                nanos.get(TURNS * 95 / 100) / 1e6);
    }

    private static void plan(Statement statement, String where) throws SQLException {
        System.out.println("plan of: " + where);
        try (ResultSet rows = statement.executeQuery("explain (analyze, costs off, timing off, summary off)"
                + " select name from folder where name <> '' and " + where + " order by changed_at desc limit 50")) {
            while (rows.next()) {
                System.out.println("  " + rows.getString(1));
            }
        }
    }
}
