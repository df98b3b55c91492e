// SPDX-License-Identifier: Apache-2.0
package spadework.store.postgres;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;

/** A PostgreSQL that is killed and started again over the same data. */
public final class KillableServer {
    private KillableServer() {}

    /** A server over the data that lies there, or new data. */
    public static EmbeddedPostgres start(Path data, int port) throws IOException {
        return EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setPort(port)
                // After a kill it first reads what it had not written out yet; on a busy machine that takes a while.
                .setPGStartupWait(Duration.ofMinutes(3))
                .start();
    }

    /** Lets go of the lock on the folder; the server that it held is dead. */
    public static void release(EmbeddedPostgres dead) {
        try {
            dead.close();
        } catch (IOException | RuntimeException alreadyStopped) {
            return;
        }
    }

    /** SIGKILL to the server and all its processes. */
    public static void kill(Path data) throws IOException {
        long pid = Long.parseLong(
                Files.readAllLines(data.resolve("postmaster.pid")).get(0).strip());
        ProcessHandle server = ProcessHandle.of(pid).orElseThrow();
        List<ProcessHandle> all =
                Stream.concat(Stream.of(server), server.descendants()).toList();
        all.forEach(ProcessHandle::destroyForcibly);
        all.forEach(process -> process.onExit().join());
    }
}
