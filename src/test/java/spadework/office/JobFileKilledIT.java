// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.draft.Draft;
import spadework.office.files.JobFile;

/** A program that keeps aside and saves a job over and over is killed at random moments, two hundred times. */
class JobFileKilledIT {
    private static final long SEED = 61;
    /** Eighty in every build; {@code -Dspadework.kills=200} for the long run. */
    private static final int KILLS = Integer.getInteger("spadework.kills", 80);

    private static final int LONGEST_MILLIS = 40;
    private static final Path SAMPLE = Path.of("sample-quotes", "block-basement-to-swale", "job.json");

    @TempDir
    Path folder;

    private int offered;

    @Test
    void jobIsTheOldOneOrTheNewOneAndTheSideFileOffersTheRest() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        Path file = folder.resolve("job.json");
        Files.writeString(file, edition(0));
        int saved = 0;
        // A busy machine saves less often before it is killed, so there it is killed more often.
        for (int kill = 0; kill < KILLS || (saved <= KILLS / 4 && kill < 4 * KILLS); kill++) {
            saved = killed(file, saved, random.nextInt(LONGEST_MILLIS), "kill " + kill + ", seed " + SEED);
        }
        assertThat(saved).as("it saved now and then").isGreaterThan(KILLS / 4);
        assertThat(offered)
                .as("it was killed between keeping and saving now and then")
                .isPositive();
    }

    /** The edition that the file has afterwards. */
    private int killed(Path file, int before, int millis, String when) throws IOException, InterruptedException {
        Path described = folder.resolve("told");
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Program.class.getName(),
                        file.toString(),
                        Integer.toString(before))
                .redirectErrorStream(true)
                .redirectOutput(described.toFile())
                .start();
        while (program.isAlive() && !Files.readString(described).startsWith("begun")) {
            Thread.sleep(2);
        }
        Thread.sleep(millis);
        program.destroyForcibly();
        assertThat(program.waitFor(20, TimeUnit.SECONDS)).as(when).isTrue();
        int kept = before;
        int saved = before;
        for (String line : Files.readAllLines(described)) {
            int edition = line.matches("(kept|saved) \\d+;") ? Integer.parseInt(line.replaceAll("\\D", "")) : 0;
            kept = line.startsWith("kept") ? Math.max(kept, edition) : kept;
            saved = line.startsWith("saved") ? Math.max(saved, edition) : saved;
        }
        JobFile found = JobFile.at(file);
        String text = found.text().orElseThrow();
        int has = Integer.parseInt(Draft.read(text).orElseThrow().shown("/number"));
        assertThat(text).as(when).isEqualTo(edition(has));
        assertThat(has).as(when + ": what was saved stays saved").isBetween(saved, saved + 1);
        int rest = has;
        if (found.unsaved().isPresent()) {
            String offer = found.unsaved().get();
            rest = Integer.parseInt(Draft.read(offer).orElseThrow().shown("/number"));
            assertThat(offer).as(when).isEqualTo(edition(rest));
            offered += rest > has ? 1 : 0;
        }
        assertThat(rest).as(when + ": what was kept is in the file or offered").isGreaterThanOrEqualTo(kept);
        return has;
    }

    private static String edition(int number) throws IOException {
        return Files.readString(SAMPLE).replace("\"2026-014\"", "\"" + number + "\"");
    }

    /** Edits, keeps aside and saves, until it is killed. */
    static final class Program {
        public static void main(String[] arguments) throws IOException {
            JobFile practice = JobFile.at(Path.of(arguments[0] + "-practice"));
            for (int i = 0; i < 5; i++) {
                practice.keepAside(edition(i));
                practice.save(edition(i));
            }
            JobFile file = JobFile.at(Path.of(arguments[0]));
            System.out.println("begun");
            for (int edition = Integer.parseInt(arguments[1]) + 1; ; edition++) {
                String text = edition(edition);
                file.keepAside(text);
                System.out.println("kept " + edition + ";");
                file.save(text);
                System.out.println("saved " + edition + ";");
            }
        }
    }
}
