// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
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
import spadework.office.Bid;
import spadework.office.PaperBlocks;
import spadework.office.PaperKind;
import spadework.press.PageText;
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
    /** 16 CFR 701.3(a)(8) and (9), which no Spanish text of the agency stands beside. */
    private static final List<String> PRESCRIBED = List.of(
            "This warranty gives you specific legal rights, and you may also have other rights which vary from State "
                    + "to State.",
            "Some States do not allow the exclusion or limitation of incidental or consequential damages, so the above "
                    + "limitation or exclusion may not apply to you.");

    private static final Pattern FIGURE = Pattern.compile("\\d[\\d,.]*\\d|\\d");

    private static final Set<PaperKind> TRANSLATED = EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET));

    private static final Map<String, List<String>> ENGLISH = new LinkedHashMap<>();
    private static final Map<String, List<String>> SPANISH = new LinkedHashMap<>();
    private static final Map<String, byte[]> PAGES = new LinkedHashMap<>();
    private static final Map<String, List<String>> SHEETS = new LinkedHashMap<>();
    private static final Map<String, List<String>> ENGLISH_SHEETS = new LinkedHashMap<>();
    private static final Map<String, List<String>> DRAWINGS = new LinkedHashMap<>();
    private static final Map<String, List<String>> ENGLISH_DRAWINGS = new LinkedHashMap<>();
    private static final Set<String> TYPED = new TreeSet<>();

    @BeforeAll
    static void print() throws IOException {
        PagePress press = PagePress.warm(Templates.bundled());
        Bid signed = Samples.bid(SAMPLE);
        for (MoneyPapers.Paper paper : MoneyPapers.all(signed.dossier())) {
            ENGLISH.put(paper.name(), PaperBlocks.of(paper.template(), paper.model(), info(Language.ENGLISH)));
            ENGLISH_SHEETS.put(paper.name(), sheet(paper, Language.ENGLISH));
        }
        for (MoneyPapers.Paper paper :
                MoneyPapers.all(SpanishDossiers.of(signed.dossier()).forHomeowner())) {
            PageInfo info = info(SpanishDossiers.SPANISH);
            SPANISH.put(paper.name(), PaperBlocks.of(paper.template(), paper.model(), info));
            PAGES.put(paper.name(), press.print(paper.template(), paper.model(), info));
            SHEETS.put(paper.name(), sheet(paper, SpanishDossiers.SPANISH));
        }
        for (Path sample : Samples.papered()) {
            Bid english = Samples.bid(sample);
            Bid spanish = SpanishDossiers.of(english);
            String name = sample.getFileName() + ", ";
            PaperBlocks.of(english, TRANSLATED).forEach((file, blocks) -> ENGLISH.put(name + file, blocks));
            PaperBlocks.of(spanish, TRANSLATED).forEach((file, blocks) -> SPANISH.put(name + file, blocks));
            PaperBlocks.ofWorkbooks(english, TRANSLATED)
                    .forEach((file, texts) -> ENGLISH_SHEETS.put(name + file, texts));
            PaperBlocks.ofWorkbooks(spanish, TRANSLATED).forEach((file, texts) -> SHEETS.put(name + file, texts));
            PaperBlocks.pages(spanish, TRANSLATED, press).forEach((file, page) -> PAGES.put(name + file, page));
            PaperBlocks.ofDrawings(english, TRANSLATED)
                    .forEach((file, texts) -> ENGLISH_DRAWINGS.put(name + file, texts));
            PaperBlocks.ofDrawings(spanish, TRANSLATED).forEach((file, texts) -> DRAWINGS.put(name + file, texts));
            for (String own : List.of("job.json", "price-book.json")) {
                if (Files.exists(sample.resolve(own))) {
                    TYPED.addAll(words(Files.readString(sample.resolve(own))));
                }
            }
            TYPED.addAll(words(english.dossier().company().toString()));
        }
    }

    private static PageInfo info(Language language) {
        return new PageInfo(language.tag(), "Fennimarsh Wall & Drain LLC", DAY);
    }

    private static List<String> sheet(MoneyPapers.Paper paper, Language language) throws IOException {
        return WorkbookDump.texts(WorkbookDump.open(
                WorkbookPress.print(Templates.bundled(), paper.template(), paper.model(), DAY, language)));
    }

    /** Walls A y B: labels are nobody's words, so only what joins them tells the language. */
    @Test
    void labelsInARowAreJoinedInSpanish() {
        SPANISH.forEach((paper, blocks) -> assertThat(blocks)
                .as(paper)
                .noneMatch(block -> block.matches("(?is).*\\b(paredes|tubos|bajantes) [A-Z]\\d? and [A-Z]\\d?\\b.*")));
        assertThat(SPANISH.values().stream().flatMap(List::stream))
                .anyMatch(block -> block.matches("(?is).*\\bparedes [A-Z] y [A-Z]\\b.*"));
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

    /** The words on a drawing and those that stand for it: Spanish, with the figures of the English ones. */
    @Test
    void drawingsSpeakSpanishToo() throws IOException {
        Set<String> english = englishWords();
        assertThat(english).contains("routes");
        assertThat(DRAWINGS.values().stream().filter(texts -> !texts.isEmpty())).hasSizeGreaterThan(10);
        DRAWINGS.forEach((paper, texts) -> {
            assertThat(left(texts, english)).as(paper).isEmpty();
            assertThat(drawn(texts)).as(paper).isEqualTo(drawn(ENGLISH_DRAWINGS.get(paper)));
        });
        assertThat(ENGLISH_DRAWINGS)
                .as("the check finds English words")
                .allSatisfy((paper, texts) -> assertThat(
                                texts.isEmpty() || !left(texts, english).isEmpty())
                        .isTrue());
    }

    @Test
    void theyReadAsSpanish() throws IOException {
        SpanishJudge judge = new SpanishJudge(TYPED);
        List<String> faults = new ArrayList<>();
        for (List<String> blocks : SPANISH.values()) {
            for (String block : blocks) {
                judge.faults(block).stream()
                        .filter(fault -> !TYPED.containsAll(words(fault.substring(0, fault.indexOf(" (")))))
                        .forEach(faults::add);
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Spanish is a third longer than English, and the papers have room for it. */
    @Test
    void papersStayAsShortAsTheyHaveToBe() {
        assertThat(PAGES).allSatisfy((paper, pdf) -> {
            int pages = PageText.pages(pdf).size();
            if (paper.endsWith(", proposal")) {
                assertThat(pages).as(paper).isLessThanOrEqualTo(5);
            }
            if (paper.endsWith(", warranty")) {
                assertThat(pages).as(paper).isBetween(2, 3);
            }
        });
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
        List<Path> read = new ArrayList<>(bundles());
        for (String drawn : List.of("plan", "section", "profile")) {
            read.add(Path.of("src/main/resources/spadework/drawing", drawn, "words_es.properties"));
        }
        for (Path file : read) {
            spanish.addAll(words(texts(file)));
            english.addAll(words(texts(
                    file.resolveSibling(file.getFileName().toString().replace("_es.properties", ".properties")))));
        }
        english.removeAll(spanish);
        english.removeAll(TYPED);
        return english;
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            return files.filter(file -> file.toString().endsWith("_es.properties"))
                    .filter(file -> !file.endsWith("book_es.properties"))
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
        String all = String.join("\n", texts);
        for (String sentence : PRESCRIBED) {
            all = all.replace(sentence, "");
        }
        // A paragraph of a rule, as in 29 CFR 1926.651(k), is no word.
        Set<String> left = words(all.replaceAll("\\(\\p{Ll}\\)", ""));
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

    /** Without bars of scales: a legend of two rows makes the house lower, and its bar another one. */
    private static Set<String> drawn(List<String> texts) {
        Set<String> drawn = new TreeSet<>(figures(texts));
        drawn.removeAll(Set.of("5", "10", "20", "50"));
        return drawn;
    }

    private static List<String> figures(List<String> texts) {
        return FIGURE.matcher(String.join("\n", texts))
                .results()
                .map(MatchResult::group)
                .sorted()
                .toList();
    }
}
