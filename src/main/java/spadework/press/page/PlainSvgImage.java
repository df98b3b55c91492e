// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import spadework.press.font.GlyphOutlines;
import spadework.press.svg.PlainSvg;

/** A plain drawing in its place on a page. Sizes of the renderer are in its dots. */
public final class PlainSvgImage implements SVGImage {
    private static final double PIXELS_PER_POINT = 96 / 72.0;

    private final PlainSvg drawing;
    private final Map<String, GlyphOutlines> letters;
    private final Box box;
    private final double width;
    private final double height;

    /**
     * A drawing that takes the room the style sheet gives it, or else its own, and keeps its proportions.
     */
    PlainSvgImage(PlainSvg drawing, Map<String, GlyphOutlines> letters, Box box, CssContext css, CssSize given) {
        this.drawing = drawing;
        this.letters = letters;
        this.box = box;
        double ownWidth = Math.round(drawing.width() * PIXELS_PER_POINT) * given.dotsPerPixel();
        double ownHeight = Math.round(drawing.height() * PIXELS_PER_POINT) * given.dotsPerPixel();
        double wide = given.width() >= 0
                ? given.width()
                : given.height() >= 0 ? ownWidth * given.height() / ownHeight : ownWidth;
        double high = given.height() >= 0
                ? given.height()
                : given.width() >= 0 ? ownHeight * given.width() / ownWidth : ownHeight;
        double widest = CalculatedStyle.getCSSMaxWidth(css, box);
        if (widest > 0 && wide > widest) {
            high = ownHeight * widest / ownWidth;
            wide = widest;
        }
        double highest = CalculatedStyle.getCSSMaxHeight(css, box);
        if (highest > 0 && high > highest) {
            wide = ownWidth * highest / ownHeight;
            high = highest;
        }
        this.width = wide;
        this.height = high;
    }

    @Override
    public int getIntrinsicWidth() {
        return (int) width;
    }

    @Override
    public int getIntrinsicHeight() {
        return (int) height;
    }

    @Override
    public void drawSVG(OutputDevice device, RenderingContext page, double x, double y) {
        PdfBoxOutputDevice pdf = (PdfBoxOutputDevice) device;
        Rectangle room = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), page);
        double scale = Math.min(room.width / drawing.width(), room.height / drawing.height());
        Rectangle place = new Rectangle();
        place.setFrame(
                (double) Math.round(x + (room.width - scale * drawing.width()) / 2),
                (double) Math.round(y + (room.height - scale * drawing.height()) / 2),
                (double) Math.round(scale * drawing.width()),
                (double) Math.round(scale * drawing.height()));
        float dots = pdf.getDotsPerPoint();
        pdf.drawPdfAsImage(form(pdf), place, (float) drawing.width() * dots, (float) drawing.height() * dots);
    }

    private PDFormXObject form(PdfBoxOutputDevice pdf) {
        byte[] content = SvgPdfContent.of(drawing, letters).getBytes(StandardCharsets.US_ASCII);
        try {
            PDFormXObject form = new PDFormXObject(
                    new PDStream(pdf.getWriter(), new ByteArrayInputStream(content), COSName.FLATE_DECODE));
            form.setBBox(new PDRectangle((float) drawing.width(), (float) drawing.height()));
            form.setResources(new PDResources());
            form.setFormType(1);
            return form;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
