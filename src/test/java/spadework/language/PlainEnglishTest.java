// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.languagetool.JLanguageTool;
import org.languagetool.Languages;
import org.languagetool.rules.RuleMatch;
import spadework.job.Job;
import spadework.office.Bid;
import spadework.office.PaperBlocks;
import spadework.office.PaperKind;
import spadework.paperwork.Dossier;
import spadework.paperwork.crew.CrewSheet;
import spadework.paperwork.crew.CrewSheetPaper;
import spadework.press.page.PageInfo;
import spadework.samples.MoneyPapers;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;

/**
 * An outside judge reads what is printed: LanguageTool in American English. Nothing is left but trade words and rules
 * that are set aside with a reason, and names of people, places and firms of the samples.
 */
class PlainEnglishTest {
    /** Names and parts of names that the samples made up. */
    private static final Set<String> NAMES = new TreeSet<>();

    private static List<String> words;
    private static JLanguageTool judge;

    @BeforeAll
    static void prepare() throws IOException {
        words = lines("trade-words.txt");
        judge = new JLanguageTool(Languages.getLanguageForShortCode("en-US"));
        judge.disableRules(lines("rules-set-aside.txt"));
        Stream.concat(Samples.papered().stream(), Samples.refused().stream())
                .filter(sample -> !sample.endsWith("refused-faulty-file"))
                .map(Samples::bid)
                .forEach(PlainEnglishTest::learnNames);
        Spelled.accept(judge, words);
        Spelled.accept(judge, NAMES);
    }

    @Test
    void everyPaperOfTheSamplesReadsAsAmericanEnglish() throws IOException {
        Set<String> blocks = new LinkedHashSet<>();
        for (Path sample : Samples.papered()) {
            PaperBlocks.of(Samples.bid(sample), EnumSet.complementOf(EnumSet.of(PaperKind.COST_SHEET)))
                    .values()
                    .forEach(blocks::addAll);
        }
        assertThat(blocks).hasSizeGreaterThan(400);
        assertThat(faults(blocks)).isEmpty();
    }

    @Test
    void everyFindingOfTheSamplesReadsAsAmericanEnglish() throws IOException {
        Set<String> texts = new LinkedHashSet<>();
        for (Path sample : Stream.concat(Samples.papered().stream(), Samples.refused().stream())
                .filter(sample -> !sample.endsWith("refused-faulty-file"))
                .toList()) {
            Bid bid = Samples.bid(sample);
            bid.findings().forEach(finding -> {
                texts.add(Samples.office().what(finding));
                texts.add(Samples.office().action(finding));
            });
        }
        assertThat(texts).hasSizeGreaterThan(80);
        assertThat(faults(texts)).isEmpty();
    }

    @Test
    void everyPaperAboutMoneyReadsAsAmericanEnglish() throws IOException {
        Set<String> blocks = new LinkedHashSet<>();
        MoneyPapers.blocks().values().forEach(blocks::addAll);
        assertThat(blocks).hasSizeGreaterThan(60);
        assertThat(faults(blocks)).isEmpty();
    }

    @Test
    void theCrewsPapersReadAsAmericanEnglish() throws IOException {
        Set<String> blocks = new LinkedHashSet<>();
        for (Path sample : Samples.papered()) {
            Dossier dossier = Samples.bid(sample).dossier();
            LocalDate on = dossier.job().issued();
            CrewCalendar calendar =
                    CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
            CrewSheet sheet = CrewSheetPaper.of(dossier, calendar, on);
            blocks.addAll(PaperBlocks.of(
                    "crew-sheet",
                    Map.of("crew", sheet),
                    new PageInfo("en-US", dossier.company().name(), on)));
        }
        assertThat(blocks).hasSizeGreaterThan(60);
        assertThat(faults(blocks)).isEmpty();
    }

