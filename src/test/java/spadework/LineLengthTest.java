// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A line of code fits beside another. Rows of a text block are tables, and stay as wide as what they show. */
class LineLengthTest {
    private static final int WIDEST = 120;
    private static final String TEXT_BLOCK = "\"\"\"";

    @Test
    void noLineOfCodeIsWiderThan120Characters() throws IOException {
        List<String> wide = new ArrayList<>();
        int files = 0;
        for (String folder : List.of("src/main/java", "src/test/java", "src/bench/java")) {
            try (Stream<Path> sources = Files.walk(Path.of(folder))) {
                for (Path file : sources.filter(path -> path.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    files++;
                    wide(Files.readAllLines(file)).forEach(line -> wide.add(file + ":" + line));
                }
            }
        }
        assertThat(files).isGreaterThan(500);
        assertThat(wide).as("lines over %d characters: wrap them", WIDEST).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"120, 0", "121, 1"})
    void lineOf121IsTold(int characters, int described) {
        assertThat(wide(List.of("x", "y".repeat(characters)))).hasSize(described);
        assertThat(wide(List.of("a = " + TEXT_BLOCK, "y".repeat(characters), TEXT_BLOCK + ";")))
                .isEmpty();
    }

    private static List<Integer> wide(List<String> lines) {
        List<Integer> wide = new ArrayList<>();
        boolean inBlock = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean fence = line.contains(TEXT_BLOCK);
            if (!inBlock && !fence && line.codePointCount(0, line.length()) > WIDEST) {
                wide.add(i + 1);
            }
            boolean opensAndCloses = line.indexOf(TEXT_BLOCK) != line.lastIndexOf(TEXT_BLOCK);
            inBlock ^= fence && !opensAndCloses;
        }
        return wide;
    }
}
