// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The words of a PDF, as whoever copies text from it gets them. */
public final class PageText {
    private PageText() {}

    /** The text of each page, spaces and line ends made one space, none before a stop after a change of face. */
    public static List<String> pages(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(plain(stripper.getText(document)));
            }
            return pages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String all(byte[] pdf) {
        return String.join(" ", pages(pdf));
    }

    static String plain(String text) {
        return text.replaceAll("[\\s\\u00a0]+", " ")
                .replaceAll(" (?=[,.;:])", "")
                .strip();
    }
}