    /** Labels are too short to judge; what is put into a sentence is read as a label. */
    @Test
    void wordsOfTheWindowAndMessagesReadAsAmericanEnglish() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(Path.of("src/main/resources/spadework"))) {
            files = all.filter(file -> file.toString().endsWith(".properties"))
                    .filter(file -> !file.toString().endsWith("_es.properties"))
                    // Patterns by which dates are written, and no words.
                    .filter(file -> !file.endsWith("wording/languages.properties"))
                    // Patterns by which the words of a job name a side, in both languages.
                    .filter(file -> !file.endsWith("place/places.properties"))
                    .sorted()
                    .toList();
        }
        Set<String> texts = new LinkedHashSet<>();
        for (Path file : files) {
            Properties bundle = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                bundle.load(reader);
            }
            for (String key : new TreeSet<>(bundle.stringPropertyNames())) {
                texts.add(bundle.getProperty(key)
                        .replaceAll("\\{[^}]*}", "B2")
                        .replaceAll("\\s+", " ")
                        .strip()
                        // What goes on with a sentence that another text began.
                        .replaceFirst("^[,;] ", ""));
            }
        }
        assertThat(texts).hasSizeGreaterThan(1200);
        assertThat(faults(texts)).isEmpty();
    }

    @Test
    void readmeAndReferenceReadAsAmericanEnglish() throws IOException {
        String plain = (Files.readString(Path.of("README.md"))
                        + "\n\n"
                        + Files.readString(Path.of("src/reference/README.md")))
                .replaceAll("(?s)```.*?```", "")
                .replaceAll("(?m)^[ \\t]*[|!].*$", "")
                .replaceAll("`[^`]*`", "that")
                .replaceAll("\\[([^]]*)\\]\\([^)]*\\)", "$1")
                .replaceAll("[*#]", "");
        List<String> paragraphs = Arrays.stream(plain.split("\\n\\s*\\n"))
                .map(text -> text.replaceAll("\\s+", " ").strip())
                .toList();
        assertThat(faults(paragraphs)).isEmpty();
    }

    private static List<String> faults(Iterable<String> texts) throws IOException {
        List<String> faults = new ArrayList<>();
        Set<String> read = new HashSet<>();
        for (String text : texts) {
            // The same sentence with other figures is read once.
            boolean saysSomething = text.split(" ").length > 3 && read.add(text.replaceAll("[\\d.,½¼¾]+", "1"));
            for (RuleMatch match : saysSomething ? judge.check(text) : List.<RuleMatch>of()) {
                String found = text.substring(match.getFromPos(), match.getToPos());
                if (!isKnown(found)) {
                    faults.add(match.getRule().getId() + ": [" + found + "] in: " + text + " -> "
                            + match.getSuggestedReplacements().stream().limit(3).toList());
                }
            }
        }
        return faults;
    }

    private static boolean isKnown(String found) {
        String plain = found.replaceAll("['’]s$", "");
        boolean code = plain.matches("[A-Z]+(-[A-Z0-9]+)+");
        return plain.matches(".*\\d.*")
                || code
                || NAMES.contains(plain)
                || words.contains(plain.toLowerCase(Locale.ROOT));
    }

    private static void learnNames(Bid bid) {
        Job job = bid.dossier().job();
        var company = bid.dossier().company();
        String text = String.join(
                " ",
                String.join(" ", job.customer().names()),
                job.site().address().text(),
                company.name(),
                company.address().text(),
                company.insurance().carrier(),
                company.email(),
                job.customer().email().orElse(""),
                job.acceptedStops().stream().map(stop -> stop.by()).collect(Collectors.joining(" ")));
        job.agreement()
                .signing()
                .flatMap(signing -> signing.sale().salesperson())
                .ifPresent(sales -> NAMES.addAll(Arrays.asList(sales.name().split(" "))));
        company.contact()
                .person()
                .ifPresent(called -> NAMES.addAll(Arrays.asList(called.name().split(" "))));
        NAMES.addAll(Arrays.asList(text.split("[ ,.@-]+")));
        NAMES.addAll(Arrays.asList(text.split("[ ,]+")));
    }

    /** A word or a rule a line, with the reason behind the sign of a remark. */
    private static List<String> lines(String file) throws IOException {
        try (InputStream in = PlainEnglishTest.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.replaceAll("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList();
        }
    }
}
