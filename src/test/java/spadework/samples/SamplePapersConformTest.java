// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.press.WorkbookDump;
import spadework.pricing.Quote;

/** Every paper of every sample: the PDF by the standards it claims, the workbook worked out again. */
class SamplePapersConformTest {
    /** Each sample is printed once for all that is asked of its papers. */
    private static final Map<Path, List<Path>> PRINTED = new HashMap<>();

    @TempDir
    static Path out;

    @TempDir
    Path office;

    @ParameterizedTest(name = "{0}")
    @MethodSource("papered")
    void pdfConformsToUa1AndA3a(Path sample) throws IOException {
        int seen = 0;
        for (Path file : print(sample)) {
            if (file.toString().endsWith(".pdf")) {
                assertThat(VeraPdf.failedRules(Files.readAllBytes(file)))
                        .as(file.toString())
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
        for (Path file : print(sample)) {
            if (file.toString().endsWith(".xlsx")) {
                books.add(Files.readAllBytes(file));
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
        for (Path file : print(sample)) {
            byte[] content = Files.readAllBytes(file);
            switch (file.getFileName().toString()) {
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

    private static List<Path> print(Path sample) throws IOException {
        if (!PRINTED.containsKey(sample)) {
            Path folder = Files.createDirectories(out.resolve(Integer.toString(PRINTED.size())));
            Outcome printed = Samples.office().documents(sample, folder, EnumSet.allOf(PaperKind.class));
            PRINTED.put(sample, ((Outcome.Printed) printed).files());
        }
        return PRINTED.get(sample);
    }

    static List<Path> papered() {
        return Samples.papered();
    }
}
