// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.disk.SharedFile;
import spadework.disk.Snapshot;
import spadework.draft.Draft;
import spadework.draft.DraftValue;
import spadework.office.book.BookService;
import spadework.office.files.JobFile;
import spadework.register.Event;
import spadework.register.Register;

/**
 * Eight programs change one file at the same time, and no change that was acknowledged is lost. Some in every build;
 * {@code -Dspadework.changes=1250} makes it ten thousand at each kind of file.
 */
class EightProgramsTest {
    private static final int PROGRAMS = 8;
    private static final int CHANGES = Integer.getInteger("spadework.changes", 4);
    private static final LocalDate DAY = LocalDate.of(2026, 8, 1);

    @TempDir
    private Path root;

    /** A kind of file that programs share, and one change of it. */
    enum Shared {
        /** As the command does it. */
        BOOK("price-book.json") {
            @Override
            boolean change(Path file, String mark) throws IOException {
                return BookService.at(file)
                        .change("STONE-MACH", Map.of("source/text", mark), DAY, mark)
                        .done();
            }
        },
        /** As the window does it: what was changed elsewhere is told, read again, and then saved. */
        JOB("block-basement-to-swale/job.json") {
            @Override
            boolean change(Path file, String mark) throws IOException {
                while (true) {
                    JobFile job = JobFile.at(file);
                    Draft draft = Draft.read(job.text().orElseThrow()).orElseThrow();
                    Draft more = draft.with("/assumed/" + draft.rows("/assumed"), new DraftValue.Text(mark));
                    if (job.save(more.text()) == JobFile.Saved.DONE) {
                        return true;
                    }
                }
            }
        },
        COMPANY("company.json") {
            @Override
            boolean change(Path file, String mark) throws IOException {
                return appended(file, mark);
            }
        },
        STATE_RULES("state-rules.json") {
            @Override
            boolean change(Path file, String mark) throws IOException {
                return appended(file, mark);
            }
        },
        REGISTER("block-basement-to-swale/register.jsonl") {
            @Override
            boolean change(Path file, String mark) throws IOException {
                Register.of(file.getParent()).append(DAY, Event.NOTE, Map.of("text", mark));
                return true;
            }
        };

        private final String name;

        Shared(String name) {
            this.name = name;
        }

        abstract boolean change(Path file, String mark) throws IOException;

        private static boolean appended(Path file, String mark) throws IOException {
            return SharedFile.alone(file, () -> {
                Snapshot now = Snapshot.of(file);
                String text = now.text().orElse("") + "\n" + mark;
                SharedFile.replace(file, now, text.getBytes(StandardCharsets.UTF_8));
                return true;
            });
        }
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Shared.class)
    void noAcknowledgedChangeIsLost(Shared shared) throws IOException, InterruptedException {
        SampleJobFolder.in(root);
        Path file = root.resolve(shared.name);
        List<Process> programs = new ArrayList<>();
        for (int each = 0; each < PROGRAMS; each++) {
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-Xmx128m",
                            "-Dspadework.lockSeconds=600",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Writer.class.getName(),
                            shared.name(),
                            file.toString(),
                            String.valueOf(each),
                            String.valueOf(CHANGES))
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start());
        }
        List<String> acknowledged = new ArrayList<>();
        for (Process program : programs) {
            acknowledged.addAll(new String(program.getInputStream().readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .toList());
            assertThat(program.waitFor(10, TimeUnit.MINUTES)).isTrue();
            assertThat(program.exitValue()).isZero();
        }
        assertThat(acknowledged).hasSize(PROGRAMS * CHANGES).doesNotHaveDuplicates();
        String text = Files.readString(file);
        assertThat(acknowledged.stream().filter(mark -> !text.contains(mark)).toList())
                .as("acknowledged and lost")
                .isEmpty();
        System.out.println(shared + ": " + acknowledged.size() + " changes by " + PROGRAMS + " programs, none lost");
    }

    /** A program of its own. */
    static final class Writer {
        private Writer() {}

        public static void main(String[] arguments) throws IOException {
            Shared shared = Shared.valueOf(arguments[0]);
            for (int i = 0; i < Integer.parseInt(arguments[3]); i++) {
                String mark = "change-" + arguments[2] + "-" + i + "-of-many";
                if (shared.change(Path.of(arguments[1]), mark)) {
                    System.out.println(mark);
                    System.out.flush();
                }
            }
        }
    }
}
