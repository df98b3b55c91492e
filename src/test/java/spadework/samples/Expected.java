// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Texts that lie beside a sample in {@code expected/}. They are written anew, to be read before they are committed, by
 * {@code mvn test -Dtest=SamplesTest -Dspadework.refresh=true}.
 */
final class Expected {
    private static final boolean REFRESH = Boolean.getBoolean("spadework.refresh");

    private Expected() {}

    static void hold(Path sample, String name, String actual) throws IOException {
        Path file = sample.resolve("expected").resolve(name);
        if (REFRESH) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, actual);
        }
        assertThat(file).as("the expected text lies beside the sample").isRegularFile();
        assertThat(actual).as(file.toString()).isEqualTo(Files.readString(file));
    }

    /** The same for a file that is committed as it is printed. */
    static void holdBytes(Path file, byte[] actual) throws IOException {
        if (REFRESH) {
            Files.createDirectories(file.getParent());
            Files.write(file, actual);
        }
        assertThat(file).as("the printed file lies beside the sample").isRegularFile();
        assertThat(Arrays.equals(actual, Files.readAllBytes(file)))
                .as(file + " is what is printed now")
                .isTrue();
    }
}
