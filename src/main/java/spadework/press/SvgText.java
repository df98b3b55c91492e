package spadework.press;

import java.util.Locale;

/** Values as SVG writes them: the same bytes wherever and whenever they are written. */
final class SvgText {
    private static final int REPLACEMENT = 0xFFFD;

    private SvgText() {}

    /** A number with two decimals; never a negative zero. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.equals("-0.00") ? "0.00" : text;
    }

    /** A number of at least zero with six decimals. */
    static String fine(double value) {
        return String.format(Locale.ROOT, "%.6f", value);
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
        return c == 0x9 || c == 0xA || c == 0xD || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
