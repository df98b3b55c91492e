// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WritersAtOnceTest {
    private static final int PROGRAMS = 2;
    private static final int THREADS = 2;
    private static final int TIMES = 25;

    @TempDir
    Path folder;

    @Test
    void twoProgramsOfTwoThreadsLoseNoLineAndUseNoNumberTwice() throws IOException, InterruptedException {
        List<Process> programs = new ArrayList<>();
        for (int each = 0; each < PROGRAMS; each++) {
            programs.add(Issuer.start(folder, THREADS, TIMES));
        }
        List<String> acknowledged = new ArrayList<>();
        for (Process program : programs) {
            acknowledged.addAll(new String(program.getInputStream().readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .toList());
            assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(program.exitValue()).isZero();
        }
        int all = PROGRAMS * THREADS * TIMES;
        List<String> numbers = IntStream.rangeClosed(1, all)
                .mapToObj(count -> Issuer.JOB + "-W" + count)
                .toList();
        assertThat(acknowledged).containsExactlyInAnyOrderElementsOf(numbers);
        Register register = Register.of(folder);
        Examination found = register.check();
        assertThat(found.faults()).isEmpty();
        assertThat(found.advice()).isEmpty();
        assertThat(found.lines()).as("each taken and issued").isEqualTo(2 * all);
        assertThat(found.documents()).isEqualTo(2 * all);
        assertThat(register.entries().stream()
                        .filter(entry -> entry.event() == Event.CERTIFICATE_ISSUED)
                        .map(entry -> entry.number().orElseThrow().text()))
                .containsExactlyInAnyOrderElementsOf(numbers);
    }
}
