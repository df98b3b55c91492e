// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.MissingResourceException;
import org.junit.jupiter.api.Test;
import spadework.register.Register;

/** Who reads another language is never handed an English sentence instead, without a word. */
class WordingTest {
    private static final Language SPANISH = Language.of("es");

    @Test
    void aSentenceIsSaidInTheLanguageThatIsAskedFor() {
        Wording words = Wording.beside(WordingTest.class);
        assertThat(words.get("said")).isEqualTo("Said in both.");
        assertThat(words.in(SPANISH).get("said")).isEqualTo("Se dice en los dos.");
        assertThat(words.in(Language.ENGLISH).get("english")).isEqualTo("Said in English alone.");
    }

    @Test
    void aSentenceThatIsNotTranslatedIsTold() {
        Wording spanish = Wording.beside(WordingTest.class).in(SPANISH);
        assertThatThrownBy(() -> spanish.get("english"))
                .isInstanceOf(MissingResourceException.class)
                .hasMessageContaining("english")
                .hasMessageContaining("es");
    }

    @Test
    void aPackageThatIsNotTranslatedIsTold() {
        Wording register = Wording.beside(Register.class);
        assertThatThrownBy(() -> register.in(SPANISH)).isInstanceOf(MissingResourceException.class);
    }
}
