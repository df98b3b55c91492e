// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every tag of a citation, in code, data, templates and tests, leads to its source in one file. */
class SourcesTest {
    private static final Path SOURCES = Path.of("src/SOURCES.md");
    private static final Pattern ROW =
            Pattern.compile("\\| ([A-Z]-\\d{2}) \\|([^|]+)\\|([^|]+)\\|([^|]*)\\|([^|]+)\\|");
    /** A letter of one of the tables and two digits; what stands right behind a quotation mark is an item's code. */
    private static final Pattern TAG = Pattern.compile("(?<![\"\\w-])(?<!\" )[CEFGHMPRTUWZ]-\\d{2}(?![\\w-])");

    @Test
    void everyTagThatIsUsedHasASource() throws IOException {
        Map<String, String> used = new TreeMap<>();
        for (Path file : files()) {
            Matcher tag = TAG.matcher(Files.readString(file));
            while (tag.find()) {
                used.putIfAbsent(tag.group(), file.toString());
            }
        }
        assertThat(used).hasSizeGreaterThan(90).containsKeys("F-04", "W-03", "T-13", "H-26", "E-10", "R-01");
        used.keySet()
                .removeAll(new TreeSet<>(rows().stream().map(row -> row.get(0)).toList()));
        assertThat(used).isEmpty();
    }

    @Test
    void everyRowSaysWhatWhereAndHow() throws IOException {
        List<List<String>> rows = rows();
        assertThat(rows.stream().map(row -> row.get(0))).doesNotHaveDuplicates();
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.get(1)).as(row.get(0)).isNotBlank();
            assertThat(row.get(2)).as(row.get(0)).isNotBlank();
            assertThat(row.get(4)).as(row.get(0)).containsPattern("read|quoted|memory|computed|title page alone");
        });
        long tagged = Files.readAllLines(SOURCES).stream()
                .filter(line -> line.matches("\\| [A-Z]-\\d.*"))
                .count();
        assertThat(rows).hasSize((int) tagged);
    }

    @Test
    void tagIsFoundInAComment() {
        assertThat(TAG.matcher("(IRC R406.2; F-19)").find()).isTrue();
        assertThat(TAG.matcher("\"C-12\": \"COAT-RUB\"").find()).isFalse();
        assertThat(TAG.matcher("IC-12 and F-190 and CONC-OUT").find()).isFalse();
    }

    private static List<List<String>> rows() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        Matcher row = ROW.matcher(Files.readString(SOURCES));
        while (row.find()) {
            rows.add(List.of(
                    row.group(1),
                    row.group(2).strip(),
                    row.group(3).strip(),
                    row.group(4).strip(),
                    row.group(5).strip()));
        }
        return rows;
    }

    private static List<Path> files() {
        List<Path> files = new ArrayList<>();
        for (String folder : List.of("src/main", "src/test", "templates")) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                all.filter(path -> path.toString().matches(".*\\.(java|json|properties|ftlh|ftlx|css|txt|md)"))
                        .forEach(files::add);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return files;
    }
}
