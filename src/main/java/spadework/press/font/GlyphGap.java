// SPDX-License-Identifier: Apache-2.0
package spadework.press.font;

import java.util.Locale;

/** A character that the type cannot print. */
public record GlyphGap(int codePoint) {

    /** As {@code U+202E}. */
    public String codePointText() {
        StringBuilder hex = new StringBuilder(Integer.toHexString(codePoint).toUpperCase(Locale.ROOT));
        while (hex.length() < 4) {
            hex.insert(0, '0');
        }
        return "U+" + hex;
    }

    /** Its name in the Unicode standard, as {@code RIGHT-TO-LEFT OVERRIDE}; empty if it has none. */
    public String name() {
        String name = Character.getName(codePoint);
        return name == null ? "" : name;
    }
}
