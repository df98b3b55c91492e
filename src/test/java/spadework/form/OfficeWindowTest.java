// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JLabel;
import javax.swing.JTable;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.form.library.LibraryTab;
import spadework.form.page.JobPage;
import spadework.money.Dollars;
import spadework.office.store.JobBeginning;
import spadework.office.store.OfficeCopies;
import spadework.office.store.OfficeCopy;
import spadework.store.FolderChange;
import spadework.store.FolderHead;
import spadework.store.FolderStanding;
import spadework.store.Store;
import spadework.store.StoreFailure;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.OfficeServer;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/** Jobs at home in an office on a server, in the window of one of several people who work on them. */
@WindowTest
class OfficeWindowTest {
    private static final String JOB = "block-basement-to-swale";

    @TempDir
    Path folder;

    private PostgresStore store;
    private OfficeCopies copies;
    /** What the window's office answers to the next write, instead of writing; nothing for as usual. */
    private final AtomicReference<StoreFailure> dies = new AtomicReference<>();

    @BeforeEach
    void office() throws IOException {
        Path from = folder.resolve("from");
        Files.createDirectories(from);
        SampleCopies.of(JOB, from);
        Server server = OfficeServer.office();
        store = PostgresStore.open(server, "office.json");
        new OfficeCopy(new FolderStore(from), store, false).all((done, all) -> {});
        copies = new OfficeCopies(dying(PostgresStore.open(server, "office.json")), folder.resolve("copies"), "ana");
    }

    @AfterEach
    void leave() {
        copies.close();
        store.close();
    }

    private Store dying(Store alive) {
        return (Store) Proxy.newProxyInstance(
                Store.class.getClassLoader(), new Class<?>[] {Store.class}, (proxy, method, arguments) -> {
                    StoreFailure failure = method.getName().equals("write") ? dies.getAndSet(null) : null;
                    if (failure != null) {
                        throw failure;
                    }
                    try {
                        return method.invoke(alive, arguments);
                    } catch (InvocationTargetException thrown) {
                        throw thrown.getCause();
                    }
                });
    }

    private OnScreen open() {
        OnScreen screen = OnScreen.of(copies);
        Path file = copies.tree().orElseThrow().resolve(JOB).resolve("job.json");
        screen.open(() -> screen.forms().openJob(file));
        screen.settle();
        return screen;
    }

    private static void type(OnScreen screen, String place, String words) {
        GuiActionRunner.execute(
                () -> screen.session().edit(screen.session().draft().typed(place, words)));
        screen.settle();
    }

    private static void save(OnScreen screen) {
        GuiActionRunner.execute(() -> screen.job().saving().save());
        screen.settle();
    }

    private static String notice(OnScreen screen) {
        return screen.ask(() -> screen.job().notice().said());
    }

    private static void answer(OnScreen screen, String key) {
        String asked = notice(screen);
        new FormRobot(screen, Draft.empty()).press(screen.job(), key);
        screen.waitFor("another notice", () -> !notice(screen).equals(asked));
        screen.settle();
    }

    private Draft kept() throws IOException {
        return Draft.read(new String(content(JOB, "job.json"), StandardCharsets.UTF_8))
                .orElseThrow();
    }

    private boolean has(String path) {
        try {
            return store.folder(JOB).file(path).isPresent();
        } catch (IOException away) {
            throw new UncheckedIOException(away);
        }
    }

    private byte[] content(String name, String path) throws IOException {
        StoredFile file = store.folder(name).file(path).orElseThrow();
        return store.content(name, file);
    }

    /** Somebody else writes a value into the job, or the firm's file. */
    private void elsewhere(String name, String path, String place, String words) throws IOException {
        Draft now = Draft.read(new String(content(name, path), StandardCharsets.UTF_8))
                .orElseThrow();
        store.write(new FolderChange(
                store.folder(name),
                Map.of(path, now.typed(place, words).text().getBytes(StandardCharsets.UTF_8)),
                Set.of()));
    }

    @Test
    void jobComesFromTheOfficeAndIsSavedThere() throws IOException {
        try (OnScreen screen = open()) {
            assertThat(screen.ask(screen.session()::total)).isPresent();
            type(screen, "/title", "Front wall");
            assertThat(kept().shown("/title")).as("before it is saved").isEqualTo("Back and side basement walls");
            save(screen);
            assertThat(kept().shown("/title")).isEqualTo("Front wall");
            assertThat(screen.session().history().isSaved()).isTrue();
        }
        assertThat(store.history(JOB)).hasSize(2);
    }

