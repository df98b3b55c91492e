// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** The certificate says what federal law asks of a written warranty, and nothing that law forbids. */
class PageCertificateTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @Test
    void theTitleIsLimitedAndItFitsAFrontAndABack() {
        List<String> pages = pages(false);

        assertThat(pages).hasSize(2);
        // 15 USC 2303(a): a warranty short of the federal minimum is conspicuously called limited
        assertThat(pages.get(0)).contains("Limited warranty", "W-2026-014", "May 1, 2026 April 30, 2041");
    }

    @Test
    void theBackAnswersTheFiveQuestionsWithThePrescribedSentence() {
        assertThat(pages(false).get(1))
                .containsSubsequence(
                        "What is covered, and what is not?",
                        "How long does it last?",
                        "What will we do?",
                        "How do you get service?",
                        "How does state law affect your rights?",
                        // 16 CFR 701.3(a)(9), verbatim
                        "This warranty gives you specific legal rights, and you may also have other rights which vary"
                                + " from State to State.");
    }

    @Test
    void itNeitherDisclaimsNorPromisesALifetime() {
        String text = String.join(" ", pages(false)).toLowerCase(java.util.Locale.ROOT);

        // 15 USC 2308(a): whoever warrants in writing may not disclaim implied warranties; 16 CFR 239.4: lifetime
        assertThat(text).doesNotContain("in lieu of", "implied", "merchantab", "lifetime", "as is");
    }

    @Test
    void untilTheJobIsClosedEveryPageSaysSpecimen() {
        assertThat(pages(true)).hasSize(2).allSatisfy(page -> assertThat(page).contains("Limited warranty, specimen"));
        assertThat(pages(true).get(0))
                .contains("SPECIMEN", "It is not yet a warranty")
                .doesNotContain("2041");
        assertThat(String.join(" ", pages(false))).doesNotContainIgnoringCase("specimen");
    }

    @Test
    void theCostSheetSaysOnEveryPageWhomItIsFor() {
        assertThat(PageText.pages(PRESS.print("cost-sheet", PageFixtures.sheetModel(), PageFixtures.INFO)))
                .allSatisfy(page -> assertThat(page).contains("Cost sheet, contractor only"));
    }

    private static List<String> pages(boolean specimen) {
        return PageText.pages(PRESS.print("certificate", PageFixtures.certificateModel(specimen), PageFixtures.INFO));
    }
}
