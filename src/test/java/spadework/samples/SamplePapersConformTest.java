// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.pricing.Quote;

/** Every paper of every sample: the PDF by the standards it claims, the workbook worked out again. */
class SamplePapersConformTest {
    @TempDir
    Path office;

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void pdfConformsToUa1AndA3a(Path sample) throws IOException {
        int seen = 0;
        for (Map.Entry<String, byte[]> file : Samples.printed(sample).entrySet()) {
            if (file.getKey().endsWith(".pdf")) {
                assertThat(VeraPdf.failedRules(file.getValue()))
                        .as(file.getKey())
                        .isEmpty();
                seen++;
            }
        }
        assertThat(seen).isEqualTo(Samples.papersOf(Samples.bid(sample)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void workbookWorkedOutAgainDiffersByNoCent(Path sample) throws IOException, InterruptedException {
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbooks cannot be worked out again");
        List<byte[]> books = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : Samples.printed(sample).entrySet()) {
            if (file.getKey().endsWith(".xlsx")) {
                books.add(file.getValue());
            }
        }
        assertThat(new Recalculation(program.get(), office).figures(books))
                .isEqualTo(books.stream().map(Recalculation::shown).toList());
        assertThat(books).hasSize(Samples.papersOf(Samples.bid(sample)));
    }

    /** Workbook, page and listing say the same total, section by section. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void workbookPageAndListingSayTheSame(Path sample) throws IOException {
        Quote proposed = Samples.bid(sample).proposedQuote();
        Quote agreed = Samples.bid(sample).quote();
        for (Map.Entry<String, byte[]> file : Samples.printed(sample).entrySet()) {
            byte[] content = file.getValue();
            switch (file.getKey().substring(file.getKey().indexOf('/') + 1)) {
                case "proposal.xlsx" -> {
                    assertThat(WorkbookDump.named(WorkbookDump.open(content), "job_total"))
                            .containsExactly(total(proposed));
                    assertThat(WorkbookDump.named(WorkbookDump.open(content), "section_prices"))
                            .isEqualTo(prices(proposed));
                }
                case "cost-sheet.xlsx" -> {
                    assertThat(WorkbookDump.named(WorkbookDump.open(content), "job_total"))
                            .containsExactly(total(agreed));
                    assertThat(WorkbookDump.named(WorkbookDump.open(content), "sections_price"))
                            .isEqualTo(prices(agreed));
                }
                case "proposal.pdf" ->
                    assertThat(PageText.all(content)).contains(proposed.total().text());
                case "cost-sheet.pdf" ->
                    assertThat(PageText.all(content)).contains(agreed.total().text());
                default -> assertThat(content).isNotEmpty();
            }
        }
        assertThat(Samples.bid(sample).priceListing())
                .contains("\"total\" : \""
                        + Samples.bid(sample).dossier().contract().total().plain() + "\"");
    }

    private static double total(Quote quote) {
        return quote.total().amount().doubleValue();
    }

    private static List<Double> prices(Quote quote) {
        return quote.sections().stream()
                .map(section -> section.price().amount().doubleValue())
                .toList();
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
