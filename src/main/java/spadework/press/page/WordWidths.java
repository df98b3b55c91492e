// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import com.openhtmltopdf.extend.FontContext;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFont;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontDescription;
import com.openhtmltopdf.pdfboxout.PdfBoxTextRenderer;
import com.openhtmltopdf.render.FSFont;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Measures each word of a document once in each face and size: a table asks for most of its words again and again. */
final class WordWidths extends PdfBoxTextRenderer {
    private final Map<Cut, Map<String, Integer>> known = new HashMap<>();

    /** A face of this document at a size in the layout's own dots. */
    private record Cut(FontDescription face, float size) {}

    @Override
    public int getWidth(FontContext context, FSFont font, String text) {
        List<FontDescription> faces = ((PdfBoxFSFont) font).getFontDescriptions();
        if (faces == null || faces.isEmpty()) {
            return super.getWidth(context, font, text);
        }
        Map<String, Integer> widths =
                known.computeIfAbsent(new Cut(faces.get(0), font.getSize2D()), cut -> new HashMap<>());
        Integer width = widths.get(text);
        if (width == null) {
            width = super.getWidth(context, font, text);
            widths.put(text, width);
        }
        return width;
    }
}
