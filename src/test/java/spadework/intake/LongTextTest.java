// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text has a length that fits on paper: 2,000 characters a text, 120 a label, and it is only ever text. */
class LongTextTest {
    @TempDir
    Path folder;

    @Test
    void textOf2000CharactersIsTheLongest() {
        assertThat(SampleFiles.in(folder)
                        .with("job.json", "Damp air", "a".repeat(2000))
                        .faults())
                .isEmpty();
        assertThat(SampleFiles.in(folder)
                        .with("job.json", "Damp air", "a".repeat(2001))
                        .faults())
                .containsExactly("job.json:34:16 /notFixed/0: found 2001 characters; allowed: at most 2000 characters; "
                        + "fix: shorten the text");
    }

    @Test
    void labelOf120CharactersIsTheLongest() {
        assertThat(SampleFiles.in(folder)
                        .with("job.json", "L-77", "a".repeat(120))
                        .faults())
                .isEmpty();
        assertThat(SampleFiles.in(folder)
                        .with("job.json", "L-77", "a".repeat(121))
                        .faults())
                .containsExactly(
                        "job.json:23:21 /site/locateTicket: found 121 characters; allowed: at most 120 characters; "
                                + "fix: shorten the text");
    }

    @Test
    void charactersAreCountedAsPeopleSeeThem() {
        assertThat(SampleFiles.in(folder)
                        .with("job.json", "L-77", "\uD83D\uDC37".repeat(120))
                        .faults())
                .isEmpty();
    }

    @Test
    void longWrongWordIsShownShortAndOnOneLine() {
        String fault = SampleFiles.in(folder)
                .with("job.json", "\"crawl space\"", "\"" + "z\\n".repeat(500) + "\"")
                .faults()
                .get(0);
        assertThat(fault).hasSizeLessThan(400).contains("zU+000Az").doesNotContain("\n");
    }

    @Test
    void markupFormulasAndMarksOfDirectionAreText() {
        String odd = "${x} <#if> <script>alert(1)</script> =HYPERLINK(1) \u202Eabc\u202C & \\\\u0041";
        Reading reading =
                SampleFiles.in(folder).with("job.json", "Damp air", odd).read();
        assertThat(((ReadJob) reading).job().notFixed())
                .containsExactly("${x} <#if> <script>alert(1)</script> =HYPERLINK(1) \u202Eabc\u202C & \\u0041");
    }
}
