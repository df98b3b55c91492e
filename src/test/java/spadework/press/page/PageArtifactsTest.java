// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import spadework.press.font.Fonts;

/** What a tagged page says of the marks that nobody hears read aloud. ISO 32000-1, 14.8.2.2. */
class PageArtifactsTest {
    private static final String RULED = """
            <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>Rules</title><style>
            html, body { font-family: 'Source Sans 3' } td { border: 1pt solid #000000; background: #eeeeee }
            @page { font-family: 'Source Sans 3'; @bottom-left { font-family: 'Source Sans 3'; content: 'foot' } }
            table { -fs-table-paginate: paginate }</style></head>
            <body><h1>Rules</h1><table><tbody>%s</tbody></table></body></html>
            """;

    @Test
    void ruledCellsOfAPageShareOneListOfProperties() throws IOException {
        try (PDDocument document = set(200)) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            for (PDPage page : document.getPages()) {
                COSDictionary lists = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
                assertThat(lists.keySet().stream()
                                .map(name -> lists.getCOSDictionary(name).getNameAsString("Type")))
                        .contains("Layout")
                        .doesNotHaveDuplicates()
                        .doesNotContain("Background");
            }
        }
    }

    @Test
    void eachMarkOfAnArtifactNamesAListThatThePageHas() throws IOException {
        try (PDDocument document = set(200)) {
            int artifacts = 0;
            for (PDPage page : document.getPages()) {
                COSDictionary lists = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
                for (COSName named : artifacts(page)) {
                    assertThat(lists.getCOSDictionary(named))
                            .as(named.getName())
                            .isNotNull();
                    artifacts++;
                }
            }
            assertThat(artifacts).as("one for each ruled cell at least").isGreaterThan(200);
        }
    }

    private static PDDocument set(int rows) throws IOException {
        String page = RULED.formatted("<tr><td>one</td><td>two</td></tr>".repeat(rows));
        return Loader.loadPDF(
                new Typesetter(Fonts.parsed()).set("rules", page, new PageInfo("en", "", LocalDate.EPOCH)));
    }

    private static List<COSName> artifacts(PDPage page) throws IOException {
        List<COSName> named = new ArrayList<>();
        List<Object> tokens = new PDFStreamParser(page).parse();
        for (int i = 2; i < tokens.size(); i++) {
            if (tokens.get(i) instanceof Operator operator
                    && operator.getName().equals("BDC")
                    && tokens.get(i - 2).equals(COSName.ARTIFACT)) {
                named.add((COSName) tokens.get(i - 1));
            }
        }
        return named;
    }
}
