// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.paperwork.cost.CostSheetPaper;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.proposal.ProposalPaper;

/** What holds for several walls in the same words is told once, with all their labels; nothing found is lost. */
class SameWordsTest {
    private static final Path FOUR_WALLS = Path.of("sample-quotes/poured-basement-with-sump");

    @Test
    void allThatIsDugAndSaysTheSameSharesANote() {
        List<FindingNote> ladders = all(Samples.bid(FOUR_WALLS)).stream()
                .filter(note -> note.id().equals("ladder"))
                .toList();

        assertThat(ladders).extracting(FindingNote::about).containsExactly("A, B, C, D, D1, S1");
        assertThat(ladders)
                .extracting(FindingNote::what)
                .containsExactly("At walls A, B, C, and D, lead D1, and sump pit S1"
                        + " the ground is dug 6 ft 8 in to 9 ft 7½ in deep.");
    }

    @Test
    void theHomeownerReadsOneCautionOnLeadForBothWalls() {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));

        assertThat(ProposalPaper.of(bid.dossier(), plan(bid)).notes())
                .filteredOn(note -> note.id().equals("lead-paint"))
                .extracting(FindingNote::what)
                .containsExactly(
                        "The old coating on walls A and B may hold lead. We test it or follow the federal lead rule,"
                                + " and hand you its pamphlet first.");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void everyFindingIsToldOfEachOfItsWalls(Path sample) {
        Bid bid = Samples.bid(sample);
        List<FindingNote> all = all(bid);

        assertThat(bid.dossier().findings().site()).isNotEmpty();
        assertThat(bid.findings()).allMatch(finding -> isTold(finding, all));
        assertThat(all).extracting(FindingNote::what, FindingNote::action).doesNotHaveDuplicates();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void aStopStandsByItselfBecauseItIsAcceptedByItself(Path sample) {
        Bid bid = Samples.bid(sample);
        Function<Severity, Long> found = grave -> bid.findings().stream()
                .filter(finding -> finding.severity() == grave)
                .count();

        assertThat(CostSheetPaper.of(bid.dossier(), bid.quote()).notes().findings())
                .filteredOn(note -> note.severity().equals("stop"))
                .hasSize(Math.toIntExact(found.apply(Severity.STOP)));
    }

    private static boolean isTold(Finding finding, List<FindingNote> notes) {
        return notes.stream()
                .filter(note -> note.id().equals(finding.id()))
                .anyMatch(note -> note.about().equals(finding.about())
                        || List.of(note.about().split(", and |, | and ")).contains(finding.about()));
    }

    private static List<FindingNote> all(Bid bid) {
        return CostSheetPaper.of(bid.dossier(), bid.quote()).notes().findings();
    }

    private static Scene plan(Bid bid) {
        Dossier dossier = bid.dossier();
        return PlanSketch.of(dossier.job());
    }
}
