// SPDX-License-Identifier: Apache-2.0
package spadework.law.phrase;

import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * A text as patterns read it: spaces one by one, letters without accents, for an accent is often left out where
 * somebody types.
 *
 * @param written with its accents, each letter one character
 * @param bare the same without them, letter for letter
 */
public record BareText(String written, String bare) {
    private static final Pattern ACCENT = Pattern.compile("\\p{M}");

    public static BareText of(String text) {
        String written = Normalizer.normalize(text.replaceAll("\\s+", " "), Normalizer.Form.NFC);
        String bare = ACCENT.matcher(Normalizer.normalize(written, Normalizer.Form.NFD))
                .replaceAll("");
        return bare.length() == written.length() ? new BareText(written, bare) : new BareText(bare, bare);
    }

    /** A part of it as it was written. */
    public String written(int from, int to) {
        return written.substring(from, to).strip();
    }
}
