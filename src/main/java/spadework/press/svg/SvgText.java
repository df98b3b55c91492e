// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Values as SVG writes them: the same bytes wherever and whenever they are written. */
public final class SvgText {
    private static final int REPLACEMENT = 0xFFFD;

    private SvgText() {}

    /** A number with two decimals; never a negative zero. */
    public static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0.00" : rounded.toPlainString();
    }

    /** A number of at least zero with six decimals. */
    public static String fine(double value) {
        return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).toPlainString();
    }

    /** Text that cannot end its element or its attribute; a character that XML forbids becomes U+FFFD. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().map(c -> isAllowed(c) ? c : REPLACEMENT).forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    /** The character range of XML 1.0, production 2. */
    private static boolean isAllowed(int c) {
        return c == 0x9
                || c == 0xA
                || c == 0xD
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
