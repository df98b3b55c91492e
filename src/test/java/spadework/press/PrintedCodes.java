// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** The square codes of a PDF as a camera reads them: off the page in ink, not out of the file. */
public final class PrintedCodes {
    private static final int DPI = 200;

    private PrintedCodes() {}

    /** What each of them says, page by page. */
    public static List<String> in(byte[] pdf) throws IOException {
        List<String> codes = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                codes.addAll(read(renderer.renderImageWithDPI(page, DPI)));
            }
        }
        return codes;
    }

    private static List<String> read(BufferedImage page) {
        int width = page.getWidth();
        int height = page.getHeight();
        int[] ink = page.getRGB(0, 0, width, height, null, 0, width);
        BinaryBitmap seen = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, ink)));
        try {
            Result[] found = new QRCodeMultiReader().decodeMultiple(seen, Map.of(DecodeHintType.TRY_HARDER, true));
            return Arrays.stream(found).map(Result::getText).toList();
        } catch (NotFoundException none) {
            return List.of();
        }
    }
}
