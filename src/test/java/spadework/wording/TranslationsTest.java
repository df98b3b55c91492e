// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.cli.CommandTexts;
import spadework.form.kit.FieldHelpTest;

/** A translated bundle says what its English one does: the same values, the same figures, the trade's own words. */
class TranslationsTest {
    private static final Path RESOURCES = Path.of("src/main/resources/spadework");
    private static final Path GLOSSARY = RESOURCES.resolve("wording/glossary-es.csv");
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)[,}]");
    private static final Pattern NAMED_PLACE = Pattern.compile("\\{(\\w+)}");

    static List<Path> spanish() throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path folder : List.of(RESOURCES, Path.of("templates"))) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.toString().endsWith("_es.properties"))
                        .filter(file -> !file.getFileName().toString().matches("(book|faults)_es.properties"))
                        .sorted()
                        .forEach(found::add);
            }
        }
        return found;
    }

    private static Properties read(Path file) throws IOException {
        Properties texts = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            texts.load(reader);
        }
        return texts;
    }

    /** Help is in English where the commands and the schemas are, and what the office alone finds with the rest. */
    private static Properties english(Path translated) throws IOException {
        if (translated.endsWith("cli/help_es.properties") || translated.endsWith("form/help_es.properties")) {
            Properties said = new Properties();
            said.putAll(
                    translated.endsWith("cli/help_es.properties") ? CommandTexts.english() : FieldHelpTest.places());
            return said;
        }
        if (translated.endsWith("office/findings_es.properties")) {
            return read(Path.of("templates/words/findings.properties"));
        }
        return read(translated.resolveSibling(
                translated.getFileName().toString().replace("_es.properties", ".properties")));
    }

    /** What an English bundle has too; what stands in one alone is named in {@link BundleKeysTest}. */
    private static List<String> keys(Properties spanish, Properties english) {
        return spanish.stringPropertyNames().stream()
                .filter(english::containsKey)
                .toList();
    }

    /** A sentence may leave out what it says in words of its own, and never asks for a value that is not given. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("spanish")
    void asksForNoValueThatTheEnglishOneDoesNot(Path file) throws IOException {
        Properties english = english(file);
        Properties spanish = read(file);
        for (String key : keys(spanish, english)) {
            assertThat(places(english.getProperty(key))).as(key).containsAll(places(spanish.getProperty(key)));
        }
    }

    @Test
    void figuresAndCitationsStandInBoth() throws IOException {
        for (Path file : spanish()) {
            Properties english = english(file);
            Properties spanish = read(file);
            for (String key : keys(spanish, english)) {
                assertThat(figures(spanish.getProperty(key)))
                        .as(file + " " + key)
                        .isEqualTo(figures(english.getProperty(key)));
            }
        }
    }

    @Test
    void wordsOfTheTradeAreThoseOfTheGlossary() throws IOException {
        List<String> other = new ArrayList<>();
        int held = 0;
        List<CSVRecord> rows = glossary();
        assertThat(rows)
                .hasSizeGreaterThan(12)
                .allSatisfy(row -> assertThat(row.get("source")).isNotBlank());
        for (Path file : spanish()) {
            Properties english = english(file);
            Properties spanish = read(file);
            for (String key : keys(spanish, english)) {
                for (CSVRecord row : rows) {
                    Pattern term = Pattern.compile("\\b" + row.get("english") + "s?\\b", Pattern.CASE_INSENSITIVE);
                    if (term.matcher(bare(english.getProperty(key))).find()) {
                        held++;
                        String said = lower(bare(spanish.getProperty(key)));
                        if (Stream.of(row.get("spanish").split(" / ")).noneMatch(word -> said.contains(lower(word)))) {
                            other.add(key + ": " + row.get("english"));
                        }
                    }
                }
            }
        }
        assertThat(held).isGreaterThan(30);
        assertThat(other).isEmpty();
    }

    private static List<CSVRecord> glossary() throws IOException {
        try (Reader reader = Files.newBufferedReader(GLOSSARY)) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        }
    }

    /** Without the places where values are put in. */
    private static String bare(String text) {
        return text.replaceAll("\\{\\w+}", "");
    }

    private static Set<String> places(String text) {
        Pattern place = text.contains(", plural,") ? PLACE : NAMED_PLACE;
        return new TreeSet<>(
                place.matcher(text).results().map(found -> found.group(1)).toList());
    }

    /** Numbers outside of the places where values are put in. */
    private static List<String> figures(String text) {
        return Pattern.compile("\\d[\\d.]*\\d|\\d")
                .matcher(PLACE.matcher(text).replaceAll(""))
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }

    /** In small letters, without accents and without the ends of plurals: órdenes is orden. */
    private static String lower(String text) {
        return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .replaceAll("(e?s|e)\\b", "");
    }
}
