// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Closing;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Examination;
import spadework.register.Register;

/** The packed program is killed at random moments while it closes a job, and then asked again. */
class CloseKilledIT {
    private static final long SEED = 4;
    /** Twenty in every build; {@code -Dspadework.kills=200} for the long run. */
    private static final int KILLS = Integer.getInteger("spadework.kills", 20);

    private static final LocalDate DAY = LocalDate.of(2026, 10, 1);
    private static final int LONGEST_RUN_MILLIS = 2_500;
    private static final int WHILE_WRITING_MILLIS = 40;

    @TempDir
    private Path root;

    private final Office office = Office.with(TemplateFolder.NONE);
    private final AtomicInteger openNumbers = new AtomicInteger();
    private final AtomicInteger unwrittenJobs = new AtomicInteger();
    private final AtomicInteger done = new AtomicInteger();

    @Test
    void noNumberIsUsedTwiceNoLineIsLostAndNoDocumentIsHalf() throws IOException {
        Path finished = finished();
        IntStream.range(0, KILLS).parallel().forEach(each -> {
            try {
                kill(copy(finished, each), new Random(SEED * KILLS + each), each % 4 == 0);
            } catch (IOException | InterruptedException failed) {
                throw new IllegalStateException("seed " + SEED + ", kill " + each, failed);
            }
        });
        System.out.printf(
                "%d kills, seed %d: %d left a number without its certificate, %d a certificate not yet in the job, %d"
                        + " came too late%n",
                KILLS, SEED, openNumbers.get(), unwrittenJobs.get(), done.get());
        assertThat(openNumbers.get())
                .as("kills that struck between the number and its certificate")
                .isPositive();
    }

    /** A job in which all is done but the closing. */
    private Path finished() throws IOException {
        SampleJobFolder site = SampleJobFolder.in(Files.createDirectory(root.resolve("shop")));
        new Issuing(office, SampleJobFolder.TODAY).issue(site.folder());
        new Accepting(office, SampleJobFolder.TODAY).accept(site.folder(), List.of("OP1"), SampleJobFolder.yes());
        Bid bid = (Bid) office.bid(site.folder());
        site.finish(List.of("A", "B", "C"), bid.dossier().contract().total().text());
        return site.folder();
    }

    private static Path copy(Path finished, int each) throws IOException {
        Path copy = finished.resolveSibling("job-" + each);
        try (Stream<Path> files = Files.walk(finished)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(finished.relativize(file).toString()));
            }
        }
        return copy;
    }

    private void kill(Path job, Random random, boolean anywhere) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        "java", "@target/spadework.args", "close", job.toString(), "--on", DAY.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (anywhere) {
            TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST_RUN_MILLIS));
        } else {
            while (program.isAlive() && !isWriting(job)) {
                TimeUnit.MILLISECONDS.sleep(1);
            }
            TimeUnit.MICROSECONDS.sleep(random.nextInt(WHILE_WRITING_MILLIS * 1000));
        }
        program.toHandle().destroyForcibly();
        assertThat(program.waitFor(20, TimeUnit.SECONDS)).isTrue();
        examine(job);
    }

    /** Whether a document of the certificate begins to be there, whole or not. */
    private static boolean isWriting(Path job) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(job.resolve("for-the-homeowner"), "*-W1-*")) {
            return files.iterator().hasNext();
        }
    }

    private void examine(Path job) throws IOException {
        Register register = Register.of(job);
        assertThat(register.check().faults())
                .as(job + ": lines and documents hold")
                .isEmpty();
        boolean certified = count(register, Event.CERTIFICATE_ISSUED).size() == 1;
        boolean taken = count(register, Event.NUMBER_TAKEN).keySet().stream().anyMatch(number -> number.contains("-W"));
        boolean written = Files.readString(job.resolve("job.json")).contains("\"closed\"");
        assertThat(written && !certified)
                .as(job + ": no job is closed without its certificate")
                .isFalse();
        openNumbers.addAndGet(taken && !certified ? 1 : 0);
        unwrittenJobs.addAndGet(certified && !written ? 1 : 0);
        done.addAndGet(written ? 1 : 0);

        Outcome again = new Closing(office, SampleJobFolder.TODAY)
                .close(job, new Closing.Asked(DAY, Optional.empty(), Optional.empty()));
        assertThat(again)
                .as(job + ": asked again, it closes")
                .isInstanceOfAny(Outcome.Issued.class, Outcome.Standing.class);
        Map<String, Long> certificates = count(register, Event.CERTIFICATE_ISSUED);
        assertThat(certificates).as(job + ": one certificate").hasSize(1).containsValue(1L);
        assertThat(count(register, Event.NUMBER_TAKEN).values())
                .as("no number twice")
                .containsOnly(1L);
        String number = certificates.keySet().iterator().next();
        assertThat(Files.readString(job.resolve("job.json"))).contains("\"certificate\": \"" + number + "\"");
        Examination end = register.check();
        assertThat(end.faults()).isEmpty();
    }

    private static Map<String, Long> count(Register register, Event event) {
        try {
            return register.entries().stream()
                    .filter(entry -> entry.event() == event)
                    .map(Entry::number)
                    .collect(
                            Collectors.groupingBy(number -> number.orElseThrow().text(), Collectors.counting()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
