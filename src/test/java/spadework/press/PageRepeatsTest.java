// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.fontbox.ttf.model.GsubData;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.font.Fonts;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** The same input gives the same bytes; what the file says about itself comes from the input alone. */
class PageRepeatsTest {
    private static final PagePress PRESS = new PagePress(Templates.bundled());

    @Test
    void theSameInputGivesTheSameBytes() throws InterruptedException {
        byte[] first = PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO);
        Thread.sleep(1100); // a date taken from the clock would have moved on by a second
        byte[] second =
                new PagePress(Templates.bundled()).print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO);

        assertThat(second).isEqualTo(first);
    }

    @Test
    void anotherIssueDateGivesOtherBytes() {
        PageInfo later = new PageInfo("en-US", PageFixtures.INFO.author(), LocalDate.of(2026, 3, 4));

        assertThat(PRESS.print("proposal", PageFixtures.proposalModel(), later))
                .isNotEqualTo(PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO));
    }

    @Test
    void informationAndMetadataSayTheSame() throws IOException {
        byte[] pdf = PRESS.print("proposal", PageFixtures.proposalModel(), PageFixtures.INFO);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDDocumentInformation said = document.getDocumentInformation();
            GregorianCalendar noon = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
            noon.clear();
            noon.set(2026, 2, 3, 12, 0, 0);

            assertThat(said.getTitle()).isEqualTo("Proposal for job 2026-014, Harrow Lane Drainage LLC");
            assertThat(said.getAuthor()).isEqualTo("Harrow Lane Drainage LLC");
            assertThat(said.getCreationDate().getTimeInMillis()).isEqualTo(noon.getTimeInMillis());
            assertThat(said.getModificationDate().getTimeInMillis()).isEqualTo(noon.getTimeInMillis());
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                    .contains(
                            said.getTitle(),
                            said.getAuthor(),
                            "<rdf:li>en-US</rdf:li>",
                            "<xmp:CreateDate>2026-03-03T12:00:00Z</xmp:CreateDate>",
                            "<xmp:ModifyDate>2026-03-03T12:00:00Z</xmp:ModifyDate>");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A & B <Drains>", "{date}{title}", "Núñez \"Drain\" Co."})
    void anAuthorsNameIsNeverMarkup(String author) throws IOException {
        byte[] pdf = PRESS.print(
                "certificate",
                PageFixtures.certificateModel(true),
                new PageInfo("en-US", author, PageFixtures.INFO.issued()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentInformation().getAuthor()).isEqualTo(author);
        }
        assertThat(VeraPdf.failedRules(pdf)).isEmpty();
    }

    @Test
    void aFaceIsParsedOnceAndNeverSubstitutesGlyphs() throws IOException {
        List<Fonts.Face> faces = Fonts.bundled().faces();

        assertThat(Fonts.bundled().faces()).isSameAs(faces).hasSize(3);
        for (Fonts.Face face : faces) {
            assertThat(face.parsed().getGsubData()).isSameAs(GsubData.NO_DATA_FOUND);
        }
    }
}
