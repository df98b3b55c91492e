// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence with places for values: {@code {0}}, or {@code {0, plural, one {# day} other {# days}}} of ICU. */
public final class Sentence {
    private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

    /** What only ICU can say; a sentence without it is put together without starting that library. */
    private static final Pattern CHOICE = Pattern.compile("\\{\\d, *(plural|select)");

    private Sentence() {}

    /**
     * The sentence with its values.
     *
     * @param values what stands for {@code {0}}, {@code {1}} and so on; a number where the sentence counts
     * @throws IllegalArgumentException if the sentence is malformed, or asks for a value that is not given
     */
    public static String of(String text, Language language, Object... values) {
        if (CHOICE.matcher(text).find()) {
            return new MessageFormat(text, ULocale.forLanguageTag(language.tag())).format(values);
        }
        return PLACE.matcher(text)
                .replaceAll(place -> Matcher.quoteReplacement(String.valueOf(value(text, place.group(1), values))));
    }

    private static Object value(String text, String place, Object... values) {
        int index = Integer.parseInt(place);
        if (index >= values.length) {
            throw new IllegalArgumentException("{" + place + "} of \"" + text + "\" is not given");
        }
        return values[index];
    }
}
