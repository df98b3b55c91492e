// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.wording.Language;

/**
 * The English words of the drawings, each three tenths longer, as the words of a language of their own: their bundles
 * are written beside the classes of the tests.
 */
public final class LongerWords {
    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final List<String> DRAWN =
            List.of("spadework/drawing/plan", "spadework/drawing/section", "spadework/drawing/profile");

    /** Written once the places are known. */
    public static final Language LANGUAGE = write();

    private LongerWords() {}

    /** A text whose words of three letters and more go on with letters of their own; what is no word stays. */
    public static String of(String text) {
        return text.contains(", plural,") || text.contains(", select,")
                ? text
                : Pattern.compile("\\{[^}]*}|<[^>]*>|&\\w+;|\\p{L}{3,}")
                        .matcher(text)
                        .replaceAll(found -> Matcher.quoteReplacement(
                                Character.isLetter(found.group().charAt(0)) ? longer(found.group()) : found.group()));
    }

    private static String longer(String word) {
        int more = (int) Math.ceil(word.length() * 0.3);
        return word + word.substring(0, more).toLowerCase(Locale.ROOT);
    }

    private static Language write() {
        try {
            Path classes = Path.of(LongerWords.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            for (String place : DRAWN) {
                Properties words = new Properties();
                try (Reader file = Files.newBufferedReader(RESOURCES.resolve(place + "/words.properties"))) {
                    words.load(file);
                }
                words.replaceAll((key, text) -> of(text.toString()));
                Path written = Files.createDirectories(classes.resolve(place)).resolve("words_qps.properties");
                try (Writer file = Files.newBufferedWriter(written)) {
                    words.store(file, null);
                }
            }
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        } catch (URISyntaxException nowhere) {
            throw new IllegalStateException(nowhere);
        }
        Language english = Language.ENGLISH;
        return new Language(
                "qps", "longer", english.tag(), english.days(), english.weekdays(), english.two(), english.more());
    }
}
