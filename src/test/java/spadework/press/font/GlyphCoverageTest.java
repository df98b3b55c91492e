// SPDX-License-Identifier: Apache-2.0
package spadework.press.font;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.press.PageFixtures;
import spadework.press.PageText;
import spadework.press.page.PagePress;
import spadework.press.template.Templates;

/** A character without a glyph is reported, and spelled out rather than printed as another sign. */
class GlyphCoverageTest {
    private final GlyphCoverage coverage = GlyphCoverage.bundled();

    @ParameterizedTest(name = "{0} prints as it is")
    @CsvSource(delimiter = '|', textBlock = """
            Zoë Núñez-Østergård, Łukasz Čapek      | names of the house
            46′ 6″ × 7½ in                         | feet, inches, halves
            ☐ ✓ • · – — − ÷ × ≥ ≤ ≈ ° π ² ³ √      | marks of the papers
            “quoted” ‘words’ … § © $1,234.50 €     | signs of a letter
            """)
    void theTypeCoversWhatThePapersUse(String text, String what) {
        assertThat(coverage.missing(text)).as(what).isEmpty();
        assertThat(coverage.spellOut(text)).isEqualTo(text);
    }

    @ParameterizedTest(name = "{1} prints as {2}")
    @CsvSource(textBlock = """
            # an invisible mark that would turn the line around
            a\u202Eb, U+202E, a[U+202E]b, RIGHT-TO-LEFT OVERRIDE
            # a mark that has no width
            a\u200Bb, U+200B, a[U+200B]b, ZERO WIDTH SPACE
            # a script that the type does not have
            陳, U+9673, [U+9673], CJK UNIFIED IDEOGRAPHS 9673
            # a sign beyond the first plane
            😀, U+1F600, [U+1F600], GRINNING FACE
            """)
    void whatTheTypeLacksIsReportedAndSpelledOut(String text, String codePoint, String spelled, String name) {
        assertThat(coverage.missing(text)).extracting(GlyphGap::codePointText).containsExactly(codePoint);
        assertThat(coverage.missing(text)).extracting(GlyphGap::name).containsExactly(name);
        assertThat(coverage.spellOut(text)).isEqualTo(spelled);
    }

    @Test
    void anAccentTypedApartIsJoinedToItsLetter() {
        assertThat(coverage.spellOut("Zoe\u0308")).isEqualTo("Zo\u00EB");
    }

    @Test
    void aGapIsReportedOnce() {
        assertThat(coverage.missing("陳 and 陳")).hasSize(1);
    }

    @Test
    void noPagePrintsANumberSignForAMissingGlyph() {
        Map<String, Object> model = PageFixtures.model(
                "proposal",
                PageFixtures.proposal(PageFixtures.head(false, java.util.Optional.empty(), "Lin 陳", "a\u202Eb")));
        List<String> pages =
                PageText.pages(new PagePress(Templates.bundled()).print("proposal", model, PageFixtures.INFO));

        assertThat(pages.get(0)).contains("For Lin [U+9673] and a[U+202E]b,").doesNotContain("#");
    }
}
