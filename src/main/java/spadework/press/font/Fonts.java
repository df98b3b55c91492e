// SPDX-License-Identifier: Apache-2.0
package spadework.press.font;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one type family of all pages, each face parsed once for the life of the program.
 *
 * <p>Glyph substitution is switched off: it costs ten times the rest of a document and changes nothing in ours. The
 * upright faces are handed over a second time to the SVG library, which would otherwise take the machine's own fonts.
 * Drawings know the weights normal and bold: any other weight there would find no face of its own.
 */
public final class Fonts {
    /** The family as style sheets and drawings name it; text in any other family would vanish. */
    public static final String FAMILY = "Source Sans 3";

    private static final int NOT_IN_DRAWINGS = 0;
    private static final int BOLD = 700;

    /** What a page says that wants the bold of notices. */
    private static final String BOLD_NOTICE = "font-weight: 700";

    private static final Fonts BUNDLED = parsed();

    private final List<Face> faces;
    private final Map<String, GlyphOutlines> inDrawings = new HashMap<>();
    private Face notices;

    private Fonts(List<Face> faces) {
        this.faces = faces;
        for (Face face : faces) {
            if (face.drawingWeight != NOT_IN_DRAWINGS) {
                inDrawings.put(face.drawingWeight == BOLD ? "bold" : "normal", new GlyphOutlines(face.parsed));
            }
        }
    }

    /** The faces that come with the program, for whoever sets one page at a time. */
    public static Fonts bundled() {
        return BUNDLED;
    }

    /** The same faces parsed once more: a parsed face is read by one thread at a time. */
    public static Fonts parsed() {
        return new Fonts(List.of(
                new Face("SourceSans3_400Regular.ttf", 400, FontStyle.NORMAL, 400),
                new Face("SourceSans3_600SemiBold.ttf", 600, FontStyle.NORMAL, BOLD),
                new Face("SourceSans3_400Regular_Italic.ttf", 400, FontStyle.ITALIC, NOT_IN_DRAWINGS)));
    }

    public List<Face> faces() {
        return faces;
    }

    /**
     * Gives the builder every face for the page.
     *
     * @param page what is to be set; the bold of notices is parsed for the first page that asks for it
     */
    public void register(PdfRendererBuilder builder, PDDocument document, String page) throws IOException {
        if (page.contains(BOLD_NOTICE)) {
            Face bold = boldOfNotices();
            builder.useFont(
                    new PDFontSupplier(PDType0Font.load(document, bold.parsed, true)),
                    FAMILY,
                    bold.weight,
                    bold.style,
                    true);
        }
        for (Face face : faces) {
            builder.useFont(
                    new PDFontSupplier(PDType0Font.load(document, face.parsed, true)),
                    FAMILY,
                    face.weight,
                    face.style,
                    true);
        }
    }

    /** Gives the SVG library the upright faces. */
    public void registerForDrawings(SVGDrawer library) throws IOException, FontFormatException {
        for (Face face : faces) {
            if (face.drawingWeight != NOT_IN_DRAWINGS) {
                library.addFontStream(face.bytes, FAMILY, face.drawingWeight, face.style);
            }
        }
    }

    /** The letters of words in plain drawings, by font weight. */
    public Map<String, GlyphOutlines> inDrawings() {
        return inDrawings;
    }

    /** The face for notices that a law wants in bold type: the semi-bold of headings might be argued about. */
    private synchronized Face boldOfNotices() {
        if (notices == null) {
            notices = new Face("SourceSans3_700Bold.ttf", 700, FontStyle.NORMAL, NOT_IN_DRAWINGS);
        }
        return notices;
    }

    /** One weight and slope of the family. */
    public static final class Face {
        private final TrueTypeFont parsed;
        private final FSSupplier<InputStream> bytes;
        private final int weight;
        private final FontStyle style;
        private final int drawingWeight;

        private Face(String file, int weight, FontStyle style, int drawingWeight) {
            byte[] read = read(file);
            this.parsed = parse(read);
            this.bytes = () -> new ByteArrayInputStream(read);
            this.weight = weight;
            this.style = style;
            this.drawingWeight = drawingWeight;
        }

        public TrueTypeFont parsed() {
            return parsed;
        }

        private static byte[] read(String file) {
            try (InputStream in = Fonts.class.getResourceAsStream("/templates/fonts/" + file)) {
                if (in == null) {
                    throw new IllegalStateException("the font " + file + " is not in the program");
                }
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static TrueTypeFont parse(byte[] read) {
            try {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(read));
                font.setEnableGsub(false);
                return font;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
