// SPDX-License-Identifier: Apache-2.0
package spadework;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.pricebook.Measure;

/** Holds README.md and DEVELOPERS.md to the code: tables, class names, files. */
class GuideTest {
    private static final Path MAIN = Path.of("src/main/java/spadework");

    /** Names a class of ours, and perhaps one of its methods. */
    private static final Pattern CLASS = Pattern.compile("([A-Z]+[a-z]\\w*)(?:\\.([a-z]\\w*))?");

    /** Rounds a decimal or a number of packages, outside of imports and comments. */
    private static final Pattern ROUNDS =
            Pattern.compile("(?m)^(?!import |\\s*/?\\*).*(RoundingMode\\.[A-Z]|\\broundUp\\()");

    private enum Document {
        README(Guide.readme(), ""),
        REFERENCE(Guide.reference(), "src/reference"),
        DEVELOPERS(Guide.developers(), "");

        private final Guide guide;
        private final Path folder;

        Document(Guide guide, String folder) {
            this.guide = guide;
            this.folder = Path.of(folder);
        }
    }

    @Test
    void mapOfPackagesIsTheOneThatIsEnforced() {
        Map<String, List<String>> drawn = new LinkedHashMap<>();
        map().forEach(row -> drawn.put(plain(row.get(0)), words(row.get(2))));
        assertThat(drawn).containsExactlyEntriesOf(enforced("IMPORTS"));
    }

    @Test
    void mapNamesThePackagesThatKnowEachLibrary() {
        Map<String, List<String>> drawn = new TreeMap<>();
        map().forEach(row -> words(plain(row.get(3)))
                .forEach(library -> drawn.computeIfAbsent(library + "..", known -> new ArrayList<>())
                        .add(plain(row.get(0)))));
        assertThat(drawn).isEqualTo(new TreeMap<>(enforced("LIBRARIES")));
    }

    @Test
    void everyPackageSaysWhatLivesThere() throws IOException {
        Set<String> saying = new TreeSet<>();
        try (Stream<Path> files = Files.walk(MAIN)) {
            files.filter(file -> file.endsWith("package-info.java"))
                    .map(file -> MAIN.relativize(file.getParent()).toString().replace('/', '.'))
                    .forEach(saying::add);
        }
        assertThat(saying).isEqualTo(new TreeSet<>(enforced("IMPORTS").keySet()));
        assertThat(map()).allSatisfy(row -> assertThat(row.get(1)).isNotBlank());
    }

    @Test
    void everyMeasureStandsInItsTableWithItsUnit() {
        Map<String, String> texts = new TreeMap<>();
        Pattern measure = Pattern.compile("`([^`]+)` ([^,|]+)");
        Guide.developers()
                .under("The measures")
                .rows()
                .forEach(row -> measure.matcher(row.get(1))
                        .results()
                        .forEach(m -> texts.put(m.group(1), m.group(2).strip())));
        assertThat(texts)
                .isEqualTo(new TreeMap<>(Arrays.stream(Measure.values())
                        .collect(toMap(Measure::trade, m -> m.unit().symbol()))));
    }

    @Test
    void everyPlaceThatRoundsStandsInItsTable() throws IOException {
        Set<String> texts = new TreeSet<>(Guide.developers().under("Rounding").code());
        Set<String> rounding = new TreeSet<>();
        for (Path file : sources(MAIN)) {
            if (ROUNDS.matcher(Guide.read(file)).find()) {
                rounding.add(className(file));
            }
        }
        assertThat(rounding).as("classes that round").hasSizeGreaterThan(5);
        assertThat(texts).as("classes under the heading Rounding").containsAll(rounding);
    }

    @Test
    void everySampleHasALineAndEveryLineASample() throws IOException {
        Set<String> there = new TreeSet<>();
        for (Path folder : list(Path.of("sample-quotes"))) {
            if (Files.isRegularFile(folder.resolve("job.json"))) {
                there.add(folder.getFileName().toString());
            }
        }
        assertThat(samples()).extracting(GuideTest::sample).containsExactlyInAnyOrderElementsOf(there);
    }

