// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;
import spadework.job.Observation;
import spadework.paperwork.Picture;
import spadework.paperwork.proposal.Proposal;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** Photos of the visit on the proposal: named where they belong, captioned, and described for who cannot see them. */
class PagePhotosTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());
    private static final String WET = "The joint of floor and wall, wet after rain";

    @Test
    void aPhotoIsNamedAtItsObservationAndCaptioned() {
        String text = PageText.all(print());

        assertThat(text)
                .containsSubsequence(
                        "Water on the floor.",
                        "1. Seen.",
                        "See Photo 1 and Photo 2.",
                        "2. Seen.",
                        "Photo 1: " + WET,
                        "Photo 2: Pit");
        assertThat(text.substring(text.indexOf("2. Seen."))).doesNotContain("See Photo");
    }

    @Test
    void theCaptionIsTheWordsForWhoCannotSeeIt() throws IOException {
        assertThat(alternatives(print())).contains("Photo 1: " + WET, "Photo 2: Pit");
    }

    @Test
    void aPageWithPhotosConforms() {
        assertThat(VeraPdf.failedRules(print())).isEmpty();
    }

    private static byte[] print() {
        Proposal withLogo = (Proposal) PageFixtures.proposalOnA4WithLogo().get("proposal");
        String data = withLogo.head().firm().logo().orElseThrow();
        return PRESS.print(
                "proposal",
                PageFixtures.model(
                        "proposal",
                        proposal(
                                List.of(new Picture(1, "wet.png", WET, data), new Picture(2, "pit.png", "Pit", data)))),
                PageFixtures.INFO);
    }

    private static Proposal proposal(List<Picture> pictures) {
        Proposal p = PageFixtures.proposal(PageFixtures.head(false, Optional.empty()));
        List<Observation> seen = List.of(
                new Observation("Water on the floor", "Seen", "Rain", "A drain", List.of("wet.png", "pit.png")),
                new Observation("Wet soil", "Seen", "Rain", "A drain", List.of()));
        return FlatPapers.withFound(p, seen, pictures);
    }

    private static List<String> alternatives(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> found = new ArrayList<>();
            gather(document.getDocumentCatalog().getStructureTreeRoot(), found);
            return found;
        }
    }

    private static void gather(PDStructureNode node, List<String> found) {
        if (node instanceof PDStructureElement element && element.getAlternateDescription() != null) {
            found.add(element.getAlternateDescription());
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode inner) {
                gather(inner, found);
            }
        }
    }
}
