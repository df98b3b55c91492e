// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** What is filled on the first page of a PDF, text apart. */
public final class DrawnOutline extends PDFGraphicsStreamEngine {
    private final GeneralPath filled = new GeneralPath();
    private GeneralPath current = new GeneralPath();

    private DrawnOutline(PDPage page) {
        super(page);
    }

    /** The box around all filled outlines. */
    public static Rectangle2D bounds(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            DrawnOutline outline = new DrawnOutline(document.getPage(0));
            outline.processPage(document.getPage(0));
            return outline.filled.getBounds2D();
        }
    }

    @Override
    public void moveTo(float x, float y) {
        current.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        current.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        current.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return current.getCurrentPoint();
    }

    @Override
    public void closePath() {
        current.closePath();
    }

    @Override
    public void endPath() {
        current = new GeneralPath();
    }

    @Override
    public void fillPath(int windingRule) {
        filled.append(current, false);
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fillPath(windingRule);
    }

    @Override
    public void strokePath() {
        endPath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        // a background or a clip, no glyph
    }

    @Override
    public void clip(int windingRule) {
        // what is clipped is still drawn for us
    }

    @Override
    public void drawImage(PDImage image) {
        // no outline
    }

    @Override
    public void shadingFill(COSName shading) {
        // no outline
    }
}
