// SPDX-License-Identifier: Apache-2.0
package spadework;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import spadework.cli.Spadework;
import spadework.measure.Figures;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.Refusal;
import spadework.office.reply.TemplateFolder;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.takeoff.Quantity;
import spadework.working.Worked;
import spadework.working.Working;

/** Every example of README.md and DEVELOPERS.md is run: commands, what they print, the job, the figures. */
class GuideExamplesTest {
    private static final Path SAMPLE = Path.of("sample-quotes/block-basement-to-swale");
    private static final Pattern PROGRAM =
            Pattern.compile("(?m)(?:^(?:\\$ )?spadework|java (?:@target/spadework\\.args|-jar target/spadework\\.jar)"
                    + "|/bin/spadework) (.+)");

    @TempDir
    Path folder;

    static Stream<Guide> guides() {
        return Stream.of(Guide.readme(), Guide.reference(), Guide.developers());
    }

    @Test
    void everyCommandLineCanBeParsed() {
        List<String> lines = guides().flatMap(
                        guide -> Stream.of(guide.blocks("sh"), guide.blocks("console"), guide.code()))
                .flatMap(List::stream)
                .flatMap(text -> PROGRAM.matcher(text).results())
                .map(found -> found.group(1))
                .toList();
        assertThat(lines).hasSizeGreaterThan(5).allSatisfy(line -> line(words(line)));
    }

    /** Splits a line as a shell does where a value with a space stands in quotes. */
    private static String[] words(String line) {
        return Pattern.compile("(?:[^\\s\"']|\"[^\"]*\"|'[^']*')+")
                .matcher(line)
                .results()
                .map(word -> word.group().replaceAll("[\"']", ""))
                .toArray(String[]::new);
    }

    private static void line(String... arguments) {
        assertThat(new CommandLine(new Spadework()).parseArgs(arguments).hasSubcommand())
                .isTrue();
    }

    @Test
    void referenceNamesEveryCommandAndOptionAndNoOther() {
        Set<String> there = new TreeSet<>();
        CommandLine program = new CommandLine(new Spadework());
        program.getSubcommands().values().forEach(command -> {
            options(command, there);
            if (!command.getCommandName().equals("figure")) {
                command.getSubcommands().values().forEach(part -> options(part, there));
            }
        });
        Set<String> ofCalculators = new TreeSet<>();
        program.getSubcommands()
                .get("figure")
                .getSubcommands()
                .values()
                .forEach(calculator -> options(calculator, ofCalculators));
        Guide reference = Guide.reference();
        Set<String> named = new TreeSet<>();
        Pattern.compile("(?<![-\\w])--[a-z]+(?:-[a-z]+)*")
                .matcher(reference.text())
                .results()
                .forEach(m -> named.add(m.group()));
        assertThat(named).containsAll(there);
        there.addAll(ofCalculators);
        assertThat(there).containsAll(named);
        assertThat(program.getSubcommands().keySet())
                .allSatisfy(command ->
                        assertThat(reference.under("The commands").text()).contains("spadework " + command + " "));
    }

    private static void options(CommandLine command, Set<String> found) {
        command.getCommandSpec().options().forEach(option -> found.add(option.longestName()));
    }

    @Test
    void referenceNamesEveryCalculator() {
        Set<String> calculators = new CommandLine(new Spadework())
                .getSubcommands()
                .get("figure")
                .getSubcommands()
                .keySet();
        List<String> rows = Guide.reference().under("The commands").rows().stream()
                .map(row -> row.get(0))
                .toList();
        assertThat(rows)
                .containsAll(calculators.stream().map(name -> "`" + name + "`").toList());
    }

    static Stream<Guide> guidesThatShowWhatIsPrinted() {
        return Stream.of(Guide.reference(), Guide.developers());
    }

    @ParameterizedTest
    @MethodSource("guidesThatShowWhatIsPrinted")
    void consoleExamplesPrintWhatIsShown(Guide guide) {
        List<String> blocks = guide.blocks("console");
        assertThat(blocks).isNotEmpty();
        for (String block : blocks) {
            List<String> shown = new ArrayList<>(block.lines().toList());
            String command = shown.remove(0).replaceFirst("^\\$ spadework ", "");
            String printed = run(command);
            boolean whole = !shown.contains("…");
            if (whole) {
                assertThat(printed.lines().toList()).as(command).isEqualTo(shown);
            }
            shown.removeIf("…"::equals);
            assertThat(printed.lines().toList()).as(command).containsSubsequence(shown);
        }
    }