    @Test
    void whoElseHasTheJobOpenIsTold() throws IOException {
        try (OnScreen screen = open()) {
            JLabel others = screen.all(JLabel.class, label -> "office.others".equals(label.getName()))
                    .get(0);
            screen.waitFor("nobody", () -> screen.ask(others::getText).equals("Nobody else has this job open"));
            assertThat(store.openTo(JOB, "ben")).containsExactly("ana");
            store.open(JOB, "ben");
            screen.waitFor("ben", () -> screen.ask(others::getText).equals("Also open to ben"));
            screen.picture("office-others");
            store.left(JOB, "ben");
            screen.waitFor("nobody", () -> screen.ask(others::getText).equals("Nobody else has this job open"));
        }
        copies.close();
        assertThat(store.openTo(JOB, "ben")).isEmpty();
    }

    @Test
    void whatOthersChangedWhileOneTypedIsTakenInFieldByField() throws IOException {
        try (OnScreen screen = open()) {
            type(screen, "/title", "Front wall");
            elsewhere(JOB, "job.json", "/walls/0/length", "60 ft");
            screen.waitFor("their change", () -> notice(screen).startsWith("Somebody else changed this job: "));
            screen.settle();
            assertThat(notice(screen)).contains("walls", "length", "60 ft");
            assertThat(screen.session().draft().shown("/walls/0/length")).isEqualTo("60 ft");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Front wall");
            assertThat(screen.session().history().isSaved()).isFalse();
            save(screen);
            assertThat(kept().shown("/walls/0/length")).isEqualTo("60 ft");
            assertThat(kept().shown("/title")).isEqualTo("Front wall");
        }
    }

    @Test
    void whatBothChangedIsShownAndNotOverwrittenUntilItIsAnswered() throws IOException {
        try (OnScreen screen = open()) {
            type(screen, "/title", "Mine");
            elsewhere(JOB, "job.json", "/title", "Theirs");
            elsewhere(JOB, "job.json", "/walls/0/length", "60 ft");
            screen.waitFor("the question", () -> notice(screen).startsWith("You and somebody else changed the same"));
            assertThat(notice(screen))
                    .contains("title was Back and side basement walls, you made it Mine, they Theirs");
            screen.picture("office-clash");
            save(screen);
            assertThat(kept().shown("/title")).isEqualTo("Theirs");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Mine");
            answer(screen, "changed.keep");
            assertThat(kept().shown("/title")).isEqualTo("Mine");
            assertThat(kept().shown("/walls/0/length")).isEqualTo("60 ft");

            type(screen, "/title", "Mine again");
            elsewhere(JOB, "job.json", "/title", "Theirs again");
            screen.waitFor("the question", () -> notice(screen).contains("they Theirs again"));
            answer(screen, "changed.take");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Theirs again");
            assertThat(screen.session().history().isSaved()).isTrue();
            GuiActionRunner.execute(() -> screen.session().undo());
            assertThat(screen.session().draft().shown("/title"))
                    .as("mine is not lost")
                    .isEqualTo("Mine again");
        }
    }

    @Test
    void booksThatOthersChangedArePricedByAtOnce() throws IOException {
        try (OnScreen screen = open()) {
            Optional<Dollars> before = screen.ask(screen.session()::total);
            JLabel others = screen.all(JLabel.class, label -> "office.others".equals(label.getName()))
                    .get(0);
            screen.waitFor("a first look", () -> !screen.ask(others::getText).isBlank());
            elsewhere(StoredFolder.FIRM, "company.json", "/priceRules/profit", "40%");
            screen.waitFor(
                    "another price", () -> !screen.ask(screen.session()::total).equals(before));
        }
    }

    @Test
    void stepIsTakenInTheOfficeWithItsPapers() throws IOException {
        try (OnScreen screen = open()) {
            issue(screen);
            screen.waitFor("the step", () -> has("for-the-homeowner/2026-014-P1-proposal.pdf"));
            screen.settle();
            assertThat(store.list()).extracting(FolderHead::stands).containsExactly(FolderStanding.ISSUED);
        }
    }

    private static void issue(OnScreen screen) {
        GuiActionRunner.execute(() -> screen.job().go(JobPage.AGREEMENT));
        screen.settle();
        new FormRobot(screen, Draft.empty()).press(screen.job(), "step issue");
    }

    @Test
    void serverThatGoesAwayInTheMiddleOfAStepLeavesNothingHalf() throws IOException {
        try (OnScreen screen = open()) {
            StoredFolder before = store.folder(JOB);
            dies.set(new StoreFailure(StoreFailure.Why.WENT_AWAY, null, "localhost:5432/office"));
            issue(screen);
            screen.waitFor("the reason", () -> notice(screen).contains("went away in the middle of the step"));
            screen.settle();
            assertThat(notice(screen)).startsWith("The office at localhost:5432/office went away");
            assertThat(store.folder(JOB)).isEqualTo(before);
            assertThat(copies.tree().orElseThrow().resolve(JOB).resolve("register.jsonl"))
                    .as("the copy says no more than the office")
                    .doesNotExist();
            issue(screen);
            screen.waitFor("the step", () -> has("register.jsonl"));
            screen.settle();
        }
    }

