// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bundle in another language has exactly the keys of its English one; what stands in one alone is named here. */
class BundleKeysTest {
    private static final Path TERMS = Path.of("templates/words/terms.properties");
    private static final Path FINDINGS = Path.of("templates/words/findings.properties");
    private static final Path RULES = Path.of("src/main/java/spadework/safety");

    /** Charts, calendars and choices of the cost sheet, the season and the office: no homeowner reads them. */
    private static final Pattern OFFICE_TERMS = Pattern.compile(
            "(band|bar|bars|choice|ordinal|standing|step)\\..*|days\\.(\\d+|chart|fact\\..*)|range\\.(here|words)"
                    + "|risk\\.more");

    /** What English papers take from the code, as quantities and units are called in the takeoff. */
    private static final Pattern CODE_TERMS = Pattern.compile("(section|measured|symbol|said|part|body)\\..*");

    /** Findings of the rules that the scope leaves to the office: advice on the design, and what the office prices. */
    private static final Set<String> OFFICE_FINDINGS = Set.of(
            "candidate-falls",
            "candidate-higher",
            "candidate-spares-pump",
            "candidate-too-high",
            "dig-as-one",
            "drain-under-target",
            "ends-open",
            "film-dampproofing",
            "grade-short",
            "hand-item-missing",
            "item-retired",
            "opening-without-well",
            "outlet-near-house",
            "price-stale",
            "rolls-short",
            "roof-share",
            "roots",
            "seepage-share",
            "slope-shallow",
            "slow-drain",
            "soil-not-named",
            "state-plan",
            "sump-cycle",
            "sump-discharge-trench",
            "sump-inflow-over-tables",
            "sump-inflow-unwatched",
            "sump-inflow-watched",
            "sump-lead",
            "sump-pump-curve",
            "sump-pump-fits",
            "sump-pump-unknown",
            "trench-depth-differs",
            "main-shorter-than-way",
            "main-shorter-other-end-fits",
            "roof-line-shorter-than-way",
            "discharge-shorter-than-way",
            "downspouts-unplaced",
            "way-unknown",
            "discharge-way-unknown",
            "lead-by-plan",
            "lead-unknown",
            "trench-depth-typed",
            "trench-depth-usual",
            "wall-undrained");

    static List<Path> translated() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : List.of(Path.of("src/main/resources/spadework"), Path.of("templates"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.getFileName().toString().matches(".*_[a-z]{2}\\.properties"))
                        .filter(file -> !file.getFileName().toString().matches("(book|help|faults)_.*"))
                        .filter(file -> !file.endsWith("office/findings_es.properties"))
                        .sorted()
                        .forEach(found::add);
            }
        }
        return found;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("translated")
    void keysAreThoseOfTheEnglishBundle(Path file) throws IOException {
        String name = file.getFileName().toString();
        Path english = file.resolveSibling(name.replaceFirst("_[a-z]{2}\\.properties", ".properties"));
        Set<String> keys = keys(file);
        if (english.equals(TERMS)) {
            keys.removeIf(CODE_TERMS.asMatchPredicate());
        }
        assertThat(keys).isNotEmpty().isEqualTo(forHomeowners(english));
    }

    /** A finding of the rules is said in every language, or it is named here why no homeowner reads it. */
    @Test
    void findingsLeftToTheOfficeAreFindingsOfTheRules() throws IOException {
        assertThat(ofRules()).containsAll(OFFICE_FINDINGS).hasSizeGreaterThan(120);
    }

    /** What a window shows of a finding is said in Spanish by the papers' words or by the office's own. */
    @Test
    void everyFindingIsSaidToTheOffice() throws IOException {
        Set<String> papers = keys(FINDINGS.resolveSibling("findings_es.properties"));
        Set<String> office = keys(Path.of("src/main/resources/spadework/office/findings_es.properties"));
        Set<String> shown = keys(FINDINGS);
        shown.removeIf(key -> !key.endsWith(".what") && !key.endsWith(".action"));
        assertThat(office).doesNotContainAnyElementsOf(papers).isSubsetOf(shown);
        papers.addAll(office);
        assertThat(papers).containsAll(shown);
    }

    /** What has to be done prints in a Spanish scope, unless its step says it or it is told to the office alone. */
    @Test
    void noFindingOfTheOfficeThatHasToBeDonePrintsInAScope() throws IOException {
        String plan = Files.readString(Path.of("src/main/java/spadework/paperwork/scope/StepPlan.java"));
        Set<String> due = new TreeSet<>();
        try (Stream<Path> rules = Files.walk(RULES)) {
            for (Path rule : rules.filter(Files::isRegularFile).toList()) {
                Pattern.compile("\\b(?:must|stop)\\(\\s*\"([a-z0-9-]+)\"")
                        .matcher(Files.readString(rule))
                        .results()
                        .map((MatchResult found) -> found.group(1))
                        .filter(OFFICE_FINDINGS::contains)
                        .forEach(due::add);
            }
        }
        assertThat(due).contains("sump-lead", "hand-item-missing");
        due.remove("soil-not-named");
        assertThat(due)
                .as("\"soil-not-named\" is a calculator's, which is given a slope and no job")
                .allMatch(id -> plan.contains('"' + id + '"'));
    }

    private static Set<String> forHomeowners(Path english) throws IOException {
        Set<String> keys = keys(english);
        if (english.equals(TERMS)) {
            keys.removeIf(OFFICE_TERMS.asMatchPredicate());
        }
        if (english.equals(FINDINGS)) {
            Set<String> spoken = ofRules();
            spoken.removeAll(OFFICE_FINDINGS);
            keys.removeIf(key -> !key.startsWith("deference")
                    && !key.contains(".homeowner")
                    && !spoken.contains(key.substring(0, key.indexOf('.'))));
        }
        return keys;
    }

    /** Ids that the rules of the site name and that have words. */
    private static Set<String> ofRules() throws IOException {
        Set<String> worded = keys(FINDINGS);
        Set<String> ids = worded.stream()
                .filter(key -> key.startsWith("unseen-"))
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> rules = Files.walk(RULES)) {
            for (Path rule : rules.filter(Files::isRegularFile).toList()) {
                Pattern.compile("\"([a-z0-9-]+)\"")
                        .matcher(Files.readString(rule))
                        .results()
                        .map((MatchResult found) -> found.group(1))
                        .filter(id -> worded.contains(id + ".what"))
                        .forEach(ids::add);
            }
        }
        return ids;
    }

    private static Set<String> keys(Path file) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            texts.load(reader);
        }
        return new TreeSet<>(texts.stringPropertyNames());
    }
}
