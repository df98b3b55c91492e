// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpadeworkTest {
    private static final String SAMPLE = "sample-quotes/block-basement-to-swale";
    private static final String FAULTY = "sample-quotes/refused-faulty-file";
    private static final String STOPPED = "sample-quotes/refused-type-a-and-no-fall";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    private int run(String... arguments) {
        return Spadework.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    @ParameterizedTest(name = "{0} --help")
    @ValueSource(strings = {"", "documents", "price", "check", "figure"})
    void helpShowsAnExample(String command) {
        int exit = command.isEmpty() ? run("--help") : run(command, "--help");
        assertThat(exit).isZero();
        assertThat(out.toString()).contains("Example:", "spadework " + (command.isEmpty() ? "documents" : command));
    }

    @Test
    void noCommandShowsUsage() {
        assertThat(run()).isEqualTo(2);
        assertThat(err.toString()).contains("Usage: spadework");
    }

    @Test
    void documentsNamesEveryFileItWrote() throws IOException {
        assertThat(run("documents", SAMPLE, "--out", folder.toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString().lines()).hasSize(8).allMatch(line -> Files.isRegularFile(Path.of(line)));
    }

    @Test
    void onlyTheAskedPapers() throws IOException {
        assertThat(run("documents", SAMPLE, "--out", folder.toString(), "--only", "proposal,warranty"))
                .isZero();
        assertThat(out.toString()
                        .lines()
                        .map(line -> Path.of(line).getFileName().toString()))
                .containsExactlyInAnyOrder("proposal.pdf", "warranty.pdf", "proposal.xlsx", "warranty.xlsx");
    }

    @Test
    void unknownPaperIsRefusedWithTheAllowedOnes() {
        assertThat(run("documents", SAMPLE, "--only", "quote")).isEqualTo(2);
        assertThat(err.toString()).contains("proposal, scope-of-work, contract, warranty, cost-sheet");
    }

    @Test
    void oneBadJobDoesNotStopTheOthers() throws IOException {
        int exit = run("documents", FAULTY, STOPPED, SAMPLE, "--only", "proposal", "--out", folder.toString());
        assertThat(exit).isEqualTo(1);
        assertThat(err.toString())
                .contains("/walls/0/lenght", "soil-type-a", "acceptedStops")
                .doesNotContain("\tat ");
        assertThat(out.toString().lines()).hasSize(2);
    }

    @Test
    void refusedJobLeavesEarlierPapersAlone() throws IOException {
        Path earlier = Files.createDirectories(folder.resolve("2026-092")).resolve("proposal.pdf");
        Files.writeString(earlier, "earlier");
        assertThat(run("documents", FAULTY, "--out", folder.toString())).isEqualTo(1);
        assertThat(earlier).hasContent("earlier");
        try (Stream<Path> all = Files.walk(folder)) {
            assertThat(all.filter(Files::isRegularFile)).containsExactly(earlier);
        }
    }

    @Test
    void missingJobIsOneClearMessage() {
        assertThat(run("price", folder.resolve("nowhere.json").toString())).isEqualTo(1);
        assertThat(err.toString()).contains("nowhere.json", "found no file").doesNotContain("Exception");
    }

    @Test
    void unusableTemplatesFolderIsOneClearMessage() {
        assertThat(run(
                        "documents",
                        SAMPLE,
                        "--templates",
                        folder.resolve("none").toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("templates").doesNotContain("\tat ");
    }

    @Test
    void ownTemplateTakesThePlaceOfTheBundledOne() throws IOException {
        Path words = Files.createDirectories(folder.resolve("t/words"));
        String bundled = Files.readString(Path.of("templates/words/findings.properties"));
        Files.writeString(
                words.resolve("findings.properties"),
                bundled.replace("Local code, the licensed", "Our town, the licensed"));
        assertThat(run("check", SAMPLE, "--templates", folder.resolve("t").toString()))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("Our town, the licensed professional");
    }

    @Test
    void brokenTemplateNamesItsPlaceAndWritesNothing() throws IOException {
        Path own = Files.createDirectories(folder.resolve("t/proposal"));
        Files.writeString(own.resolve("page.ftlh"), "<html>\n${proposal.nothing}</html>");
        Path papers = folder.resolve("out");
        assertThat(run("documents", SAMPLE, "--templates", folder.resolve("t").toString(), "--out", papers.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("proposal/page.ftlh:2:").doesNotContain("\tat ");
        assertThat(papers).doesNotExist();
    }

    @Test
    void checkAnswersWithTheStops() {
        assertThat(run("check", STOPPED)).isEqualTo(1);
        assertThat(out.toString().lines().limit(3)).allMatch(line -> line.startsWith("STOP "));
        assertThat(run("check", SAMPLE)).isZero();
    }

    @Test
    void linesAndSectionsOfTheListingAddToTheTotal() throws IOException {
        assertThat(run("price", SAMPLE, "--json")).isZero();
        JsonNode price = new ObjectMapper().readTree(out.toString());
        BigDecimal total = new BigDecimal(price.get("total").asText());
        assertThat(sum(price.get("sections"))).isEqualByComparingTo(total);
        assertThat(sum(price.get("lines"))).isEqualByComparingTo(total);
        price.get("lines").forEach(line -> {
            BigDecimal product = new BigDecimal(line.get("quantity").asText())
                    .multiply(new BigDecimal(line.get("unitPrice").asText()))
                    .setScale(2, java.math.RoundingMode.HALF_UP);
            assertThat(product)
                    .as(line.toString())
                    .isEqualByComparingTo(line.get("price").asText());
        });
        assertThat(price.get("job").asText()).isEqualTo("2026-014");
        assertThat(price.get("quantities")).isNotEmpty().allSatisfy(quantity -> {
            assertThat(quantity.get("value").isNumber()).isTrue();
            assertThat(quantity.get("working").asText()).contains("=");
        });
        assertThat(price.get("findings")).isNotEmpty();
    }

    @Test
    void faultsAsJson() throws IOException {
        assertThat(run("price", FAULTY, "--json")).isEqualTo(1);
        JsonNode faults = new ObjectMapper().readTree(out.toString()).get("faults");
        assertThat(faults).hasSize(10);
        assertThat(faults.get(0).get("pointer").asText()).isEqualTo("/site/address/state");
    }

    private static BigDecimal sum(JsonNode array) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode each : array) {
            sum = sum.add(new BigDecimal(each.get("price").asText()));
        }
        return sum;
    }
}
