// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.shape;

import java.util.ArrayList;
import java.util.List;

/** How much room written words take. */
public final class LabelText {
    /** Stands for what was cut away. */
    private static final String ELLIPSIS = "…";

    /** Room beside the letters, a share of their width, for screens that round each advance. */
    private static final double ROOM = 1.03;

    private static final double ABOVE = 0.75;
    private static final double BELOW = 0.25;

    private LabelText() {}

    /** Width in points of a text at that size in points. */
    public static double width(String text, double size) {
        return width(text, size, false);
    }

    /** Width in points of a text at that size in points, in regular or bold letters. */
    public static double width(String text, double size, boolean bold) {
        return text.codePoints()
                        .mapToDouble(character -> GlyphAdvances.of(character, bold))
                        .sum()
                * size
                * ROOM;
    }

    /** The box that a label covers. */
    public static Rect box(Shape.Label label) {
        double width = width(label.text(), label.size(), label.bold());
        double left = switch (label.anchor()) {
            case "middle" -> label.x() - width / 2;
            case "end" -> label.x() - width;
            default -> label.x();
        };
        double size = label.size();
        return new Rect(left, label.y() - ABOVE * size, left + width, label.y() + BELOW * size);
    }

    /** The height of the base line of words that fill a box from top to bottom. */
    static double baseline(Rect box) {
        return box.top() + ABOVE * box.height();
    }

    /** The text, cut with an ellipsis if it is wider than that many points. */
    public static String cut(String text, double size, double widest) {
        return cut(text, size, false, widest);
    }

    /** The text in regular or bold letters, cut with an ellipsis if it is wider than that many points. */
    public static String cut(String text, double size, boolean bold, double widest) {
        if (width(text, size, bold) <= widest) {
            return text;
        }
        int kept = text.codePointCount(0, text.length()) - 1;
        while (kept > 1 && width(start(text, kept) + ELLIPSIS, size, bold) > widest) {
            kept--;
        }
        return start(text, kept).stripTrailing() + ELLIPSIS;
    }

    private static String start(String text, int characters) {
        return text.substring(0, text.offsetByCodePoints(0, characters));
    }

    /** The text in lines no wider than that many points, broken between words; a longer word is cut. */
    static List<String> wrapped(String text, double size, double widest) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > widest) {
                lines.add(cut(line, size, widest));
                longer = word;
            }
            line = longer;
        }
        lines.add(cut(line, size, widest));
        return lines;
    }
}
