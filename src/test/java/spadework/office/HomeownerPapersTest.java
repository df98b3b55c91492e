// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Finding;
import spadework.paperwork.Dossier;
import spadework.paperwork.contract.ContractPaper;
import spadework.samples.Samples;

/** A job whose homeowner reads Spanish. */
class HomeownerPapersTest {
    private static final Path SAMPLE = Path.of("sample-quotes/maryland-buyer-of-65/job.json");

    private static Bid bid(String language) throws IOException {
        String text = Files.readString(SAMPLE).replaceFirst("\\{", "{\"language\": \"" + language + "\",");
        return (Bid) Samples.office().bid(text, SAMPLE);
    }

    @Test
    void papersForTheHomeownerAreInSpanishAndThoseOfTheOfficeAreNot() throws IOException {
        assertThat(PaperModels.of(bid("es"), EnumSet.of(PaperKind.PROPOSAL, PaperKind.CONTRACT, PaperKind.COST_SHEET)))
                .extracting(sheet -> sheet.file() + " " + sheet.language().code())
                .containsExactlyInAnyOrder("proposal es", "contract es", "cost-sheet en");
        assertThat(PaperModels.of(bid("spanish"), EnumSet.of(PaperKind.SCOPE)))
                .extracting(sheet -> sheet.file() + " " + sheet.language().code())
                .containsExactly("scope-of-work es");
        assertThat(String.join(
                        " ",
                        PaperBlocks.of(bid("es"), EnumSet.of(PaperKind.PROPOSAL))
                                .get("proposal")))
                .contains("Qué está mal", "Cuánto cuesta", "zapata");
    }

    /** 16 CFR 429.1(a) wants the notice in the language of the talk, and there is no official Spanish text of it. */
    @Test
    void contractIsADraftUntilCounselHasTranslatedItsNotices() throws IOException {
        Bid spanish = bid("es");
        assertThat(spanish.findings())
                .filteredOn(finding -> finding.id().equals("contract-language"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.values()).containsEntry("language", "Spanish"));
        Dossier contracted = spanish.contracted().forHomeowner();
        assertThat(ContractPaper.of(contracted, contracted, spanish.plan()).draft())
                .isTrue();
        String contract = String.join(
                " ", PaperBlocks.of(spanish, EnumSet.of(PaperKind.CONTRACT)).get("contract"));
        assertThat(contract).contains("Contrato de mejoras para la casa", "Último día para cancelar");
        assertThat(ids(bid("en"))).doesNotContain("contract-language", "papers-in-english");
    }

    /** Words that counsel gave stand in the contract, above the signature and on a page, and free it of the mark. */
    @Test
    void contractIsForSignatureOnceCounselsWordsAreThere() throws IOException {
        Bid spanish = Samples.bid(Samples.SPANISH);
        assertThat(spanish.findings())
                .filteredOn(finding -> finding.id().equals("contract-language-counsel"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.values())
                        .containsEntry("by", "Tamsin Quillfeather, attorney (invented)")
                        .containsEntry("language", "Spanish"));
        assertThat(ids(spanish)).doesNotContain("contract-language");
        Dossier contracted = spanish.contracted().forHomeowner();
        assertThat(ContractPaper.of(contracted, contracted, spanish.plan()).draft())
                .isFalse();
    }

    /** One of the two without the other, or words without counsel's name, free nothing. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"serves\": \"cancellation form\"",
                "\"serves\": \"cancellation statement\"",
                "notice of cancellation in Spanish",
                "\"counsel\": { \"by\": \"Tamsin Quillfeather, attorney (invented)\", \"on\": \"2026-06-15\" },"
            })
    void halfOfCounselsWordsFreeNothing(String left, @TempDir Path root) throws IOException {
        for (String name : List.of("company.json", "price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", name), root.resolve(name));
        }
        Path job = Files.createDirectory(root.resolve("job"));
        Files.copy(Samples.SPANISH.resolve("job.json"), job.resolve("job.json"));
        String rules = Files.readString(Samples.SPANISH.resolve("state-rules.json"));
        String instead = left.startsWith("\"serves")
                ? "\"serves\": \"entire agreement\""
                : left.startsWith("notice") ? "notice" : "";
        assertThat(rules).contains(left);
        Files.writeString(job.resolve("state-rules.json"), rules.replaceFirst(Pattern.quote(left), instead));

        assertThat(ids((Bid) Samples.office().bid(job))).contains("contract-language");
    }

    @Test
    void noPaperOfAHomeownerIsLeftInEnglish() throws IOException {
        assertThat(ids(bid("es"))).doesNotContain("papers-in-english");
    }

    /** The samples' company has all that it says in Spanish, the Maryland one has not said its license's name. */
    @Test
    void officeIsToldWhichOfItsOwnTextsAreNotTranslated() throws IOException {
        assertThat(bid("es").findings())
                .filteredOn(finding -> finding.id().equals("texts-untranslated"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.values()).containsEntry("code", "es"));
        Path translated = Path.of("sample-quotes/block-basement-to-swale/job.json");
        String text = Files.readString(translated).replaceFirst("\\{", "{\"language\": \"es\",");
        assertThat(ids((Bid) Samples.office().bid(text, translated))).doesNotContain("texts-untranslated");
        assertThat(ids(bid("en"))).doesNotContain("texts-untranslated");
    }

    private static List<String> ids(Bid bid) {
        return bid.findings().stream().map(Finding::id).toList();
    }
}