    /** Runs a command whose papers go to a folder of the test, and answers what it printed. */
    private String run(String command) {
        StringWriter printed = new StringWriter();
        PrintWriter writer = new PrintWriter(printed, true);
        String[] arguments = words(command);
        int out = Arrays.asList(arguments).indexOf("--out") + 1;
        if (out > 0) {
            arguments[out] = folder.resolve(arguments[out]).toString();
        }
        new CommandLine(new Spadework()).setOut(writer).setErr(writer).execute(arguments);
        return printed.toString().replace(folder + "/", "");
    }

    @Test
    void jobOfTheReferenceIsPriced() throws IOException {
        for (String name : List.of("company.json", "price-book.json")) {
            Files.copy(Path.of("sample-quotes", name), folder.resolve(name));
        }
        String job = Guide.reference().blocks("jsonc").get(0).replaceAll(" +// .*", "");
        Path file =
                Files.writeString(Files.createDirectories(folder.resolve("job")).resolve("job.json"), job);
        BidResult answer = Office.with(TemplateFolder.NONE).bid(file);
        assertThat(answer instanceof Refusal refusal ? refusal.faults() : List.of())
                .isEmpty();
        assertThat(((Bid) answer).openStops()).isEmpty();
        assertThat(((Bid) answer).findings()).extracting("id").contains("bow-unmeasured");
    }

    @Test
    void acceptedStopOfTheReferenceIsOneOfItsSample() throws IOException {
        ObjectMapper json = new ObjectMapper();
        JsonNode shown = json.readTree("{" + Guide.reference().blocks("json").get(0) + "}")
                .at("/acceptedStops/0");
        JsonNode sample = json.readTree(
                Path.of("sample-quotes/stone-wall-engineer-first/job.json").toFile());
        List<String> keys = new ArrayList<>();
        sample.at("/acceptedStops/0").fieldNames().forEachRemaining(keys::add);
        assertThat(shown.fieldNames()).toIterable().containsExactlyInAnyOrderElementsOf(keys);
        assertThat(shown.get("finding")).isEqualTo(sample.at("/acceptedStops/0/finding"));
    }

    @Test
    void numberTravelsAsToldFromTheJobToTheCell() {
        Bid bid = (Bid) Office.with(TemplateFolder.NONE).bid(SAMPLE);
        Set<String> facts = facts(bid);
        String texts =
                Guide.read(SAMPLE.resolve("job.json")) + Guide.read(Path.of("templates/cost-sheet/workbook.ftlx"));
        List<String> described = new ArrayList<>();
        for (List<String> row : Guide.developers().under("How a number travels").rows()) {
            new Guide(row.get(2))
                    .code().stream()
                            .filter(word -> !word.matches("[A-Z]+[a-z]\\w*"))
                            .forEach(described::add);
        }
        assertThat(described)
                .hasSizeGreaterThan(15)
                .allSatisfy(figure -> assertThat(facts.contains(figure) || texts.contains(figure))
                        .as(figure)
                        .isTrue());
    }

    private static Set<String> facts(Bid bid) {
        Quote quote = bid.quote();
        Quantity quantity = bid.dossier().takeoff().quantities().stream()
                .filter(each -> each.id().equals("A.dig-by-machine-in-bulk"))
                .findFirst()
                .orElseThrow();
        PricedLine line = quote.lines().stream()
                .filter(each -> each.code().equals("DIG-BULK") && each.section().equals(quantity.section()))
                .findFirst()
                .orElseThrow();
        PricedSection section = quote.sections().stream()
                .filter(each -> each.section().equals(quantity.section()))
                .findFirst()
                .orElseThrow();
        Set<String> facts = new HashSet<>(List.of(
                quantity.id(),
                Figures.withUnit(quantity.value(), quantity.unit()),
                line.code(),
                line.crewHours().setScale(2, RoundingMode.HALF_UP).toPlainString(),
                line.cost().labor().text(),
                line.cost().machine().text(),
                line.cost().direct().text(),
                line.unitPrice().text(),
                line.price().text(),
                section.lines().text(),
                section.rounding().text(),
                section.price().text(),
                quote.total().text(),
                quote.payments().get(0).amount().text()));
        gather(quantity.working(), facts);
        return facts;
    }

    private static void gather(Working working, Set<String> facts) {
        facts.add(working.valueText());
        if (working instanceof Worked worked) {
            facts.add(worked.line());
        }
        working.inputs().forEach(input -> gather(input, facts));
    }
}
