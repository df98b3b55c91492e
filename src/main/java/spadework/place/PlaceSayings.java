// SPDX-License-Identifier: Apache-2.0
package spadework.place;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import spadework.job.Side;
import spadework.wording.Language;

/**
 * How English, and with it another language, names the sides of a house.
 *
 * @param wall before the label of a wall, which is one of its groups
 */
record PlaceSayings(Map<Side, Pattern> compass, Pattern wall, Pattern front, Pattern back) {
    private static final Properties SAID = read();
    private static final Map<Language, PlaceSayings> KNOWN = new ConcurrentHashMap<>();

    static PlaceSayings in(Language language) {
        return KNOWN.computeIfAbsent(language, PlaceSayings::of);
    }

    private static PlaceSayings of(Language language) {
        Map<Side, Pattern> compass = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            compass.put(side, pattern(side.name().toLowerCase(Locale.ROOT), language));
        }
        return new PlaceSayings(
                compass, pattern("wall", language), pattern("front", language), pattern("back", language));
    }

    /** The sides of the compass that the words name. */
    Set<Side> sides(String words) {
        Set<Side> named = EnumSet.noneOf(Side.class);
        compass.forEach((side, said) -> {
            if (said.matcher(words).find()) {
                named.add(side);
            }
        });
        return named;
    }

    /** The label of the wall that was found. */
    static String label(Matcher wall) {
        return IntStream.rangeClosed(1, wall.groupCount())
                .mapToObj(wall::group)
                .filter(label -> label != null)
                .findFirst()
                .orElseThrow();
    }

    private static Pattern pattern(String key, Language language) {
        String english = SAID.getProperty("en." + key);
        String other = language.isEnglish() ? null : SAID.getProperty(language.code() + "." + key);
        return Pattern.compile(
                other == null ? english : english + "|" + other,
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    private static Properties read() {
        Properties said = new Properties();
        try (Reader file = new InputStreamReader(
                PlaceSayings.class.getResourceAsStream("places.properties"), StandardCharsets.UTF_8)) {
            said.load(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return said;
    }
}
