// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Programs that issue and register are killed at random moments, two hundred times; two write at once. */
class RegisterKilledIT {
    private static final long SEED = 200;
    /** Eighty deaths in every build; {@code -Dspadework.killedFolders=10} for the long run of two hundred. */
    private static final int FOLDERS = Integer.getInteger("spadework.killedFolders", 4);

    private static final int ROUNDS = 10;
    private static final int AT_ONCE = 2;
    private static final int LONGEST_MILLIS = 30;

    @TempDir
    Path root;

    private int gaps;
    private int issued;

    @Test
    void noNumberIsUsedTwiceNoLineIsLostAndNoDocumentIsHalf() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        int kills = 0;
        for (int each = 0; each < FOLDERS; each++) {
            Path folder = Files.createDirectory(root.resolve("job-" + each));
            List<String> acknowledged = new ArrayList<>();
            for (int round = 0; round < ROUNDS; round++) {
                kills += killed(folder, random, acknowledged);
            }
            examine(folder, acknowledged);
        }
        assertThat(kills).isEqualTo(FOLDERS * ROUNDS * AT_ONCE);
        assertThat(gaps)
                .as("kills that struck between the number and its document, seed " + SEED)
                .isPositive();
        System.out.printf(
                "%d kills, seed %d: %d certificates acknowledged, %d numbers left without a document%n",
                kills, SEED, issued, gaps);
    }

    private static int killed(Path folder, Random random, List<String> acknowledged)
            throws IOException, InterruptedException {
        List<Process> programs = new ArrayList<>();
        for (int each = 0; each < AT_ONCE; each++) {
            programs.add(Issuer.start(folder, 1, Integer.MAX_VALUE));
        }
        try {
            kill(programs, random, acknowledged);
        } finally {
            programs.forEach(Process::destroyForcibly);
        }
        return programs.size();
    }

    /** Kills by the handle: a process that is told to die closes the pipe with what it said last. */
    private static void kill(List<Process> programs, Random random, List<String> acknowledged)
            throws IOException, InterruptedException {
        for (Process program : programs) {
            int begun = program.getInputStream().read();
            TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_MILLIS * 1000));
            program.toHandle().destroyForcibly();
            assertThat(program.waitFor(20, TimeUnit.SECONDS)).isTrue();
            String rest = new String(program.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            String words = (char) begun + rest;
            assertThat(begun)
                    .as("seed " + SEED + ": it has issued one before it is killed")
                    .isEqualTo('2');
            acknowledged.addAll(
                    words.substring(0, words.lastIndexOf('\n') + 1).lines().toList());
        }
    }

    private void examine(Path folder, List<String> acknowledged) throws IOException {
        Register register = Register.of(folder);
        Examination found = register.check();
        assertThat(found.faults()).as("seed " + SEED).isEmpty();

        List<Entry> entries = register.entries();
        Map<String, Long> taken = count(entries, Event.NUMBER_TAKEN);
        Map<String, Long> certificates = count(entries, Event.CERTIFICATE_ISSUED);
        assertThat(taken.values()).as("no number taken twice, seed " + SEED).containsOnly(1L);
        assertThat(certificates.values())
                .as("no number issued twice, seed " + SEED)
                .containsOnly(1L);
        assertThat(acknowledged)
                .as("no number acknowledged twice, seed " + SEED)
                .doesNotHaveDuplicates();
        assertThat(certificates.keySet()).as("no line lost, seed " + SEED).containsAll(acknowledged);
        assertThat(taken.keySet()).containsAll(certificates.keySet());
        assertThat(found.documents()).isEqualTo(2 * certificates.size());

        Entry last = register.issue(
                DocumentKind.CARD, Issuer.JOB, Issuer.DAY, (number, mark) -> Issue.of(Map.of(), Map.of()));
        assertThat(last.line()).as("the register goes on").isEqualTo(found.lines() + 2);
        try (Stream<Path> documents = Files.list(folder.resolve("for-the-homeowner"))) {
            for (Path document : documents.toList()) {
                assertThat(Files.readAllBytes(document))
                        .as(document + " whole, seed " + SEED)
                        .isEqualTo(Issuer.document(document.getFileName().toString()));
            }
        }
        issued += acknowledged.size();
        gaps += taken.size() - certificates.size();
    }

    private static Map<String, Long> count(List<Entry> entries, Event event) {
        return entries.stream()
                .filter(entry -> entry.event() == event)
                .collect(Collectors.groupingBy(
                        entry -> entry.number().orElseThrow().text(), Collectors.counting()));
    }
}
