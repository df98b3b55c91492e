// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.drawing.PlanJob;
import spadework.drawing.plan.PlanSketch;
import spadework.paperwork.proposal.Proposal;
import spadework.paperwork.proposal.ProposalWork;
import spadework.paperwork.work.WallWork;
import spadework.press.page.PagePress;
import spadework.press.svg.SceneSvg;
import spadework.press.template.Templates;

/** However many walls a house has, the plan stays with the five answers on the first page of the proposal. */
class PageManyWallsTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());
    private static final double FIRST_LINE = 90;

    @ParameterizedTest(name = "{0} walls")
    @ValueSource(ints = {2, 4, 5, 8, 12})
    void thePlanStandsOnTheFirstPage(int walls) throws IOException {
        Map<String, Object> model = PageFixtures.model("proposal", proposal(walls));
        model.put("plan", SceneSvg.of(PlanSketch.of(PlanJob.twelveWalls())));

        byte[] pdf = PRESS.print("proposal", model, PageFixtures.INFO);

        // A plan that found no room would stand above the heading that follows it, which opens the second page at
        // the latest.
        if (!PageText.pages(pdf).get(0).contains("How we know")) {
            assertThat(headingOnPage2(pdf))
                    .as("points from the top of the page")
                    .isBetween(50.0, FIRST_LINE);
        }
    }

    private static Proposal proposal(int count) {
        Proposal p = PageFixtures.proposal(PageFixtures.head(false, Optional.empty()));
        List<WallWork> walls = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            walls.add(PageFixtures.wall(String.valueOf((char) ('A' + i)), i % 2 == 0));
        }
        return FlatPapers.withWork(
                p, new ProposalWork(walls, p.work().runs(), p.work().outlets(), ""));
    }

    /** Where "How we know" stands on page 2, points from the top; negative when it is not there. */
    private static double headingOnPage2(byte[] pdf) throws IOException {
        List<Double> places = new ArrayList<>(List.of(-1.0));
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                if (text.startsWith("How we know")) {
                    places.add((double) positions.get(0).getYDirAdj());
                }
            }
        };
        stripper.setStartPage(2);
        stripper.setEndPage(2);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            stripper.getText(document);
        }
        return places.get(places.size() - 1);
    }
}
