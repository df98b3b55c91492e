// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextMemoTest {
    private final List<String> asked = new ArrayList<>();

    private final TextMemo<Integer> lengths = new TextMemo<>(text -> {
        asked.add(text);
        return text.length();
    });

    @Test
    void aTextThatCameBeforeIsNotSearchedAgain() {
        assertThat(lengths.of("sump")).isEqualTo(4);
        assertThat(lengths.of("sump")).isEqualTo(4);
        assertThat(asked).containsExactly("sump");
    }

    @Test
    void textsOfLongAgoAreForgottenAndSearchedAgain() {
        lengths.of("sump");
        for (int i = 0; i < 1_000; i++) {
            assertThat(lengths.of("text " + i)).isEqualTo(("text " + i).length());
        }
        assertThat(lengths.of("sump")).isEqualTo(4);
        assertThat(asked.stream().filter("sump"::equals)).hasSize(2);
    }
}
