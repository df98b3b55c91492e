// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.office.agreement.Issuing;
import spadework.office.reply.TemplateFolder;
import spadework.press.PageText;
import spadework.press.VeraPdf;
import spadework.press.page.PageInfo;
import spadework.press.page.RecordCode;
import spadework.press.template.Templates;
import spadework.register.Register;
import spadework.samples.Samples;

/** Where the company wants it, a homeowner's Spanish papers come in English too, to be read and not to be signed. */
class ReadingCopiesTest {
    private static final Set<PaperKind> ALL = EnumSet.allOf(PaperKind.class);
    private static final String MARK =
            "This English copy is for reading only. The paper in Spanish is the one that is signed";
    private static final String CODE = "26-77f2-3272-109f-1f95";

    @TempDir
    private Path root;

    private Path job;

    @BeforeEach
    void layOut() throws IOException {
        for (String shared : List.of("price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(Path.of("sample-quotes", shared), root.resolve(shared));
        }
        job = Files.createDirectory(root.resolve("job"));
        Files.copy(Samples.SPANISH.resolve("job.json"), job.resolve("job.json"));
        Files.copy(Samples.SPANISH.resolve("state-rules.json"), job.resolve("state-rules.json"));
    }

    private Bid bid(String key) throws IOException {
        String company = Files.readString(Path.of("sample-quotes/company.json"));
        Files.writeString(root.resolve("company.json"), company.replaceFirst("\\{", "{" + key));
        return (Bid) Office.with(TemplateFolder.NONE).bid(job);
    }

    private Map<String, byte[]> both() throws IOException {
        Bid bid = bid("\"readingCopies\": true,");
        return new PaperPrinter(Templates.bundled()).print(bid, bid.prepared(ALL), CODE);
    }

    @Test
    void withoutTheCompanysWishThereIsNone() throws IOException {
        Bid bid = bid("");
        assertThat(PaperModels.readingCopies(bid, ALL)).isEmpty();
        Bid asked = bid("\"readingCopies\": true,");
        assertThat(PaperModels.readingCopies(asked, ALL))
                .extracting(PaperModels.Sheet::file)
                .contains("proposal-reading-copy", "contract-reading-copy", "scope-of-work-reading-copy")
                .noneMatch(file -> file.startsWith("cost-sheet"));
    }

    /** One figure, one home: each of the one stands in the other, and none besides. */
    @ParameterizedTest
    @EnumSource(
            value = PaperKind.class,
            names = {"PROPOSAL", "SCOPE", "CONTRACT", "WARRANTY", "COMPLETION"})
    void figuresOfTheCopyAreThoseOfThePaperThatGoverns(PaperKind paper) throws IOException {
        Bid bid = bid("\"readingCopies\": true,");
        List<PaperModels.Sheet> governing = PaperModels.of(bid, EnumSet.of(paper));
        List<PaperModels.Sheet> copies = PaperModels.readingCopies(bid, EnumSet.of(paper));
        assertThat(copies).hasSameSizeAs(governing).isNotEmpty();
        for (int i = 0; i < copies.size(); i++) {
            List<String> here = figures(copies.get(i));
            assertThat(here).isEqualTo(figures(governing.get(i))).hasSizeGreaterThan(5);
        }
    }

    private static List<String> figures(PaperModels.Sheet sheet) {
        PageInfo info = new PageInfo(sheet.language().tag(), "Fennimarsh Wall & Drain LLC", sheet.date());
        return PaperBlocks.of(sheet.template(), sheet.model(), info).stream()
                .flatMap(block ->
                        Pattern.compile("\\d[\\d,.]*\\d|\\d").matcher(block).results())
                .map(MatchResult::group)
                .sorted()
                .toList();
    }

    @Test
    void copySaysOnEveryPageWhatItIsAndHasNothingToSign() throws IOException {
        Map<String, byte[]> files = both();
        List<String> copies = files.keySet().stream()
                .filter(file -> file.contains("-reading-copy"))
                .toList();
        assertThat(copies).hasSizeGreaterThan(4).allMatch(file -> file.endsWith("-reading-copy.pdf"));
        for (String copy : copies) {
            byte[] read = files.get(copy);
            byte[] governing = files.get(copy.replace("-reading-copy", ""));
            assertThat(PageText.pages(read))
                    .as(copy)
                    .allSatisfy(page -> assertThat(page.replaceAll("\\s+", " ")).contains(MARK));
            assertThat(PageText.all(governing)).as(copy).doesNotContain("English copy");
            assertThat(RecordCode.in(read)).as(copy).contains(CODE).isEqualTo(RecordCode.in(governing));
            assertThat(VeraPdf.failedRules(read)).as(copy).isEmpty();
        }
        String contract = PageText.all(files.get("contract-reading-copy.pdf")).replaceAll("\\s+", " ");
        assertThat(contract).contains("Signed on the paper in Spanish.").doesNotContain("Signature");
        assertThat(PageText.all(files.get("contract.pdf"))).contains("Firma");
    }

    /** The job of the issuing tests, for a homeowner who reads Spanish. */
    private Path unsigned() throws IOException {
        Path folder = Files.createDirectory(root.resolve("unsigned"));
        SampleJobFolder.in(folder);
        Path company = folder.resolve("company.json");
        Files.writeString(company, Files.readString(company).replaceFirst("\\{", "{\"readingCopies\": true,"));
        Path file = folder.resolve("block-basement-to-swale/job.json");
        Files.writeString(file, Files.readString(file).replaceFirst("\\{", "{\"language\": \"es\","));
        return file;
    }

    @Test
    void copiesLieBesideThePapersAndNotAmongWhatStaysInTheOffice() throws IOException {
        Outcome.Printed printed = (Outcome.Printed) Office.with(TemplateFolder.NONE)
                .documents(unsigned(), root.resolve("out"), EnumSet.of(PaperKind.PROPOSAL, PaperKind.COST_SHEET));
        List<String> places = new ArrayList<>();
        printed.files()
                .forEach(file -> places.add(root.resolve("out").relativize(file).toString()));
        assertThat(places)
                .contains("2026-014/for-the-homeowner/proposal.pdf")
                .contains("2026-014/for-the-homeowner/proposal-reading-copy.pdf")
                .noneMatch(place -> place.contains("cost-sheet-reading"));
    }

    /** What is issued is the paper that governs; the copy that goes with it carries its number and its code. */
    @Test
    void issuedPaperAndItsCopyCarryOneNumberAndOneCode() throws IOException {
        Path file = unsigned();
        new Issuing(Office.with(TemplateFolder.NONE), SampleJobFolder.TODAY).issue(file);
        Path folder = file.getParent();
        Path issued = folder.resolve("for-the-homeowner/2026-014-P1-proposal.pdf");
        Path copy = folder.resolve("for-the-homeowner/2026-014-P1-proposal-reading-copy.pdf");
        assertThat(RecordCode.in(Files.readAllBytes(copy)))
                .isPresent()
                .isEqualTo(RecordCode.in(Files.readAllBytes(issued)));
        assertThat(Register.of(folder).check().faults()).isEmpty();
    }
}
