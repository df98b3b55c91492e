// SPDX-License-Identifier: Apache-2.0
package spadework.press.font;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * The letters of one face as outlines for a page's content, in the units of the face, each made once.
 *
 * <p>Words in a drawing are drawn as outlines: the figure tells its words as a whole, and they are not to be read a
 * second time between the lines of the page.
 */
public final class GlyphOutlines {
    private final TrueTypeFont face;
    private final CmapLookup characters;
    private final Map<Integer, Glyph> glyphs = new ConcurrentHashMap<>();

    GlyphOutlines(TrueTypeFont face) {
        this.face = face;
        try {
            this.characters = face.getUnicodeCmapLookup(false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * One letter.
     *
     * @param outline the operators that fill it, empty for a space
     * @param advance to the next letter
     */
    public record Glyph(String outline, int advance) {}

    /** The letter of a character. */
    public Glyph of(int character) {
        return glyphs.computeIfAbsent(character, this::make);
    }

    /** Units to the em. */
    public int unitsPerEm() {
        try {
            return face.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Glyph make(int character) {
        int id = characters.getGlyphId(character);
        try {
            GlyphData drawn = face.getGlyph().getGlyph(id);
            return new Glyph(drawn == null ? "" : outline(drawn.getPath()), face.getAdvanceWidth(id));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String outline(GeneralPath path) {
        StringBuilder out = new StringBuilder();
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator part = path.getPathIterator(null); !part.isDone(); part.next()) {
            switch (part.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> point(out, at[0], at[1]).append("m\n");
                case PathIterator.SEG_LINETO -> point(out, at[0], at[1]).append("l\n");
                case PathIterator.SEG_QUADTO -> {
                    // A curve of the second degree as one of the third: its handles at two thirds to the one it has.
                    point(out, x + (at[0] - x) * 2 / 3, y + (at[1] - y) * 2 / 3);
                    point(out, at[2] + (at[0] - at[2]) * 2 / 3, at[3] + (at[1] - at[3]) * 2 / 3);
                    point(out, at[2], at[3]).append("c\n");
                    at[0] = at[2];
                    at[1] = at[3];
                }
                case PathIterator.SEG_CLOSE -> out.append("h\n");
                default -> throw new IllegalStateException("the face has curves of the third degree");
            }
            x = at[0];
            y = at[1];
        }
        return out.isEmpty() ? "" : out.append("f\n").toString();
    }

    /** Whole units: a thousandth of the letter's size is less than any printer shows. */
    private static StringBuilder point(StringBuilder out, double x, double y) {
        return out.append(Math.round(x)).append(' ').append(Math.round(y)).append(' ');
    }
}
