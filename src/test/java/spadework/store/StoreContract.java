// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.store.folder.FolderFiles;

/** What every home of an office does, the same for folders and for a server. */
public abstract class StoreContract {
    protected static final Path SAMPLES = Path.of("sample-quotes");
    private static final String CLOSED = "added-wall-then-closed";

    private Store store;

    /** A home in which nothing lies yet. */
    protected abstract Store empty() throws IOException;

    /** The same home once more, as another program opens it. */
    protected abstract Store again() throws IOException;

    @BeforeEach
    void open() throws IOException {
        store = empty();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void nothingLiesInANewOffice() throws IOException {
        assertThat(store.list()).isEmpty();
        assertThat(store.find("", 10)).isEmpty();
        assertThat(store.folder("2026-014").files()).isEmpty();
        assertThat(store.folder(StoredFolder.FIRM).files()).isEmpty();
        assertThat(store.history("2026-014")).isEmpty();
    }

    @Test
    void everyByteOfASignedAndClosedJobComesBack() throws IOException {
        StoredFolder sample = keep(CLOSED);
        StoredFolder kept = store.folder(CLOSED);
        assertThat(kept).isEqualTo(sample).extracting(StoredFolder::version).isEqualTo(sample.version());
        for (StoredFile file : sample.files()) {
            assertThat(store.content(CLOSED, file))
                    .as(file.path())
                    .isEqualTo(Files.readAllBytes(SAMPLES.resolve(CLOSED).resolve(file.path())));
        }
    }

    @Test
    void theFirmsOwnFolderIsKeptApartFromTheJobs() throws IOException {
        keep(StoredFolder.FIRM);
        keep(CLOSED);
        assertThat(store.folder(StoredFolder.FIRM).files())
                .extracting(StoredFile::path)
                .contains("company.json", "price-book.json")
                .noneMatch(path -> path.startsWith(CLOSED));
        assertThat(store.list()).extracting(FolderHead::name).containsExactly(CLOSED);
    }

    @Test
    void listTellsNumberTitleAndWhereTheJobStands() throws IOException {
        keep("stone-wall-engineer-first");
        keep(CLOSED);
        assertThat(store.list())
                .extracting(FolderHead::name, FolderHead::number, FolderHead::stands)
                .containsExactly(
                        tuple(CLOSED, "2026-041", FolderStanding.CLOSED),
                        tuple("stone-wall-engineer-first", number("stone-wall-engineer-first"), FolderStanding.DRAFT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Hathersage", "hather", "2026-041", "orla hathersage", "041 2026"})
    void wordsOfTitlesPeopleItemsAndNotesFindAJob(String words) throws IOException {
        keep(CLOSED);
        keep("stone-wall-engineer-first");
        assertThat(store.find(words, 10)).extracting(FolderHead::name).containsExactly(CLOSED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"athersage", "orla nobody", "'; drop table folder; --", "hather & | ! ( :* nobody"})
    void wordsThatDoNotOccurFindNothing(String words) throws IOException {
        keep(CLOSED);
        assertThat(store.find(words, 10)).isEmpty();
    }

    @Test
    void noMoreIsFoundThanWasAskedFor() throws IOException {
        keep(CLOSED);
        keep("stone-wall-engineer-first");
        assertThat(store.find("", 1)).hasSize(1);
    }

    @Test
    void changeIsWrittenOnlyOverWhatItWasMadeFrom() throws IOException {
        StoredFolder first = write(StoredFolder.empty("j"), "job.json", "{}");
        write(first, "job.json", "{\"number\": \"1\"}");
        assertThatThrownBy(() -> write(first, "job.json", "{\"number\": \"2\"}"))
                .isInstanceOf(FolderMoved.class)
                .hasMessageContaining("j was changed by somebody else since this step began: job.json")
                .hasMessageContaining("Nothing was written");
        assertThat(text("j", "job.json")).isEqualTo("{\"number\": \"1\"}");
    }

    @Test
    void loserIsToldTheFolderAsItIs() throws IOException {
        StoredFolder first = write(StoredFolder.empty("j"), "job.json", "{}");
        StoredFolder second = write(first, "notes.txt", "rain");
        FolderMoved moved = catchThrowableOfType(FolderMoved.class, () -> write(first, "job.json", "[]"));
        assertThat(moved.now()).isEqualTo(second);
        assertThat(write(moved.now(), "job.json", "[]").files()).hasSize(2);
    }

    @Test
    void aFileThatIsDeletedIsGone() throws IOException {
        StoredFolder two =
                write(write(StoredFolder.empty("j"), "job.json", "{}"), "for-the-crew/scope-of-work.pdf", "%PDF");
        StoredFile scope = two.file("for-the-crew/scope-of-work.pdf").orElseThrow();
        StoredFolder one = store.write(new FolderChange(two, Map.of(), Set.of(scope.path())));
        assertThat(one.files()).extracting(StoredFile::path).containsExactly("job.json");
        assertThat(store.folder("j")).isEqualTo(one);
    }

    @Test
    void registerOnlyGrows() throws IOException {
        StoredFolder closed = keep(CLOSED);
        byte[] whole = Files.readAllBytes(SAMPLES.resolve(CLOSED).resolve(FileKind.CHAIN));
        List<String> lines = RegisterGrowth.lines(whole);
        byte[] cut = RegisterGrowth.file(lines.subList(0, lines.size() - 1));
        for (FolderChange cheat : List.of(
                new FolderChange(closed, Map.of(FileKind.CHAIN, cut), Set.of()),
                new FolderChange(closed, Map.of(FileKind.CHAIN, new byte[0]), Set.of()),
                new FolderChange(closed, Map.of(), Set.of(FileKind.CHAIN)),
                new FolderChange(
                        closed,
                        Map.of(
                                FileKind.CHAIN,
                                new String(whole, StandardCharsets.UTF_8)
                                        .replaceFirst("\"total\":\"\\d", "\"total\":\"9")
                                        .getBytes(StandardCharsets.UTF_8)),
                        Set.of()))) {
            assertThatThrownBy(() -> store.write(cheat))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("it only grows")
                    .extracting(failure -> ((StoreFailure) failure).why())
                    .isEqualTo(StoreFailure.Why.REGISTER_CUT);
        }
        assertThat(store.folder(CLOSED)).isEqualTo(closed);
    }

    @Test
    void noNumberIsThereTwice() throws IOException {
        write(StoredFolder.empty("a"), "job.json", "{\"number\": \"2026-001x\"}");
        assertThatThrownBy(() -> write(StoredFolder.empty("b"), "job.json", "{\"number\": \"2026-001X\"}"))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("Another job of the office has the number of b already");
        assertThat(store.list()).extracting(FolderHead::name).containsExactly("a");
    }

    @Test
    void numberThatIsGivenUpIsFree() throws IOException {
        StoredFolder first = write(StoredFolder.empty("a"), "job.json", "{\"number\": \"2026-001\"}");
        write(first, "job.json", "{\"number\": \"2026-002\"}");
        write(StoredFolder.empty("b"), "job.json", "{\"number\": \"2026-001\"}");
        Store other = again();
        try {
            assertThatThrownBy(() -> other.write(new FolderChange(
                            StoredFolder.empty("c"),
                            Map.of("job.json", "{\"number\": \"2026-001\"}".getBytes(StandardCharsets.UTF_8)),
                            Set.of())))
                    .hasMessageContaining("has the number of c already");
        } finally {
            other.close();
        }
    }

    @Test
    void highestCountOfAYearIsThatOfNamesAndNumbers() throws IOException {
        assertThat(store.lastNumber(2026)).isZero();
        write(StoredFolder.empty("2026-003"), "job.json", "{\"number\": \"2026-011\"}");
        write(StoredFolder.empty("2026-012"), "job.json", "{}");
        write(StoredFolder.empty("other"), "job.json", "{\"number\": \"2025-400\"}");
        write(StoredFolder.empty("odd"), "job.json", "{\"number\": \"2026-099x\"}");
        assertThat(store.lastNumber(2026)).isEqualTo(12);
        assertThat(store.lastNumber(2025)).isEqualTo(400);
    }

    @Test
    void versionsAreToldOfThoseThatAreThere() throws IOException {
        StoredFolder first = write(StoredFolder.empty("a"), "job.json", "{}");
        assertThat(store.versions(List.of("a", "b"))).isEqualTo(Map.of("a", first.version()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../out", "a/../../b", "/etc", ".hidden", "a//b", "a\u202eb", "C:\\jobs", " a"})
    void noFolderIsNamedOutOfTheOffice(String name) {
        assertThatThrownBy(() -> store.folder(name))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is no name of a folder of the office");
    }

    @Test
    void oneTakesAStepAndTheOtherWaits() throws Exception {
        Store other = again();
        ExecutorService people = Executors.newFixedThreadPool(2);
        AtomicInteger inside = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        CountDownLatch both = new CountDownLatch(2);
        try {
            Future<?> first = people.submit(() -> step(store, inside, most, both));
            Future<?> second = people.submit(() -> step(other, inside, most, both));
            first.get(1, TimeUnit.MINUTES);
            second.get(1, TimeUnit.MINUTES);
        } finally {
            people.shutdownNow();
            other.close();
        }
        assertThat(most.get()).isEqualTo(1);
    }

    private static Integer step(Store home, AtomicInteger inside, AtomicInteger most, CountDownLatch both)
            throws Exception {
        both.countDown();
        assertThat(both.await(30, TimeUnit.SECONDS)).isTrue();
        return home.alone("j", () -> {
            most.accumulateAndGet(inside.incrementAndGet(), Math::max);
            try {
                Thread.sleep(50);
            } catch (InterruptedException stopped) {
                throw new IOException(stopped);
            }
            return inside.decrementAndGet();
        });
    }

    @Test
    void newestStateComesFirstInTheHistory() throws IOException {
        StoredFolder first = write(StoredFolder.empty("j"), "job.json", "{}");
        StoredFolder second = write(first, "job.json", "[]");
        assertThat(store.history("j").get(0).version()).isEqualTo(second.version());
    }

    /** Keeps a folder of the samples. */
    private StoredFolder keep(String name) throws IOException {
        StoredFolder there = FolderFiles.read(SAMPLES, name);
        Map<String, byte[]> files = new TreeMap<>();
        for (StoredFile file : there.files()) {
            files.put(file.path(), Files.readAllBytes(SAMPLES.resolve(name).resolve(file.path())));
        }
        store.write(new FolderChange(store.folder(name), files, Set.of()));
        return there;
    }

    private StoredFolder write(StoredFolder basis, String path, String text) throws IOException {
        return store.write(new FolderChange(basis, Map.of(path, text.getBytes(StandardCharsets.UTF_8)), Set.of()));
    }

    private String text(String name, String path) throws IOException {
        return new String(store.content(name, store.folder(name).file(path).orElseThrow()), StandardCharsets.UTF_8);
    }

    private static String number(String sample) throws IOException {
        return FolderSummary.of(
                        sample, Files.readAllBytes(SAMPLES.resolve(sample).resolve("job.json")), new byte[0])
                .head()
                .number();
    }
}
