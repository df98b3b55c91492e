// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.regex.Pattern;

/** What is done to words so that a workbook shows exactly the characters that were typed. */
public final class SheetText {
    private static final Pattern CODE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");
    private static final int PICTURES = 0x2400;

    private SheetText() {}

    /**
     * The text with every character that XML cannot carry made visible: a control character by its picture (U+2400
     * and following), anything else by the replacement character. All other characters, right-to-left marks among
     * them, stay.
     */
    static String drawable(String text) {
        StringBuilder drawn = new StringBuilder(text.length());
        text.codePoints().forEach(c -> drawn.appendCodePoint(isXml(c) ? c : c < 0x20 ? PICTURES + c : 0xFFFD));
        return drawn.toString();
    }

    /**
     * The text as a cell stores it: {@code _x0041_} would be read back as the letter A, so its first mark is coded, and
     * a carriage return as a new line, so it is coded too.
     */
    static String stored(String text) {
        return CODE.matcher(text).replaceAll("_x005F_").replace("\r", "_x000D_");
    }

    /** True for text that a spreadsheet would take for a formula if it were typed in. */
    static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0;
    }

    private static boolean isXml(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
