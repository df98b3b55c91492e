// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import spadework.draft.FileSchema;
import spadework.draft.SchemaField;
import spadework.wording.Language;
import spadework.wording.Wording;

/** What belongs at a place of a job or a price book is said in the window's language, and for English by the schema. */
public class FieldHelpTest {
    private static final ResourceBundle SPANISH =
            Wording.translated("spadework.form.help", Language.of("es")).orElseThrow();

    @AfterEach
    void english() {
        Messages.speak(Language.ENGLISH);
    }

    /** What the schemas say of places that a window shows, by key; of the rows of a list it shows nothing. */
    public static Map<String, String> places() {
        Map<String, String> help = new TreeMap<>();
        Stream.of(FileSchema.job(), FileSchema.book())
                .forEach(schema -> schema.places().stream()
                        .filter(place -> !place.endsWith("/0") && !place.matches("/format|/\\$schema"))
                        .map(place -> schema.at(place).orElseThrow().help())
                        .filter(one -> !one.english().isEmpty())
                        .forEach(one -> help.put(one.key(), one.english())));
        return help;
    }

    @Test
    void everyPlaceHasItsHelp() {
        assertThat(SPANISH.keySet()).containsAll(places().keySet());
        assertThat(places()).hasSizeGreaterThan(350);
    }

    @Test
    void helpIsSaidInTheLanguageThatIsSpoken() {
        SchemaField depth = FileSchema.job().at("/walls/0/footing/thickness").orElseThrow();
        assertThat(Messages.help(depth)).isEqualTo("Top to bottom, at most 5 ft.");
        Messages.speak(Language.of("es"));
        assertThat(Messages.help(depth)).isEqualTo("De arriba a abajo, a lo más 5 ft.");
    }
}
