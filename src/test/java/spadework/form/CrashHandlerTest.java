// SPDX-License-Identifier: Apache-2.0
package spadework.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.form.kit.BackgroundTasks;
import spadework.form.kit.WorkCounter;

/** What breaks where nobody expected it leaves a report, keeps what was typed, and is told. */
@WindowTest
class CrashHandlerTest {
    @TempDir
    Path folder;

    private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
    private final AtomicInteger kept = new AtomicInteger();

    private CrashHandler handler(Path reports) {
        BackgroundTasks files = new BackgroundTasks("reports", new WorkCounter(() -> {}), why -> {});
        return new CrashHandler(files, () -> reports, kept::incrementAndGet, told::add);
    }

    private String said() throws InterruptedException {
        String said = told.poll(20, TimeUnit.SECONDS);
        assertThat(said).as("what is told").isNotNull();
        return said;
    }

    @Test
    void reportIsWrittenAndTold() throws IOException, InterruptedException {
        CrashHandler handler = handler(folder);
        handler.uncaughtException(Thread.currentThread(), new IllegalStateException("the floor is gone"));
        String said = said();
        assertThat(kept).hasValue(1);
        Path report;
        try (Stream<Path> files = Files.list(folder)) {
            report = files.filter(file -> file.toString().endsWith(".txt"))
                    .findFirst()
                    .orElseThrow();
        }
        assertThat(report).content().contains("the floor is gone", "CrashHandlerTest");
        assertThat(said).contains("What you typed is kept").contains(report.toString());
    }

    @Test
    void reportThatCannotBeWrittenIsToldToo() throws IOException, InterruptedException {
        Path taken = Files.writeString(folder.resolve("taken"), "a file where the folder should be");
        handler(taken.resolve("reports")).uncaughtException(Thread.currentThread(), new IllegalStateException("gone"));
        assertThat(said()).contains("no report could be written");
        assertThat(kept).hasValue(1);
    }

    @Test
    void whatBreaksAgainAndAgainIsReportedThreeTimes() throws InterruptedException {
        CrashHandler handler = handler(folder);
        for (int i = 0; i < 10; i++) {
            handler.uncaughtException(Thread.currentThread(), new IllegalStateException("again"));
        }
        for (int i = 0; i < 3; i++) {
            said();
        }
        assertThat(told.poll(1, TimeUnit.SECONDS)).as("a fourth").isNull();
    }
}
