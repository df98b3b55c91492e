// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A text as a square code (QR, ISO/IEC 18004) of vector squares, as a plain SVG element: a phone reads it, and no
 * server is asked. A seventh of it may be dirty (level M).
 */
public final class SquareCode {
    /** White squares that a reader wants on each side (ISO/IEC 18004). */
    private static final int MARGIN = 4;

    private SquareCode() {}

    /**
     * The element. The same text gives the same bytes.
     *
     * @param text what a reader reads out of it
     * @param alternative what is said to somebody who does not see it
     * @param size of a side with its margin, in points
     * @throws IllegalArgumentException if the text is longer than a code holds
     */
    public static String of(String text, String alternative, double size) {
        ByteMatrix squares = squares(text);
        int side = squares.getWidth() + 2 * MARGIN;
        String words = SvgText.escaped(alternative);
        String wide = SvgText.number(size);
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" ");
        svg.append("aria-label=\"%s\" alt=\"%s\" ".formatted(words, words));
        svg.append("width=\"%spt\" height=\"%spt\" viewBox=\"0 0 %d %d\">\n".formatted(wide, wide, side, side));
        svg.append("<title>").append(words).append("</title>\n");
        for (int y = 0; y < squares.getHeight(); y++) {
            for (int x = 0; x < squares.getWidth(); x++) {
                int from = x;
                while (x < squares.getWidth() && squares.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    svg.append("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"1\" fill=\"#000000\"/>\n"
                            .formatted(from + MARGIN, y + MARGIN, x - from));
                }
            }
        }
        return svg.append("</svg>").toString();
    }

    private static ByteMatrix squares(String text) {
        try {
            return Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException(text, tooLong);
        }
    }
}
