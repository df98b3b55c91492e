// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spadework.office.PaperBlocks;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.samples.MoneyPapers;
import spadework.samples.Samples;
import spadework.samples.SpanishDossiers;
import spadework.wording.Language;

/** The papers of a homeowner who reads Spanish: Spanish, with the figures of the English ones, and no longer. */
class SpanishPapersTest {
    private static final LocalDate DAY = LocalDate.of(2026, 9, 1);
    private static final Path SAMPLE = Path.of("sample-quotes/added-wall-then-closed");
    private static final Pattern FIGURE = Pattern.compile("\\d[\\d,.]*\\d|\\d");

    private static final Map<String, List<String>> ENGLISH = new LinkedHashMap<>();
    private static final Map<String, List<String>> SPANISH = new LinkedHashMap<>();
    private static final Map<String, byte[]> PAGES = new LinkedHashMap<>();
    private static final Map<String, List<String>> SHEETS = new LinkedHashMap<>();
    private static final Map<String, List<String>> ENGLISH_SHEETS = new LinkedHashMap<>();

    @BeforeAll
    static void print() throws IOException {
        PagePress press = PagePress.warm(Templates.bundled());
        for (MoneyPapers.Paper paper : MoneyPapers.all(Samples.bid(SAMPLE).dossier())) {
            ENGLISH.put(paper.name(), PaperBlocks.of(paper.template(), paper.model(), info(Language.ENGLISH)));
            ENGLISH_SHEETS.put(paper.name(), sheet(paper, Language.ENGLISH));
        }
        for (MoneyPapers.Paper paper : MoneyPapers.all(
                SpanishDossiers.of(Samples.bid(SAMPLE).dossier()).forHomeowner())) {
            PageInfo info = info(SpanishDossiers.SPANISH);
            SPANISH.put(paper.name(), PaperBlocks.of(paper.template(), paper.model(), info));
            PAGES.put(paper.name(), press.print(paper.template(), paper.model(), info));
            SHEETS.put(paper.name(), sheet(paper, SpanishDossiers.SPANISH));
        }
    }

    private static PageInfo info(Language language) {
        return new PageInfo(language.tag(), "Fennimarsh Wall & Drain LLC", DAY);
    }

    private static List<String> sheet(MoneyPapers.Paper paper, Language language) throws IOException {
        return WorkbookDump.texts(WorkbookDump.open(
                WorkbookPress.print(Templates.bundled(), paper.template(), paper.model(), DAY, language)));
    }

    @Test
    void noWordOfTheEnglishPapersStandsInThem() throws IOException {
        Set<String> english = englishWords();
        assertThat(english).contains("owe", "receipt", "billed").hasSizeGreaterThan(60);
        SPANISH.forEach(
                (paper, blocks) -> assertThat(left(blocks, english)).as(paper).isEmpty());
        SHEETS.forEach((paper, texts) ->
                assertThat(left(texts, english)).as(paper + ", workbook").isEmpty());
    }

    @Test
    void figuresAreThoseOfTheEnglishPapers() {
        SPANISH.forEach(
                (paper, blocks) -> assertThat(figures(blocks)).as(paper).isEqualTo(figures(ENGLISH.get(paper))));
        SHEETS.forEach((paper, texts) ->
                assertThat(figures(texts)).as(paper + ", workbook").isEqualTo(figures(ENGLISH_SHEETS.get(paper))));
    }

    @Test
    void theyReadAsSpanish() throws IOException {
        SpanishJudge judge = new SpanishJudge();
        Set<String> typed = typed();
        List<String> faults = new ArrayList<>();
        for (List<String> blocks : SPANISH.values()) {
            for (String block : blocks) {
                judge.faults(block).stream()
                        .filter(fault -> !typed.containsAll(words(fault.substring(0, fault.indexOf(" (")))))
                        .forEach(faults::add);
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void pagesSayTheirLanguageAndConformToUa1AndA3a() {
        assertThat(PAGES).allSatisfy((paper, pdf) -> {
            assertThat(VeraPdf.failedRules(pdf)).as(paper).isEmpty();
            assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).as(paper).contains("es-US");
        });
    }

    /** Words of the English bundles that no Spanish one has and nobody typed into the job, the company or the book. */
    private static Set<String> englishWords() throws IOException {
        Set<String> english = new TreeSet<>();
        Set<String> spanish = new TreeSet<>();
        for (Path file : bundles()) {
            spanish.addAll(words(texts(file)));
            english.addAll(words(texts(
                    file.resolveSibling(file.getFileName().toString().replace("_es.properties", ".properties")))));
        }
        english.removeAll(spanish);
        english.removeAll(typed());
        return english;
    }

    private static Set<String> typed() throws IOException {
        Set<String> typed = new TreeSet<>();
        for (String file : List.of("job.json", "../company.json", "../price-book.json")) {
            typed.addAll(words(Files.readString(SAMPLE.resolve(file))));
        }
        return typed;
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            return files.filter(file -> file.endsWith("words_es.properties"))
                    .sorted()
                    .toList();
        }
    }

    private static String texts(Path file) throws IOException {
        Properties texts = new Properties();
        texts.load(Files.newBufferedReader(file));
        return String.join("\n", texts.values().stream().map(Object::toString).toList())
                .replaceAll("\\{\\d, *plural,|\\b(one|other) ?\\{|</?strong>|\\{\\w+}", " ");
    }

    private static Set<String> left(List<String> texts, Set<String> english) {
        Set<String> left = words(String.join("\n", texts));
        left.retainAll(english);
        return left;
    }

    private static Set<String> words(String text) {
        return Pattern.compile("\\p{L}+")
                .matcher(text.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> figures(List<String> texts) {
        return FIGURE.matcher(String.join("\n", texts))
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }
}
