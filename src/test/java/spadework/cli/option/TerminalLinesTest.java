// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TerminalLinesTest {
    private static final String TEXT =
            "MUST ladder: A trench of 4 ft or deeper has a ladder every 25 ft. It stands 3 ft above the edge.";

    @Test
    void linesEndAtWordsAndKeepEveryWord() {
        assertThat(new TerminalLines(60).wrapped(TEXT))
                .allMatch(line -> line.length() <= 60)
                .hasSize(2);
        assertThat(String.join(" ", new TerminalLines(60).wrapped(TEXT)).replaceAll(" +", " "))
                .isEqualTo(TEXT);
        assertThat(new TerminalLines(60).wrapped(TEXT).get(1)).startsWith("  ");
    }

    /** Another program gets one finding a line. */
    @Test
    void withoutATerminalNothingIsWrapped() {
        assertThat(new TerminalLines(0).wrapped(TEXT)).containsExactly(TEXT);
    }
}
