// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.draft.Draft;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.office.reply.TemplateFolder;
import spadework.press.template.Templates;

/** The certificate as it will be printed, held to 16 CFR 701.3(a), 15 USC 2308 and 16 CFR 239.4. */
class PrintedWarrantyTest {
    private static final Path SAMPLES = Path.of("sample-quotes");

    @TempDir
    private Path folder;

    private static List<Finding> findings(Path job, Templates templates) {
        ReadJob understood = (ReadJob) new Intake().read(job);
        return new PrintedWarranty(templates).findings(understood.job(), understood.company());
    }

    @ParameterizedTest
    @CsvSource({"block-basement-to-swale", "poured-basement-with-sump", "crawl-space-between-houses"})
    void bundledCertificateDisclosesEveryItem(String sample) {
        assertThat(findings(SAMPLES.resolve(sample), Templates.bundled())).isEmpty();
    }

    @ParameterizedTest(name = "{0} without \"{1}\": {3}")
    @CsvSource(delimiter = '|', textBlock = """
            shared/warranty.ftlh  | This warranty gives you specific legal rights     | Rights        | disclosure-rights-sentence
            shared/warranty.ftlh  | limitation of incidental or consequential damages | limits        | disclosure-damages-sentence
            shared/certificate.ftlh | <@terms.remedy/>                                  | <p></p>       | disclosure-remedy
            shared/certificate.ftlh | <@terms.service firm=firm w=w/>                   | <p></p>       | disclosure-claim
            shared/certificate.ftlh | <h1>${words("certificate.title")}</h1>           | <h1>Bond</h1> | disclosure-title
            shared/words.properties | It covers                                       | As is, for    | implied-disclaimed
            """)
    void ownTemplateThatLosesAnItemIsFound(String template, String words, String instead, String id)
            throws IOException {
        String bundled = Templates.bundled().source(template);
        assertThat(bundled).contains(words);
        Path own = folder.resolve(template);
        Files.createDirectories(own.getParent());
        Files.writeString(own, bundled.replace(words, instead));
        assertThat(findings(SAMPLES.resolve("block-basement-to-swale"), Templates.with(folder)))
                .extracting(Finding::id)
                .containsExactly(id);
    }

    @Test
    void textIsSearchedAgainWhenItIsTyped() throws IOException {
        Path file = SAMPLES.resolve("block-basement-to-swale/job.json");
        Draft draft = Draft.read(Files.readString(file)).orElseThrow();
        PrintedWarranty certificate = new PrintedWarranty(Templates.bundled());
        for (String title : List.of("Two walls", "Two walls, sold as is.", "Two walls, sold as is. ", "Two walls")) {
            ReadJob typed =
                    (ReadJob) new Intake().read(draft.typed("/title", title).text(), file);
            List<Finding> anew = new PrintedWarranty(Templates.bundled()).findings(typed.job(), typed.company());
            assertThat(anew).hasSize(title.contains("as is") ? 1 : 0);
            assertThat(certificate.findings(typed.job(), typed.company())).isEqualTo(anew);
            assertThat(certificate.findings(typed.job(), typed.company())).isEqualTo(anew);
        }
    }

    @Test
    void forbiddenWordingOfACompanyIsNamedByItsPlace() throws IOException {
        for (String file : List.of("price-book.json", "fennimarsh-mark.jpg")) {
            Files.copy(SAMPLES.resolve(file), folder.resolve(file));
        }
        String first = "Nothing is added to or taken from this work";
        String company = Files.readString(SAMPLES.resolve("company.json"));
        assertThat(company).contains(first);
        Files.writeString(
                folder.resolve("company.json"),
                company.replace(first, "Our lifetime guarantee is in lieu of all other warranties. " + first));
        Path job = Files.createDirectory(folder.resolve("job"));
        try (var files = Files.newDirectoryStream(SAMPLES.resolve("block-basement-to-swale"), Files::isRegularFile)) {
            for (Path file : files) {
                Files.copy(file, job.resolve(file.getFileName()));
            }
        }
        assertThat(findings(job, Templates.bundled()))
                .extracting(Finding::id, Finding::about)
                .containsExactlyInAnyOrder(
                        tuple("implied-disclaimed", "company terms 1"), tuple("lifetime-bare", "company terms 1"));
        Bid bid = (Bid) Office.with(TemplateFolder.NONE).bid(job);
        assertThat(bid.proposed().findings().contract())
                .filteredOn(finding -> finding.severity() == Severity.STOP)
                .extracting(Finding::id)
                .containsExactlyInAnyOrder("implied-disclaimed", "lifetime-bare");
    }
}
