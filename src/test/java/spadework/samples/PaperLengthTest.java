// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.job.OutletKind;
import spadework.office.Bid;
import spadework.office.PaperKind;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.scope.ScopeStep;
import spadework.paperwork.scope.StepKind;
import spadework.paperwork.work.ProfileDrawings;
import spadework.paperwork.work.SectionDrawings;
import spadework.press.PageText;
import spadework.press.PrintedType;

/** How long the papers of the samples are: a certificate is a leaf, a proposal is read at one sitting. */
class PaperLengthTest {
    private static final int MOST_WORDS = 1_500;

    /** What reading glasses still read: common practice, no source. */
    private static final double SMALLEST = 7;

    /** Words of a page that holds next to nothing, its head and foot among them. */
    private static final int MOSTLY_EMPTY = 90;

    private static final String HEAD_OF_LINES = "Direct Unit price Price";
    private static final String HEAD_OF_TAKEOFF = "where each letter comes from, [source]";

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

        boolean handedOut =
                Samples.bid(sample).dossier().job().agreement().accepted().isPresent();
        boolean photos = !Samples.bid(sample).dossier().job().photos().isEmpty();
        assertThat(pages).hasSizeLessThanOrEqualTo(handedOut ? 9 : photos ? 5 : 4);
        if (!handedOut) {
            assertThat(pages.get(0))
                    .contains("What is wrong", "What we will do", "What it costs", "When", "If it leaks again");
            assertThat(pages.get(pages.size() - 1)).contains("Your yes");
        }
    }

    /** A revision also says what moved since the issue before. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "added-wall-then-closed/for-the-homeowner/2026-041-P1",
                "added-wall-then-closed/for-the-homeowner/2026-041-P2"
            })
    void anIssuedProposalIsNoLonger(String issued) throws IOException {
        List<String> pages = PageText.pages(Files.readAllBytes(Path.of("sample-quotes", issued + "-proposal.pdf")));

        assertThat(pages).hasSizeLessThanOrEqualTo(5);
        assertThat(pages.get(pages.size() - 1)).contains("Your yes");
    }

    /** Two walls are told in so many words; the header and the footer are not counted. */
    @Test
    void theProposalOfTwoWallsIsReadAtOneSitting() throws IOException {
        String text = String.join(" ", pages(Path.of("sample-quotes/block-basement-to-swale"), PaperKind.PROPOSAL));

        String body = text.replaceAll("Fennimarsh [^(]*\\(614\\) 555-0142 Job .*? page \\d of \\d", "");
        assertThat(body).hasSizeLessThan(text.length());
        assertThat(Arrays.stream(body.split(" ")).filter(word -> word.matches(".*[A-Za-z].*")))
                .hasSizeLessThanOrEqualTo(MOST_WORDS);
    }

    /** The summary, the work, its terms and the specimen; notices to cancel that are no part of it are not counted. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"added-wall-then-closed", "maryland-buyer-of-65"})
    void theContractIsEightPagesWithItsNotices(String sample) throws IOException {
        List<String> pages = pages(Path.of("sample-quotes", sample), PaperKind.CONTRACT);

        assertThat(pages).hasSizeLessThanOrEqualTo(8);
        assertThat(pages.get(0)).contains("In short", "Contract price", "Payments");
        assertThat(pages)
                .allMatch(page ->
                        page.split(" ").length > MOSTLY_EMPTY || page.contains("Right to cancel, and signatures"));
    }

    /** A reader who counts the days told finds those of the first page. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theDaysToldAreTheDaysPromised(Path sample) throws IOException {
        String text = String.join(" ", pages(sample, PaperKind.PROPOSAL));
        int promised = Samples.bid(sample).dossier().job().schedule().workingDays();

        int last = Pattern.compile("Days? (?:\\d+ (?:and|to) )?(\\d+):")
                .matcher(text)
                .results()
                .mapToInt(found -> Integer.parseInt(found.group(1)))
                .max()
                .orElseThrow();
        int kept = Pattern.compile("We keep (one|\\d+) more days?")
                .matcher(text)
                .results()
                .mapToInt(found -> found.group(1).equals("one") ? 1 : Integer.parseInt(found.group(1)))
                .sum();
        assertThat(text).contains(promised + " working days at your house");
        assertThat(last + kept).isEqualTo(promised);
    }

    /** What was not measured or seen yet has its answers in a step, one for each that was a note of its own. */
    private static int openAnswers(List<ScopeStep> steps) {
        return steps.stream()
                .filter(step -> step.kind() == StepKind.LOOK_FIRST)
                .mapToInt(step -> step.evidence().size())
                .sum();
    }

    /** A cover, a page for each wall, one for pipes and ground, and the drawings, two on a page. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void theScopeHasACoverAndAPageForEachWall(Path sample) throws IOException {
        Bid bid = Samples.bid(sample);
        int walls = bid.dossier().job().walls().size();
        int drawings = SectionDrawings.everywhere(bid.dossier()).size()
                + ProfileDrawings.of(bid.dossier()).size();
        List<String> pages = pages(sample, PaperKind.SCOPE);
        // A wall of which much is not known yet says so on a page more.
        long unsure = ScopePaper.of(bid.dossier(), bid.plan()).steps().walls().stream()
                .filter(wall -> wall.notes().size() + openAnswers(wall.steps()) > 2)
                .count();

        // A sump has notes and steps of its own, which go onto a page more.
        long sump = bid.dossier().job().water().outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                .count();

        assertThat(pages).hasSizeLessThanOrEqualTo(Math.toIntExact(1 + walls + unsure + sump + 1 + (drawings + 1) / 2));
        if (unsure > 0) {
            return;
        }
        assertThat(pages.get(0)).contains("Before anybody digs");
        assertThat(pages.subList(1, walls + 1))
                .allMatch(page -> page.contains("Hold point 1.") && page.contains("Hold point 2."))
                .allMatch(page -> page.contains("Not before hold point 3"));
        assertThat(pages.get(walls + 1)).contains("Pipes, outlets, and ground", "Hold point 3.", "walk the site");
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

    private static List<String> pages(Path sample, PaperKind paper) throws IOException {
        byte[] pdf = Samples.printed(sample).entrySet().stream()
                .filter(file -> file.getKey().endsWith("/" + paper.file() + ".pdf"))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
        assertThat(PrintedType.of(pdf).least())
                .as("smallest letter, drawings among them, in points")
                .isGreaterThanOrEqualTo(SMALLEST - PrintedType.HAIR);
        return PageText.pages(pdf);
    }
}
