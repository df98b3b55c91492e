// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JLabel;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.store.OfficeCopies;
import spadework.office.store.OfficeCopy;
import spadework.store.StoredFolder;
import spadework.store.folder.FolderStore;
import spadework.store.postgres.KillableServer;
import spadework.store.postgres.PostgresStore;
import spadework.store.postgres.Server;

/** The server is killed while a window shows a job of it, and started again: the window goes on. */
@WindowTest
class OfficeServerKilledTest {
    private static final String JOB = "block-basement-to-swale";

    @TempDir
    Path folder;

    @Test
    void windowOutlivesTheServerAndSavesOnceItIsBack() throws IOException {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Path data = folder.resolve("data");
        EmbeddedPostgres running = KillableServer.start(data, port);
        Server server = new Server("localhost", port, "postgres", "postgres", Optional.of("postgres"), false);
        PostgresStore.setUp(server);
        Path from = Files.createDirectories(folder.resolve("from"));
        SampleCopies.of(JOB, from);
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            new OfficeCopy(new FolderStore(from), store, false).all((done, all) -> {});
        }
        try (PostgresStore store = PostgresStore.open(server, "office.json");
                OfficeCopies copies = new OfficeCopies(store, folder.resolve("copies"), "ana");
                OnScreen screen = OnScreen.of(copies)) {
            screen.open(() -> screen.forms()
                    .openJob(copies.tree().orElseThrow().resolve(JOB).resolve("job.json")));
            screen.settle();
            StoredFolder before = store.folder(JOB);
            JLabel others = screen.all(JLabel.class, label -> "office.others".equals(label.getName()))
                    .get(0);
            KillableServer.kill(data);
            type(screen, "Typed while the server was dead");
            screen.waitFor("the loss", () -> screen.ask(others::getText).equals("The office cannot be asked"));
            assertThat(screen.<String>ask(() -> others.getToolTipText())).contains("localhost:" + port);
            assertThat(screen.ask(screen.session()::total))
                    .as("it still prices")
                    .isPresent();
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.waitFor(
                    "the reason",
                    () -> screen.ask(() -> screen.job().notice().said()).startsWith("The office at localhost:" + port));
            assertThat(screen.ask(() -> screen.job().notice().said())).contains("Nothing was done");
            assertThat(screen.session().history().isSaved()).isFalse();
            assertThat(copies.tree().orElseThrow().resolve(JOB).resolve(".job.json.unsaved"))
                    .as("kept on this machine")
                    .content()
                    .contains("Typed while the server was dead");
            KillableServer.release(running);
            EmbeddedPostgres again = KillableServer.start(data, port);
            screen.waitFor("the server", () -> screen.ask(others::getText).equals("Nobody else has this job open"));
            assertThat(store.folder(JOB)).isEqualTo(before);
            GuiActionRunner.execute(() -> screen.job().saving().save());
            screen.settle();
            assertThat(screen.session().history().isSaved()).isTrue();
            assertThat(new String(
                            store.content(
                                    JOB, store.folder(JOB).file("job.json").orElseThrow()),
                            StandardCharsets.UTF_8))
                    .contains("Typed while the server was dead");
            again.close();
        }
    }

    private static void type(OnScreen screen, String title) {
        GuiActionRunner.execute(
                () -> screen.session().edit(screen.session().draft().typed("/title", title)));
        screen.settle();
    }
}
