// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.store.WorkingFolder;
import spadework.register.Event;
import spadework.register.Register;
import spadework.register.Sha256;
import spadework.store.FolderMoved;
import spadework.store.StoreFailure;
import spadework.store.StoredFile;
import spadework.store.StoredFolder;

/**
 * The server is killed in the middle of steps and started again: every acknowledged step is there, and none half. A few
 * times in every build; {@code -Dspadework.serverKills=200} makes it many.
 */
class ServerKilledTest {
    private static final int KILLS = Integer.getInteger("spadework.serverKills", 2);
    private static final int WRITERS = 4;
    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);

    @TempDir
    private Path root;

    /** What a writer was told: done, or not known. */
    private record Told(List<String> done, List<String> unsure) {}

    @Test
    void everyAcknowledgedStepIsThereAndNoneHalf() throws Exception {
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Path data = root.resolve("data");
        EmbeddedPostgres running = KillableServer.start(data, port);
        Server server = new Server("localhost", port, "postgres", "postgres", Optional.of("postgres"), false);
        PostgresStore.setUp(server);
        List<String> done = new ArrayList<>();
        List<String> unsure = new ArrayList<>();
        int broken = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            AtomicBoolean killed = new AtomicBoolean();
            AtomicInteger steps = new AtomicInteger();
            ExecutorService people = Executors.newFixedThreadPool(WRITERS);
            List<Future<Told>> all = new ArrayList<>();
            for (int writer = 0; writer < WRITERS; writer++) {
                String mark = kill + "-" + writer;
                Path copies = root.resolve("copies-" + mark);
                all.add(people.submit(() -> steps(server, copies, mark, killed, steps)));
            }
            int before = ThreadLocalRandom.current().nextInt(1, 6);
            while (steps.get() < before && !all.stream().allMatch(Future::isDone)) {
                Thread.sleep(10);
            }
            Thread.sleep(ThreadLocalRandom.current().nextInt(60));
            KillableServer.kill(data);
            killed.set(true);
            for (Future<Told> one : all) {
                Told told = one.get();
                done.addAll(told.done());
                unsure.addAll(told.unsure());
            }
            people.shutdown();
            broken++;
            KillableServer.release(running);
            running = KillableServer.start(data, port);
            check(server, done, unsure);
            if ((kill + 1) % 5 == 0) {
                System.out.printf("office: %d kills, %d steps acknowledged%n", kill + 1, done.size());
            }
        }
        running.close();
        assertThat(broken).isEqualTo(KILLS);
        assertThat(done).hasSizeGreaterThan(KILLS);
        System.out.printf(
                "office: %d kills of the server, %d steps acknowledged, %d not known, none lost%n",
                KILLS, done.size(), unsure.size());
    }

    /** Takes steps in two jobs, one of which all others use too, until the server is gone. */
    private static Told steps(Server server, Path copies, String mark, AtomicBoolean killed, AtomicInteger steps)
            throws IOException {
        Told told = new Told(new ArrayList<>(), new ArrayList<>());
        Files.createDirectories(copies);
        try (PostgresStore store = PostgresStore.open(server, "office.json")) {
            for (int i = 0; !killed.get(); i++) {
                String step = mark + "-" + i;
                String job = i % 2 == 0 ? "shared" : "own-" + mark.substring(mark.indexOf('-') + 1);
                try {
                    new WorkingFolder(store, copies).step(job, folder -> {
                        Register.of(folder).append(DAY, Event.NOTE, Map.of("text", step));
                        return Files.writeString(folder.resolve("paper.txt"), step);
                    });
                    told.done().add(step);
                    steps.incrementAndGet();
                } catch (StoreFailure | FolderMoved gone) {
                    told.unsure().add(step);
                }
            }
        } catch (StoreFailure gone) {
            told.unsure().add(mark);
        }
        return told;
    }

    private void check(Server server, List<String> done, List<String> unsure) throws IOException {
        Path copies = Files.createTempDirectory(root, "check");
        List<String> there = new ArrayList<>();
        try (PostgresStore store = opened(server)) {
            WorkingFolder copy = new WorkingFolder(store, copies);
            for (String name : names(store)) {
                StoredFolder folder = copy.fetch(name);
                for (StoredFile file : folder.files()) {
                    assertThat(Sha256.of(store.content(name, file)))
                            .as(name + "/" + file.path())
                            .isEqualTo(file.sha256());
                }
                assertThat(store.history(name).get(0).version()).isEqualTo(folder.version());
                Register register = Register.of(copies.resolve(name));
                assertThat(register.check().faults()).isEmpty();
                List<String> lines = register.entries().stream()
                        .map(entry -> entry.fact("text").orElseThrow())
                        .toList();
                assertThat(Files.readString(copies.resolve(name).resolve("paper.txt")))
                        .isEqualTo(lines.get(lines.size() - 1));
                there.addAll(lines);
            }
        }
        assertThat(there).doesNotHaveDuplicates().containsAll(done);
        List<String> more = new ArrayList<>(there);
        more.removeAll(done);
        assertThat(unsure).containsAll(more);
    }

    /** On a busy machine a server that has just come up may take its time. */
    private static PostgresStore opened(Server server) throws IOException {
        for (int tries = 1; ; tries++) {
            try {
                return PostgresStore.open(server, "office.json");
            } catch (StoreFailure notYet) {
                if (tries == 20) {
                    throw notYet;
                }
            }
        }
    }

    private static List<String> names(PostgresStore store) throws IOException {
        return store.list().stream().map(head -> head.name()).toList();
    }
}
