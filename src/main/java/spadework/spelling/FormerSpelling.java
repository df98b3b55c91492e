// SPDX-License-Identifier: Apache-2.0
package spadework.spelling;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The spelling that keys, words and ids of the file formats had in files of earlier versions. It is for what the
 * format itself names, as {@code license}, {@code labor/perHour} or {@code neighbor footing}, never for names that a
 * contractor gave.
 */
public final class FormerSpelling {
    private static final Map<String, String> TODAY = Map.of(
            "labour", "labor",
            "licence", "license",
            "neighbour", "neighbor",
            "fibre", "fiber");

    /** What is one word by itself: how company files named a language. */
    private static final Map<String, String> WHOLE = Map.of("english", "en", "spanish", "es");

    private static final Map<String, String> CODES = Map.of("PARGE-FIBRE", "PARGE-FIBER");
    private static final Map<String, String> BEFORE = turned(TODAY);
    private static final Pattern WORD = Pattern.compile("[a-z]+");

    private FormerSpelling() {}

    /** The same in the spelling of today; what was never spelled otherwise comes back as it is. */
    public static String current(String written) {
        return WHOLE.getOrDefault(written, replaced(written, TODAY));
    }

    /** The code that an item of the bundled price book has today, by the one it had before; any other as it is. */
    public static String currentCode(String written) {
        return CODES.getOrDefault(written, written);
    }

    /** How a key or word of today was spelled before; empty for one that was not spelled otherwise. */
    public static Optional<String> of(String current) {
        return Optional.of(replaced(current, BEFORE)).filter(former -> !former.equals(current));
    }

    private static String replaced(String text, Map<String, String> words) {
        if (!holdsAny(text, words)) {
            return text;
        }
        Matcher word = WORD.matcher(text);
        return word.replaceAll((MatchResult found) -> words.getOrDefault(found.group(), found.group()));
    }

    /** Asked of every key of every file, so by a plain loop. */
    private static boolean holdsAny(String text, Map<String, String> words) {
        for (String word : words.keySet()) {
            if (text.contains(word)) {
                return true;
            }
        }
        return false;
    }

    private static Map<String, String> turned(Map<String, String> words) {
        Map<String, String> turned = new LinkedHashMap<>();
        words.forEach((from, to) -> turned.put(to, from));
        return Map.copyOf(turned);
    }
}
