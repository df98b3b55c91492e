// SPDX-License-Identifier: Apache-2.0
package spadework.press.font;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * Which characters the type can print.
 *
 * <p>Without this a character that has no glyph would print as another sign, and an invisible mark, as the ones that
 * turn the direction of writing, would vanish or reorder the line. Here both are spelled out: U+202E prints as
 * {@code [U+202E]}, so that nothing a customer typed is lost or changed in silence.
 */
public final class GlyphCoverage {
    private final List<CmapLookup> faces;

    public GlyphCoverage(Fonts fonts) {
        faces = fonts.faces().stream().map(GlyphCoverage::characters).toList();
    }

    /** The coverage of the type that comes with the program. */
    public static GlyphCoverage bundled() {
        return new GlyphCoverage(Fonts.bundled());
    }

    /**
     * The characters of a text that cannot be printed as they are, each once, in the order in which they stand there.
     *
     * @param text as typed; composed characters are tried in their composed form
     */
    public List<GlyphGap> missing(String text) {
        Set<GlyphGap> gaps = new LinkedHashSet<>();
        composed(text).codePoints().filter(c -> !prints(c)).forEach(c -> gaps.add(new GlyphGap(c)));
        return new ArrayList<>(gaps);
    }

    /** The text in composed form, each character that cannot be printed spelled out as {@code [U+202E]}. */
    public String spellOut(String text) {
        String composed = composed(text);
        if (composed.codePoints().allMatch(this::prints)) {
            return composed;
        }
        StringBuilder spelled = new StringBuilder(composed.length() + 64);
        composed.codePoints().forEach(c -> {
            if (prints(c)) {
                spelled.appendCodePoint(c);
            } else {
                spelled.append('[').append(new GlyphGap(c).codePointText()).append(']');
            }
        });
        return spelled.toString();
    }

    private boolean prints(int c) {
        if ((c >= ' ' && c <= '~') || c == '\n' || c == '\t' || c == '\r') {
            return true;
        }
        return switch (Character.getType(c)) {
            case Character.FORMAT,
                    Character.CONTROL,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> faces.stream().allMatch(face -> face.getGlyphId(c) != 0);
        };
    }

    private static String composed(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
    }

    private static CmapLookup characters(Fonts.Face face) {
        try {
            return face.parsed().getUnicodeCmapLookup(false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
