// SPDX-License-Identifier: Apache-2.0
package spadework.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    private static final int SIZE = 4_000_000;
    private static final long SEED = 41;

    @TempDir
    Path folder;

    @Test
    void writesAndReplaces() throws IOException {
        Path file = folder.resolve("paper.pdf");
        AtomicFile.write(file, "old".getBytes(StandardCharsets.UTF_8));
        AtomicFile.write(file, "new".getBytes(StandardCharsets.UTF_8));
        assertThat(file).hasContent("new");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).as("nothing is left beside it").containsExactly(file);
        }
    }

    @Test
    void fileHasTheRightsOfEveryNewFile() throws IOException {
        Path plain = Files.writeString(folder.resolve("plain.txt"), "x");
        Path paper = folder.resolve("paper.pdf");
        AtomicFile.write(paper, "x".getBytes(StandardCharsets.UTF_8));
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        assertThat(Files.getPosixFilePermissions(paper)).isEqualTo(Files.getPosixFilePermissions(plain));
    }

    /** A second program writes all-a and all-b in turn and is killed at random moments. */
    @Test
    void killedWhileWritingLeavesTheOldFileOrTheNew() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        Path file = folder.resolve("paper.pdf");
        AtomicFile.write(file, content('a'));
        for (int kill = 0; kill < 12; kill++) {
            Process writer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Writer.class.getName(),
                            file.toString())
                    .redirectErrorStream(true)
                    .start();
            assertThat(writer.getInputStream().read())
                    .as("seed " + SEED + ", the writer has begun")
                    .isEqualTo('!');
            Thread.sleep(random.nextInt(60));
            writer.destroyForcibly();
            assertThat(writer.waitFor(20, TimeUnit.SECONDS)).isTrue();
            byte[] found = Files.readAllBytes(file);
            assertThat(found).hasSize(SIZE);
            byte first = found[0];
            for (byte each : found) {
                if (each != first) {
                    throw new AssertionError("half a file after kill " + kill + ", seed " + SEED);
                }
            }
        }
    }

    private static byte[] content(char each) {
        return String.valueOf(each).repeat(SIZE).getBytes(StandardCharsets.US_ASCII);
    }

    /** Writes the file over and over until it is killed. */
    static final class Writer {
        public static void main(String[] arguments) throws IOException {
            byte[] a = content('a');
            byte[] b = content('b');
            System.out.print('!');
            System.out.flush();
            while (true) {
                AtomicFile.write(Path.of(arguments[0]), b);
                AtomicFile.write(Path.of(arguments[0]), a);
            }
        }
    }
}
