// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.paperwork.PaperWords;
import spadework.paperwork.warranty.CareCardPaper;
import spadework.paperwork.warranty.ReissuePaper;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.warranty.Card;
import spadework.warranty.CoveredPart;
import spadework.warranty.Warranties;
import spadework.warranty.Warranty;

/** The papers that are made from the register alone. */
class PageAfterCareTest {
    private static final LocalDate ISSUED = LocalDate.of(2029, 6, 4);
    private static final PaperWords TERMS = new PaperWords(Templates.bundled().words("words/terms.properties"));
    private static final PageInfo INFO = new PageInfo("en-US", "Fennimarsh Groundworks", ISSUED);
    private static final PagePress PRESS = new PagePress(Templates.bundled());
    private static final Warranty WARRANTY =
            Warranties.of("2026-014-W1").reissued("2026-014-W2", List.of("Anselm <b>Wren</b>"));
    private static final Warranty THIRD = WARRANTY.reissued("2026-014-W3", List.of("Perpetua Holm"));

    @ParameterizedTest(name = "{0}")
    @MethodSource("papers")
    void paperConformsToUa1AndA3aAndIsTheSameEachTime(String document, Map<String, Object> model) {
        byte[] paper = PRESS.print(document, model, INFO);
        assertThat(VeraPdf.failedRules(paper)).isEmpty();
        assertThat(PRESS.print(document, model, INFO)).isEqualTo(paper);
        assertThat(WorkbookPress.print(Templates.bundled(), document, model, ISSUED))
                .isEqualTo(WorkbookPress.print(Templates.bundled(), document, model, ISSUED));
    }

    static Stream<Arguments> papers() {
        return Stream.of(Arguments.of("reissue", reissue(WARRANTY, "2026-014-W1")), Arguments.of("card", card()));
    }

    @Test
    void reissuedCertificateNamesTheFirstAndKeepsItsTerms() {
        List<String> pages = PageText.pages(PRESS.print("reissue", reissue(WARRANTY, "2026-014-W1"), INFO));
        assertThat(pages).hasSize(2);
        assertThat(pages.get(0))
                .contains(
                        // 15 USC 2303(a): a warranty short of the federal minimum is conspicuously called limited
                        "Limited warranty",
                        "Number 2026-014-W2, for Anselm <b>Wren</b>",
                        "first given under number 2026-014-W1",
                        "April 3, 2026 April 2, 2041")
                .doesNotContain("takes the place of");
        assertThat(pages.get(1))
                .containsSubsequence(
                        "What is covered, and what is not?",
                        "How long does it last?",
                        "It passes to a later owner once, if we are told in writing within 60 days",
                        "What will we do?",
                        "How does state law affect your rights?",
                        // 16 CFR 701.3(a)(9), verbatim
                        "This warranty gives you specific legal rights, and you may also have other rights"
                                + " which vary from"
                                + " State to State.");
        assertThat(PageText.all(PRESS.print("reissue", reissue(THIRD, "2026-014-W2"), INFO)))
                .contains(
                        "first given under number 2026-014-W1",
                        "It takes the place of number 2026-014-W2",
                        "It does not pass to a later owner.");
    }

    @Test
    void reissuedCertificateHoldsEverythingThatTheRegisterKeeps() {
        String text = PageText.all(PRESS.print("reissue", reissue(WARRANTY, "2026-014-W1"), INFO));
        List<String> kept = new ArrayList<>(WARRANTY.terms().duties());
        kept.addAll(WARRANTY.coverage().notCovered());
        kept.addAll(WARRANTY.coverage().parts().stream().map(CoveredPart::part).toList());
        WARRANTY.coverage()
                .walls()
                .forEach(wall -> kept.addAll(List.of("Wall " + wall.label(), wall.what(), wall.length())));
        WARRANTY.coverage()
                .runs()
                .forEach(run -> kept.addAll(List.of("Pipe " + run.label(), run.what(), run.length())));
        kept.addAll(List.of(
                WARRANTY.parties().address(),
                WARRANTY.parties().contractor().name(),
                WARRANTY.parties().contractor().address(),
                WARRANTY.parties().contractor().phone(),
                WARRANTY.parties().contractor().email(),
                WARRANTY.parties().contractor().license()));
        assertThat(text).contains(kept.toArray(String[]::new));
    }

    @Test
    void reissuedCertificateNeitherDisclaimsNorPromisesALifetime() {
        String text = PageText.all(PRESS.print("reissue", reissue(WARRANTY, "2026-014-W1"), INFO));

        // 15 USC 2308(a): whoever warrants in writing may not disclaim implied warranties; 16 CFR 239.4: lifetime
        assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("in lieu of", "implied", "merchantab", "lifetime", "as is");
    }

    @Test
    void cardHasARowForEverySeason() {
        String text = PageText.all(PRESS.print("card", card(), INFO));
        assertThat(text)
                .contains(
                        "Spring 2026 April to May",
                        "Fall 2040",
                        "Spring 2041 March to April",
                        "Ends: Sump pump: April 2028",
                        "Test the pump each spring.");
    }

    @Test
    void workbooksStandInOrder() {
        assertThat(sheets("reissue", reissue(WARRANTY, "2026-014-W1"))).containsExactly("Summary", "Terms");
        assertThat(sheets("card", card())).containsExactly("Summary", "Seasons");
    }

    private static List<String> sheets(String document, Map<String, Object> model) {
        XSSFWorkbook book = WorkbookDump.open(WorkbookPress.print(Templates.bundled(), document, model, ISSUED));
        List<String> names = new ArrayList<>();
        book.forEach(sheet -> names.add(sheet.getSheetName()));
        return names;
    }

    private static Map<String, Object> reissue(Warranty warranty, String before) {
        return Map.of("reissue", ReissuePaper.of(TERMS, new ReissuePaper.Passed(warranty, before, List.of()), ISSUED));
    }

    private static Map<String, Object> card() {
        return Map.of("card", CareCardPaper.of(TERMS, Card.of(WARRANTY), ISSUED));
    }
}
