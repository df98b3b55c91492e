// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The least a program can do to draw the same text: no template, no layout, no tags, no drawings, no workbooks, only
 * runs of text at given places in the same three embedded faces. What Spadework costs is told as a multiple of this.
 *
 * <p>Substitution of glyphs is off, as it is with us, unless {@code -Dsubstitution=true} leaves PDFBox as it comes.
 */
final class HandWritten {
    private HandWritten() {}

    /** Arguments: folder of fonts, folder for the PDFs, then the files of runs, one for each PDF. */
    public static void main(String[] arguments) throws IOException {
        Path fonts = Path.of(arguments[0]);
        Map<String, TrueTypeFont> faces = Map.of(
                "regular", parsed(fonts.resolve("SourceSans3_400Regular.ttf")),
                "semibold", parsed(fonts.resolve("SourceSans3_600SemiBold.ttf")),
                "italic", parsed(fonts.resolve("SourceSans3_400Regular_Italic.ttf")));
        Path out = Files.createDirectories(Path.of(arguments[1]));
        for (int i = 2; i < arguments.length; i++) {
            Path runs = Path.of(arguments[i]);
            draw(runs, faces, out.resolve(runs.getFileName() + ".pdf"));
        }
    }

    private static TrueTypeFont parsed(Path file) throws IOException {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(file.toFile()));
        font.setEnableGsub(Boolean.getBoolean("substitution"));
        return font;
    }

    private static void draw(Path runs, Map<String, TrueTypeFont> faces, Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            Map<String, PDFont> fonts = Map.of(
                    "regular", PDType0Font.load(document, faces.get("regular"), true),
                    "semibold", PDType0Font.load(document, faces.get("semibold"), true),
                    "italic", PDType0Font.load(document, faces.get("italic"), true));
            PDPageContentStream page = null;
            for (String line : Files.readAllLines(runs)) {
                String[] run = line.split("\t", 6);
                if (Integer.parseInt(run[0]) > document.getNumberOfPages()) {
                    page = next(document, page);
                }
                page.beginText();
                page.setFont(fonts.get(run[1]), Float.parseFloat(run[2]));
                page.newLineAtOffset(Float.parseFloat(run[3]), Float.parseFloat(run[4]));
                page.showText(run[5]);
                page.endText();
            }
            page.close();
            document.save(file.toFile());
        }
    }

    private static PDPageContentStream next(PDDocument document, PDPageContentStream before) throws IOException {
        if (before != null) {
            before.close();
        }
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        return new PDPageContentStream(document, page);
    }
}
