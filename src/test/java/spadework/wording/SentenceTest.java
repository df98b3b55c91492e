// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class SentenceTest {
    private static final Language SPANISH = Language.of("es");

    @Test
    void valuesStandWhereTheSentenceWantsThem() {
        assertThat(Sentence.of("{1} of {0}, that's $5", Language.ENGLISH, "B", 1234))
                .isEqualTo("1234 of B, that's $5");
    }

    @Test
    void aCountTakesTheFormOfItsLanguage() {
        String english = "{0, plural, one {# day} other {# days}}";
        String spanish = "{0, plural, one {# día} other {# días}}";
        assertThat(Sentence.of(english, Language.ENGLISH, 1)).isEqualTo("1 day");
        assertThat(Sentence.of(english, Language.ENGLISH, 0)).isEqualTo("0 days");
        assertThat(Sentence.of(spanish, SPANISH, 1)).isEqualTo("1 día");
        assertThat(Sentence.of(spanish, SPANISH, 1234))
                .as("as written in the United States")
                .isEqualTo("1,234 días");
    }

    @Test
    void aValueThatIsNotGivenIsTold() {
        assertThatThrownBy(() -> Sentence.of("{1}", Language.ENGLISH, "a"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("{1}");
    }

    @Test
    void aDayIsWrittenAsItsLanguageWritesIt() {
        LocalDate day = LocalDate.of(2026, 3, 3);
        assertThat(Language.ENGLISH.day(day)).isEqualTo("March 3, 2026");
        assertThat(SPANISH.day(day)).isEqualTo("3 de marzo de 2026");
    }

    @Test
    void aFileOfWordsIsNamedAfterItsLanguage() {
        assertThat(Language.ENGLISH.file("words/terms.properties")).isEqualTo("words/terms.properties");
        assertThat(SPANISH.file("words/terms.properties")).isEqualTo("words/terms_es.properties");
        assertThat(Language.all()).first().isEqualTo(Language.ENGLISH);
    }
}
