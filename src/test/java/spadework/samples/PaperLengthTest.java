// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Outcome;
import spadework.office.PaperKind;
import spadework.press.PageText;

/** How long the papers of the samples are: a certificate is a leaf, a proposal is read at one sitting. */
class PaperLengthTest {
    private static final String HEAD_OF_LINES = "Direct Unit price Price";
    private static final String HEAD_OF_TAKEOFF = "where each letter comes from, [source]";

    @TempDir
    Path out;

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theCertificateHasAFrontAndABack(Path sample) throws IOException {
        List<String> pages = pages(sample, PaperKind.WARRANTY);

        assertThat(pages).hasSize(2);
        assertThat(pages.get(0)).contains("Limited warranty", "Covered wall", "Covered part", "Signed for");
        assertThat(pages.get(1))
                .contains("What is covered, and what is not?", "How does state law affect your rights?");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theProposalIsShortAndTheSignaturesHaveCompany(Path sample) throws IOException {
        List<String> pages = pages(sample, PaperKind.PROPOSAL);

        boolean options =
                !Samples.bid(sample).proposed().job().agreement().options().isEmpty();
        assertThat(pages).hasSizeLessThanOrEqualTo(options ? 9 : 7);
        assertThat(pages.get(pages.size() - 1)).contains("The warranty in five lines", "Terms", "Acceptance");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theStepsOfAWallStandOnOnePage(Path sample) throws IOException {
        int walls = Samples.bid(sample).dossier().job().walls().size();

        assertThat(pages(sample, PaperKind.SCOPE))
                .filteredOn(page -> page.contains("Step at wall"))
                .hasSize(walls)
                .allMatch(page -> page.contains("Hold point A") && page.contains("Leave the site raked."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void noPageOfTheCostSheetEndsWithTheHeadOfATable(Path sample) throws IOException {
        List<String> pages = pages(sample, PaperKind.COST_SHEET);

        assertThat(pages)
                .anyMatch(page -> page.contains(HEAD_OF_LINES))
                .anyMatch(page -> page.contains(HEAD_OF_TAKEOFF));
        assertThat(pages)
                .noneMatch(page ->
                        page.strip().endsWith(HEAD_OF_LINES) || page.strip().endsWith(HEAD_OF_TAKEOFF));
    }

    private List<String> pages(Path sample, PaperKind paper) throws IOException {
        Outcome.Printed printed = (Outcome.Printed) Samples.office().documents(sample, out, EnumSet.of(paper));
        Path pdf = printed.files().stream()
                .filter(file -> file.toString().endsWith(".pdf"))
                .findFirst()
                .orElseThrow();
        return PageText.pages(Files.readAllBytes(pdf));
    }
}