    @Test
    void whatCouldNotBeSavedStaysOnTheScreen() throws IOException {
        try (OnScreen screen = open()) {
            type(screen, "/title", "Front wall");
            dies.set(new StoreFailure(StoreFailure.Why.FULL, null, "localhost:5432/office"));
            save(screen);
            assertThat(notice(screen))
                    .isEqualTo("The disk of the office at localhost:5432/office is full. Whoever runs the server makes"
                            + " room. Nothing was done.");
            assertThat(kept().shown("/title")).isEqualTo("Back and side basement walls");
            assertThat(screen.session().draft().shown("/title")).isEqualTo("Front wall");
            assertThat(screen.session().history().isSaved()).isFalse();
            save(screen);
            assertThat(kept().shown("/title")).isEqualTo("Front wall");
        }
    }

    @Test
    void firstPageListsTheOfficesJobsAndFollowsThem() throws IOException {
        try (OnScreen screen = OnScreen.of(copies)) {
            screen.open(() -> screen.forms().home());
            screen.settle();
            JTable rows = screen.all(JTable.class, table -> "home.jobs".equals(table.getName()))
                    .get(0);
            assertThat(screen.ask(rows::getRowCount)).isEqualTo(1);
            String price = cell(screen, rows, 4);
            assertThat(price).startsWith("$");
            JobBeginning.begin(store, "{\"title\": \"Newly begun\", \"issued\": \"2026-08-09\"}", 2026);
            screen.waitFor("a new job", () -> screen.ask(rows::getRowCount) == 2);
            elsewhere(JOB, "job.json", "/title", "Changed elsewhere");
            elsewhere(JOB, "job.json", "/walls/0/length", "60 ft");
            screen.waitFor(
                    "another price",
                    () -> !titled(screen, rows, "Changed elsewhere", 4).equals(price));
            assertThat(titled(screen, rows, "Newly begun", 2)).isEqualTo("to be filled in");
            screen.picture("office-home");
            GuiActionRunner.execute(() -> screen.window().target().dispose());
        }
    }

    private static String cell(OnScreen screen, JTable rows, int column) {
        return screen.ask(() -> rows.getValueAt(0, column).toString());
    }

    private static String titled(OnScreen screen, JTable rows, String title, int column) {
        return screen.ask(() -> {
            for (int row = 0; row < rows.getRowCount(); row++) {
                if (rows.getValueAt(row, 1).toString().equals(title)) {
                    return rows.getValueAt(row, column).toString();
                }
            }
            return "";
        });
    }

    @Test
    void newJobHasItsNumberFromTheOfficeAtOnce() throws IOException {
        try (OnScreen screen = OnScreen.of(copies)) {
            screen.open(() -> screen.forms().newJob());
            screen.settle();
            assertThat(screen.session().draft().shown("/number")).isEqualTo("2026-015");
            assertThat(JobBeginning.begin(store, "{}", 2026)).isEqualTo("2026-016");
            type(screen, "/title", "Fresh");
            save(screen);
            assertThat(new String(content("2026-015", "job.json"), StandardCharsets.UTF_8))
                    .contains("Fresh");
        }
    }

    @Test
    void libraryReadsTheOfficesBids() throws IOException {
        try (OnScreen screen = open()) {
            JobBeginning.begin(store, new String(content(JOB, "job.json"), StandardCharsets.UTF_8), 2026);
            screen.ask(() -> screen.job().library(LibraryTab.BIDS));
            screen.lookAt(() -> screen.job().library(LibraryTab.BIDS));
            screen.settle();
            List<JTable> bids = screen.all(JTable.class, table -> "library.bids".equals(table.getName()));
            assertThat(screen.ask(bids.get(0)::getRowCount))
                    .as("one that nobody opened here")
                    .isEqualTo(2);
        }
    }

    @Test
    void whatOneTookAwayAndTheOtherChangedIsAskedAbout() throws IOException {
        try (OnScreen screen = open()) {
            GuiActionRunner.execute(
                    () -> screen.session().edit(screen.session().draft().without("/walls/0")));
            screen.settle();
            elsewhere(JOB, "job.json", "/walls/0/length", "60 ft");
            screen.waitFor("the question", () -> notice(screen).startsWith("You and somebody else changed the same"));
            assertThat(kept().at("/walls/0/length")).contains(new DraftValue.Text("60 ft"));
        }
    }
}
