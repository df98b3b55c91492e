// SPDX-License-Identifier: Apache-2.0
package spadework.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.billing.Invoice;
import spadework.billing.Release;
import spadework.intake.law.StateRuleBook;
import spadework.law.release.ReleaseKind;
import spadework.law.release.ReleaseWording;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.paperwork.WithheldFromHomeowner;
import spadework.press.PageText;
import spadework.press.Recalculation;
import spadework.press.VeraPdf;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;

/** Invoice, receipt, statement, late notice and release: as pages, as workbooks, and what none of them may carry. */
class MoneyPapersTest {
    private static final Map<String, byte[]> PAGES = new LinkedHashMap<>();
    private static final Map<String, byte[]> BOOKS = new LinkedHashMap<>();

    @TempDir
    private Path office;

    @BeforeAll
    static void print() throws IOException {
        PagePress press = PagePress.warm(Templates.bundled());
        for (MoneyPapers.Paper paper : MoneyPapers.all()) {
            PAGES.put(paper.name(), press.print(paper.template(), paper.model(), MoneyPapers.info()));
            BOOKS.put(
                    paper.name(),
                    WorkbookPress.print(Templates.bundled(), paper.template(), paper.model(), MoneyPapers.day()));
        }
    }

    @Test
    void pagesConformToUa1AndA3aAndFitOnePage() {
        assertThat(PAGES).hasSize(11).allSatisfy((name, pdf) -> {
            assertThat(VeraPdf.failedRules(pdf)).as(name).isEmpty();
            assertThat(PageText.pages(pdf)).as(name).hasSizeLessThanOrEqualTo(name.startsWith("statement") ? 2 : 1);
        });
    }

    @Test
    void workbooksWorkedOutAgainDifferByNoCent() throws IOException, InterruptedException {
        Optional<Path> program = Recalculation.office();
        assumeTrue(program.isPresent(), "no soffice on the path, so the workbooks cannot be worked out again");
        List<byte[]> books = new ArrayList<>(BOOKS.values());
        assertThat(new Recalculation(program.get(), office).figures(books))
                .isEqualTo(books.stream().map(Recalculation::shown).toList());
    }

    @Test
    void noneCarriesCostMarginOrNotes() throws IOException {
        Bid bid = Samples.bid(MoneyPapers.SAMPLE);
        List<String> words = new ArrayList<>(bid.dossier().job().notes());
        words.addAll(WithheldFromHomeowner.allWords());
        for (Map<String, byte[]> files : List.of(PAGES, BOOKS)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                String ending = files == PAGES ? ".pdf" : ".xlsx";
                String content = InternalFigures.content(file.getKey() + ending, file.getValue());
                for (Dollars amount : InternalFigures.of(bid)) {
                    assertThat(InternalFigures.carries(content, amount))
                            .as(file.getKey() + " carries " + amount)
                            .isFalse();
                }
                assertThat(words).as(file.getKey()).noneMatch(word -> InternalFigures.says(content, word));
            }
        }
    }

    /** Cal. Civ. Code 8136, each part as it is prescribed and in its order. */
    @Test
    void prescribedReleaseSaysWhatTheLawPrescribes() {
        ReleaseWording law = MoneyPapers.california()
                .release(ReleaseKind.CONDITIONAL_FINAL)
                .orElseThrow()
                .wording()
                .orElseThrow();
        assertThat(PageText.all(PAGES.get("release, prescribed")))
                .containsSubsequence(
                        law.title(),
                        law.notice(),
                        "Name of claimant",
                        "Name of customer",
                        "Job location",
                        "Owner",
                        law.release(),
                        law.effect(),
                        "Maker of check",
                        "Amount of check",
                        "Check payable to",
                        law.exceptions(),
                        "Disputed claims for extras in the amount of: $");
    }

    /** What was gathered, and that nothing is made up where it was not. */
    @Test
    void statesThatPrescribeWordsAreHeldToThem() {
        Release last = release(ReleaseKind.CONDITIONAL_FINAL);
        Release progress = release(ReleaseKind.UNCONDITIONAL_PROGRESS);
        assertThat(last.missing(MoneyPapers.california())).isEmpty();
        for (String state : List.of("CA", "TX", "FL", "MA")) {
            assertThat(progress.missing(StateRuleBook.bundled().find(state).orElseThrow()))
                    .as(state)
                    .singleElement()
                    .satisfies(finding -> assertThat(finding.id()).isEqualTo("release-unworded"));
        }
        for (String state : List.of("OH", "MD", "PA", "NJ", "NY", "VA", "NC", "IL", "WA", "CT")) {
            assertThat(progress.missing(StateRuleBook.bundled().find(state).orElseThrow()))
                    .as(state)
                    .isEmpty();
        }
        assertThat(Release.unread("NV").id()).isEqualTo("release-state-unread");
    }

    private static Release release(ReleaseKind kind) {
        return new Release(kind, new Invoice("I1", MoneyPapers.day(), List.of()), Dollars.ZERO, MoneyPapers.day());
    }
}
