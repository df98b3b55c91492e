// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.disk.DyingDisk;

/**
 * The program dies at each of its operations on the disk, in each manner, and again while it takes up the work: more
 * than a thousand deaths, none by luck. Nothing that was acknowledged is lost, nothing is half, no number is used
 * twice, and the register goes on.
 */
class RegisterKilledAtEveryStepTest {
    private static final String JOB = "2026-014";
    private static final LocalDate DAY = LocalDate.of(2026, 4, 3);

    @TempDir
    private Path root;

    private int folders;

    /** What is done to a register. */
    enum Work {
        ISSUE(Event.CERTIFICATE_ISSUED) {
            @Override
            void on(Register register) throws IOException {
                register.issue(DocumentKind.CERTIFICATE, JOB, DAY, (number, mark) -> papers(number.text()));
            }
        },
        DECIDE(Event.CHANGE_ORDER_ACCEPTED) {
            @Override
            void on(Register register) throws IOException {
                DocumentNumber number = new DocumentNumber(JOB, DocumentKind.CHANGE_ORDER, 1);
                register.append(DAY, event(), number, Guard.NONE, papers(number.text()));
            }
        },
        NOTE(Event.NOTE) {
            @Override
            void on(Register register) throws IOException {
                register.append(DAY, event(), Map.of("text", "seen"));
            }
        };

        private final Event event;

        Work(Event event) {
            this.event = event;
        }

        Event event() {
            return event;
        }

        abstract void on(Register register) throws IOException;
    }

    private static Issue papers(String number) {
        return Issue.of(
                Map.of(number + "-paper.pdf", bytes("paper " + number)),
                Map.of(number + "-source.zip", bytes("source " + number)),
                Map.of("total", "25628.00"));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Work.class)
    void deathAtEachOperationAndOnceMoreWhileTheWorkIsTakenUp(Work work) throws IOException {
        int deaths = 0;
        int operations = operations(work, begun());
        assertThat(operations).isGreaterThanOrEqualTo(7);
        for (DyingDisk.Manner manner : DyingDisk.Manner.values()) {
            for (int first = 1; first <= operations; first++) {
                Path folder = begun();
                die(work, folder, first, manner);
                deaths++;
                holds(folder);
                if (stands(work, folder)) {
                    finish(work, folder); // It died behind the last line that it had to write.
                    continue;
                }
                int again = operations(work, copy(folder));
                for (int second = first % 2 + 1; second <= again; second += 2) {
                    Path once = copy(folder);
                    die(work, once, second, manner);
                    deaths++;
                    holds(once);
                    finish(work, once);
                }
                finish(work, folder);
            }
        }
        System.out.println(work + ": " + deaths + " deaths at " + operations + " operations");
        assertThat(deaths).isGreaterThan(3 * operations);
    }

    /** A copy of the folder by hard links keeps what it had, also when the program dies. */
    @Test
    void hardLinkedCopyOfTheFolderStaysAsItWas() throws IOException {
        int operations = operations(Work.NOTE, begun());
        for (int at = 1; at <= operations + 2; at++) {
            Path folder = begun();
            Path copy = Files.createDirectory(root.resolve("copy" + at));
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Files.createLink(copy.resolve(file.getFileName()), file);
                }
            }
            byte[] before = Files.readAllBytes(copy.resolve("register.jsonl"));
            try (DyingDisk disk = DyingDisk.at(at, DyingDisk.Manner.HALF)) {
                Work.NOTE.on(Register.of(folder));
            } catch (DyingDisk.Death died) {
                assertThat(died.getMessage()).isNotEmpty();
            }
            assertThat(Files.readAllBytes(copy.resolve("register.jsonl"))).isEqualTo(before);
            finish(Work.NOTE, folder);
            assertThat(Register.of(copy).each(entry -> {}).faults()).isEmpty();
        }
    }

    private Path begun() throws IOException {
        Path folder = Files.createDirectory(root.resolve("job" + folders++));
        Register register = Register.of(folder);
        register.issue(DocumentKind.PROPOSAL, JOB, DAY, (number, mark) -> papers(number.text()));
        return folder;
    }

    private int operations(Work work, Path folder) throws IOException {
        try (DyingDisk disk = DyingDisk.at(0, DyingDisk.Manner.BEFORE)) {
            work.on(Register.of(folder));
            return disk.operations();
        }
    }

    private static void die(Work work, Path folder, int at, DyingDisk.Manner manner) {
        try (DyingDisk disk = DyingDisk.at(at, manner)) {
            assertThatThrownBy(() -> work.on(Register.of(folder)))
                    .as("operation %d, %s", at, manner)
                    .isInstanceOf(DyingDisk.Death.class);
            assertThat(disk.operations()).isEqualTo(at);
        }
    }

    /** The proposal that was acknowledged is there, and nothing that is there is wrong. */
    private static void holds(Path folder) throws IOException {
        Register register = Register.of(folder);
        assertThat(register.check().faults()).isEmpty();
        assertThat(register.entries().stream().map(Entry::event)).startsWith(Event.NUMBER_TAKEN, Event.PROPOSAL_ISSUED);
    }

    /** The work is done again, where it is not done already, and then stands once. */
    private static void finish(Work work, Path folder) throws IOException {
        Register register = Register.of(folder);
        if (!stands(work, folder)) {
            work.on(register);
        }
        register.append(DAY, Event.NOTE, Map.of("text", "it goes on"));
        List<Entry> entries = register.entries();
        assertThat(register.check().faults()).isEmpty();
        assertThat(entries.stream().filter(entry -> entry.event() == work.event()))
                .hasSizeBetween(1, work == Work.NOTE ? 4 : 1);
        Set<String> taken = new HashSet<>();
        entries.stream()
                .filter(entry -> entry.event() == Event.NUMBER_TAKEN)
                .forEach(entry -> assertThat(
                                taken.add(entry.number().orElseThrow().text()))
                        .as("no number twice")
                        .isTrue());
        for (Entry entry : entries) {
            for (RegisteredFile file : entry.files()) {
                assertThat(Files.readString(folder.resolve(file.name())))
                        .endsWith(entry.number().orElseThrow().text());
            }
        }
    }

    private static boolean stands(Work work, Path folder) throws IOException {
        return work != Work.NOTE
                && Register.of(folder).entries().stream().anyMatch(entry -> entry.event() == work.event());
    }

    private Path copy(Path folder) throws IOException {
        Path copy = root.resolve("job" + folders++);
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(folder.relativize(file).toString()));
            }
        }
        return copy;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
