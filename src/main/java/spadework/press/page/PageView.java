// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.awt.image.BufferedImage;
import java.awt.print.Pageable;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A printed document to be looked at page by page, or handed to a paper printer. For one thread at a time. */
public final class PageView implements Closeable {
    private static final int POINTS_PER_INCH = 72;

    private final PDDocument document;

    private PageView(PDDocument document) {
        this.document = document;
    }

    /**
     * Opens a document that was printed here.
     *
     * @throws UncheckedIOException if the bytes are no PDF
     */
    public static PageView of(byte[] pdf) {
        try {
            return new PageView(Loader.loadPDF(pdf));
        } catch (IOException noPdf) {
            throw new UncheckedIOException(noPdf);
        }
    }

    public int pages() {
        return document.getNumberOfPages();
    }

    /** Width of a page in points. */
    public double width(int page) {
        return document.getPage(page).getCropBox().getWidth();
    }

    /** Height of a page in points. */
    public double height(int page) {
        return document.getPage(page).getCropBox().getHeight();
    }

    /**
     * A page as a picture.
     *
     * @param page from 0
     * @param scale pixels a point
     */
    public BufferedImage picture(int page, double scale) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page, (float) (scale * POINTS_PER_INCH));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The pages for a paper printer; good until this is closed. */
    public Pageable sheets() {
        return new PDFPageable(document);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
