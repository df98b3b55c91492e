// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.util.Optional;

/**
 * A look that cells share, named and set in the templates.
 *
 * @param size of the letters in points
 * @param color of the letters as six hexadecimal digits
 * @param tint behind the letters as six hexadecimal digits, empty for none
 * @param over line above
 * @param under line below
 * @param align where the words stand; empty for words left and figures right
 */
public record SheetStyle(
        String font,
        double size,
        boolean bold,
        boolean italic,
        String color,
        Optional<String> tint,
        Rule over,
        Rule under,
        Optional<TextAlign> align) {

    /** How heavy a line is. */
    public enum Rule {
        NONE,
        HAIR,
        THIN,
        MEDIUM
    }

    /** Where words stand in a cell. */
    public enum TextAlign {
        LEFT,
        CENTER,
        RIGHT
    }
}
