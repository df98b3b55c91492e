// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.store.JobBeginning;
import spadework.office.store.WorkingFolder;
import spadework.register.Event;
import spadework.register.Register;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.FolderMoved;
import spadework.store.StoreFailure;
import spadework.store.StoreFailure.Why;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/**
 * Sixteen people write at the same time. Some changes in every build; {@code -Dspadework.officeChanges=625} makes it
 * ten thousand of each kind.
 */
class SixteenWritersTest {
    private static final int WRITERS = 16;
    private static final int CHANGES = Integer.getInteger("spadework.officeChanges", 5);
    private static final int TOLD = 500;
    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);

    @TempDir
    private Path copies;

    private final AtomicInteger acknowledged = new AtomicInteger();
    private Server server;

    @BeforeEach
    void office() throws IOException {
        server = OfficeServer.office();
    }

    /** A change by one of them; it is acknowledged by returning. */
    private interface Change {
        String by(PostgresStore store, int writer, int change) throws IOException;
    }

    private List<String> acknowledged(Change change) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(WRITERS);
        try {
            List<Future<List<String>>> all = new ArrayList<>();
            for (int i = 0; i < WRITERS; i++) {
                int writer = i;
                all.add(people.submit(marks(change, writer)));
            }
            List<String> marks = new ArrayList<>();
            for (Future<List<String>> one : all) {
                marks.addAll(one.get());
            }
            return marks;
        } finally {
            people.shutdownNow();
        }
    }

    private Callable<List<String>> marks(Change change, int writer) {
        return () -> {
            List<String> marks = new ArrayList<>();
            try (PostgresStore store = PostgresStore.open(server, "office.json")) {
                while (marks.size() < CHANGES) {
                    try {
                        marks.add(change.by(store, writer, marks.size()));
                    } catch (StoreFailure waitedTooLong) {
                        // On a busy machine one may wait in vain for his turn; nothing was done then, so he tries
                        // again.
                        assertThat(waitedTooLong.why()).isIn(Why.BUSY, Why.UNREACHABLE);
                        continue;
                    }
                    int all = acknowledged.incrementAndGet();
                    if (all % TOLD == 0) {
                        System.out.printf("office: %d changes acknowledged%n", all);
                    }
                }
            }
            return marks;
        };
    }

    @Test
    void noChangeOfOneJobIsLost() throws Exception {
        List<String> marks = acknowledged((store, writer, change) -> {
            String mark = "change-" + writer + "-" + change + "-of-many";
            while (true) {
                try {
                    StoredFolder now = store.folder("j");
                    String text = now.file("notes.txt").isPresent() ? text(store, now) : "";
                    store.write(new FolderChange(
                            now, Map.of("notes.txt", (text + mark + "\n").getBytes(StandardCharsets.UTF_8)), Set.of()));
                    return mark;
                } catch (FolderMoved moved) {
                    assertThat(moved.now().files()).isNotEmpty();
                } catch (NoSuchFileException writtenOver) {
                    assertThat(writtenOver).hasMessageContaining("notes.txt");
                }
            }
        });
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            assertThat(text(store, store.folder("j")).lines()).containsExactlyInAnyOrderElementsOf(marks);
            assertThat(store.history("j")).hasSize(WRITERS * CHANGES);
        }
    }

    private static String text(PostgresStore store, StoredFolder folder) throws IOException {
        StoredFile notes = folder.file("notes.txt").orElseThrow();
        return new String(store.content(folder.name(), notes), StandardCharsets.UTF_8);
    }

    @Test
    void noLineOfOneRegisterIsLostAndNoneIsThereTwice() throws Exception {
        List<String> marks = acknowledged((store, writer, change) -> {
            String mark = "line-" + writer + "-" + change;
            Path own = Files.createDirectories(copies.resolve("w" + writer));
            return new WorkingFolder(store, own).step("j", folder -> {
                Register.of(folder).append(DAY, Event.NOTE, Map.of("text", mark));
                return mark;
            });
        });
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            WorkingFolder copy = new WorkingFolder(store, copies.resolve("last"));
            copy.fetch("j");
            Register register = Register.of(copies.resolve("last").resolve("j"));
            assertThat(register.check().faults()).isEmpty();
            assertThat(register.entries())
                    .extracting(entry -> entry.fact("text").orElseThrow())
                    .containsExactlyInAnyOrderElementsOf(marks);
        }
    }

    @Test
    void numbersHaveNoGapAndNoneIsGivenTwice() throws Exception {
        List<String> numbers =
                acknowledged((store, writer, change) -> JobBeginning.begin(store, "{\"title\": \"x\"}", 2026));
        List<String> wanted = IntStream.rangeClosed(1, WRITERS * CHANGES)
                .mapToObj(count -> String.format("2026-%03d", count))
                .toList();
        assertThat(numbers).containsExactlyInAnyOrderElementsOf(wanted);
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            assertThat(store.list()).extracting(FolderHead::number).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }
}
