// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import javax.swing.DefaultComboBoxModel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Choosing by typing, as a state by its letters or its name. */
class TypedPrefixTest {
    private static final DefaultComboBoxModel<WordChoice> STATES = new DefaultComboBoxModel<>(
            Stream.of(",–", "AK,Alaska", "AL,Alabama", "MA,Massachusetts", "ME,Maine", "NJ,New Jersey", "NY,New York")
                    .map(state -> new WordChoice(state.split(",")[0], state.split(",")[1]))
                    .toArray(WordChoice[]::new));

    private final AtomicLong clock = new AtomicLong(5_000_000_000L);
    private final TypedPrefix keys = new TypedPrefix(clock::get);

    private String type(String letters) {
        int chosen = 0;
        for (int i = 0; i < letters.length(); i++) {
            int found = keys.selectionForKey(letters.charAt(i), STATES);
            chosen = found >= 0 ? found : chosen;
        }
        return STATES.getElementAt(chosen).word();
    }

    @ParameterizedTest
    @CsvSource({"al,AL", "ALASKA,AK", "ma,MA", "mai,ME", "maine,ME", "new y,NY", "ny,NY", "n,NJ", "maz,MA", "x,''"})
    void lettersLeadToTheStateTheySpellOrBegin(String letters, String state) {
        assertThat(type(letters)).isEqualTo(state);
    }

    @Test
    void afterAPauseAnotherWordBegins() {
        assertThat(type("al")).isEqualTo("AL");
        clock.addAndGet(2_000_000_000L);
        assertThat(type("me")).isEqualTo("ME");
    }
}