    @Test
    void everySampleHasTheFindingsThatItsLineTells() throws IOException {
        for (List<String> row : samples()) {
            StringBuilder expected = new StringBuilder();
            for (Path file : list(Path.of("sample-quotes", sample(row), "expected"))) {
                if (Set.of("findings.txt", "faults.txt")
                        .contains(file.getFileName().toString())) {
                    expected.append(Guide.read(file));
                }
            }
            List<String> texts = new Guide(row.get(2)).code();
            assertThat(texts).as(sample(row)).isNotEmpty();
            assertThat(texts)
                    .as(sample(row))
                    .allSatisfy(
                            id -> assertThat(expected.toString()).containsPattern(" " + Pattern.quote(id) + "[ :]"));
            List<String> stops = expected.toString()
                    .lines()
                    .filter(line -> line.startsWith("STOP "))
                    .map(line -> line.split(" ")[1])
                    .toList();
            assertThat(texts).as("stops of " + sample(row)).containsAll(stops);
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyFileThatIsNamedIsThere(Document document) throws IOException {
        Pattern top = Pattern.compile("(src|templates|sample-quotes|\\.ci)(/.*)?");
        List<String> named = new ArrayList<>(document.guide.links().stream()
                .map(link -> document.folder.resolve(link).normalize().toString())
                .toList());
        document.guide.code().stream()
                .filter(word -> top.matcher(word).matches())
                .forEach(named::add);
        assertThat(named).hasSizeGreaterThan(5).allSatisfy(name -> {
            if (name.contains("*")) {
                var matcher = FileSystems.getDefault().getPathMatcher("glob:" + name);
                try (Stream<Path> all = Files.walk(Path.of(name.substring(0, name.indexOf('/'))))) {
                    assertThat(all.filter(matcher::matches)).isNotEmpty();
                }
            } else {
                assertThat(Path.of(name)).exists();
            }
        });
    }

    @Test
    void everyClassThatIsNamedIsThere() throws IOException {
        Map<String, Path> classes = new TreeMap<>();
        for (Path file : sources(Path.of("src"))) {
            classes.put(className(file), file);
        }
        int seen = 0;
        for (String word : Guide.developers().code()) {
            var name = CLASS.matcher(word);
            if (name.matches()) {
                assertThat(classes).containsKey(name.group(1));
                if (name.group(2) != null) {
                    assertThat(Guide.read(classes.get(name.group(1)))).contains(" " + name.group(2) + "(");
                }
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(40);
    }

    /** One search for the words finds the place, among few others, and beside the number stands where it is from. */
    @Test
    void everyRuleIsFoundByTheWordsThatTheGuideNames() throws IOException {
        List<Path> files = new ArrayList<>(sources(Path.of("src/main/java")));
        try (Stream<Path> data = Files.walk(Path.of("src/main/resources"))) {
            data.filter(file -> file.toString().endsWith(".json")).forEach(files::add);
        }
        List<List<String>> rules =
                Guide.developers().under("Where a rule stands").rows();
        assertThat(rules).hasSize(5);
        for (List<String> row : rules) {
            String words = new Guide(row.get(1)).code().get(0);
            List<Path> found = new ArrayList<>();
            for (Path file : files) {
                if (Guide.read(file).lines().anyMatch(line -> containsIgnoreCase(line, words))) {
                    found.add(file);
                }
            }
            List<String> named = new Guide(row.get(2)).code();
            found.removeIf(file -> !named.contains(className(file)) && !named.contains(file.toString()));
            assertThat(found).as(words).isNotEmpty();
            String source = row.get(3).contains("common practice") ? "common practice, no source" : number(row.get(3));
            assertThat(found)
                    .as(words)
                    .anySatisfy(file -> assertThat(Guide.read(file)).contains(source));
        }
    }

    private static boolean containsIgnoreCase(String line, String words) {
        return line.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
    }

    /** The paragraph of a citation: its last word before a tag in parentheses. */
    private static String number(String citation) {
        String[] parts = citation.replaceAll(" \\(.*", "").split(" ");
        return parts[parts.length - 1];
    }

    private static List<List<String>> map() {
        return Guide.developers().under("The map").rows();
    }

    private static List<List<String>> samples() {
        return Guide.reference().under("Samples").rows();
    }

    private static String sample(List<String> row) {
        return row.get(0).replaceAll("^\\[(.*)]\\(.*\\)$", "$1");
    }

    /** A table of ArchitectureTest, from its source. */
    private static Map<String, List<String>> enforced(String table) {
        String source = Guide.read(Path.of("src/test/java/spadework/ArchitectureTest.java"));
        var block = Pattern.compile("String " + table + " = \"\"\"\n(.*?)\"\"\"", Pattern.DOTALL)
                .matcher(source);
        assertThat(block.find()).as("ArchitectureTest has the table " + table).isTrue();
        Map<String, List<String>> rows = new LinkedHashMap<>();
        block.group(1).lines().filter(line -> line.contains("|")).forEach(line -> {
            String[] cells = line.split("\\|", -1);
            rows.put(cells[0].strip(), words(cells[1]));
        });
        assertThat(rows).as(table).isNotEmpty();
        return rows;
    }

    private static List<String> words(String cell) {
        return cell.isBlank() ? List.of() : List.of(cell.strip().split("\\s+"));
    }

    private static String plain(String cell) {
        return cell.replace("`", "");
    }

    private static String className(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }

    private static List<Path> sources(Path root) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }
}
