// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What stands on each page of a PDF, as it was laid out. */
public final class PageTexts {
    private PageTexts() {}

    /**
     * The texts of the pages in their order, parts and lines separated by spaces.
     *
     * @throws IOException if it is no PDF that can be read
     */
    public static List<String> of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
            return pages;
        }
    }
}
