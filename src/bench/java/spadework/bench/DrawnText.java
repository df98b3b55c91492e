// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Takes the text of printed pages apart into plain runs, so that another program can draw the same. */
final class DrawnText {
    private DrawnText() {}

    /** Writes the runs of a PDF: for each a line of page, face, size, x and y in points from the foot, and the text. */
    static void write(Path pdf, Path runs) throws IOException {
        List<String> lines = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            new Reader(lines).getText(document);
        }
        Files.write(runs, lines);
    }

    private static final class Reader extends PDFTextStripper {
        private final List<String> lines;

        private Reader(List<String> lines) {
            this.lines = lines;
        }

        @Override
        protected void writeString(String text, List<TextPosition> letters) {
            TextPosition first = letters.get(0);
            double foot = first.getPageHeight() - first.getYDirAdj();
            lines.add(String.format(
                    Locale.ROOT,
                    "%d\t%s\t%.2f\t%.2f\t%.2f\t%s",
                    getCurrentPageNo(),
                    face(first.getFont().getName()),
                    first.getFontSizeInPt(),
                    first.getXDirAdj(),
                    foot,
                    text));
        }

        private static String face(String name) {
            return name.contains("Italic") ? "italic" : name.contains("SemiBold") ? "semibold" : "regular";
        }
    }
}
