// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import spadework.drawing.ProfileSketchJob;
import spadework.drawing.SectionJob;
import spadework.drawing.profile.ProfileChain;
import spadework.drawing.profile.ProfileReach;
import spadework.drawing.profile.ProfileSketch;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.section.WallCovering;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape.Role;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.press.font.Fonts;
import spadework.press.page.PageInfo;
import spadework.press.page.Typesetter;
import spadework.press.svg.SceneSvg;
import spadework.press.svg.SvgLineStyle;
import spadework.wording.Language;

/** Sections and profiles on a printed page. */
class SectionInPrintTest {
    private static final PageInfo INFO = new PageInfo("en-US", "Test Firm", LocalDate.of(2026, 3, 3));
    private static final String HOSTILE = "</text><script>\"&'";

    @Test
    void aPageWithSectionsAndAProfileConforms() {
        assertThat(VeraPdf.failedRules(page(
                        section(Protection.SLOPED),
                        section(Protection.SHIELDED),
                        ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH))))
                .isEmpty();
    }

    @Test
    void theSameJobPrintsTheSameBytesWhateverTheLocale() {
        byte[] first =
                page(section(Protection.SLOPED), ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(page(
                            section(Protection.SLOPED),
                            ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH)))
                    .isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void wordsThatSomebodyTypedStayWords() {
        Scene section = SectionSketch.of(
                SectionJob.at(5, SoilType.B, Protection.SLOPED),
                new WallCovering(HOSTILE, HOSTILE, HOSTILE),
                Language.ENGLISH);
        ProfileReach reach = new ProfileReach(
                HOSTILE,
                ProfileReach.Kind.MAIN,
                Length.ofFeet(20),
                Optional.empty(),
                Optional.of(Length.ofFeet(90)),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Length.ofInches(4),
                Length.ofInches(4.2));
        Scene profile = ProfileSketch.of(
                new ProfileChain(List.of(reach), HOSTILE, HOSTILE, Optional.empty(), HOSTILE), Language.ENGLISH);

        for (Scene scene : List.of(section, profile)) {
            assertThat(SceneSvg.of(scene))
                    .contains("&lt;/text&gt;&lt;script&gt;&quot;&amp;&#39;")
                    .doesNotContain("<script");
        }
    }

    /** What is told apart by color on a screen differs in weight, dash or fill as well. */
    @Test
    void fabricDrainAndCoverDifferWithoutColor() {
        assertThat(SvgLineStyle.dash(Role.FABRIC)).isNotEmpty().isNotEqualTo(SvgLineStyle.dash(Role.DRAIN));
        assertThat(SvgLineStyle.dash(Role.COATING)).isEmpty();
        assertThat(SvgLineStyle.tint(Role.WALL)).isNotEqualTo("none");
        assertThat(SvgLineStyle.tint(Role.SOIL)).isEqualTo("none");
    }

    @Test
    void aSectionHasThreeLineWeights() {
        Pattern width = Pattern.compile("stroke-width=\"([^\"]+)\"");

        assertThat(width.matcher(SceneSvg.of(section(Protection.SLOPED)))
                        .results()
                        .map(m -> m.group(1))
                        .distinct())
                .containsExactlyInAnyOrder("0.60", "1.20", "3.60");
    }

    private static Scene section(Protection protection) {
        return SectionSketch.of(SectionJob.at(6, SoilType.C, protection), SectionJob.RUBBER, Language.ENGLISH);
    }

    private static byte[] page(Scene... scenes) {
        StringBuilder body = new StringBuilder();
        for (Scene scene : scenes) {
            body.append("<p>").append(SceneSvg.of(scene)).append("</p>");
        }
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-US\"><head><title>Drawings</title>"
                + "<style>@page { size: letter; margin: 0.8in } body { font-family: 'Source Sans 3' }</style></head>"
                + "<body>" + body + "</body></html>";
        return new Typesetter(Fonts.bundled()).set("drawings", page, INFO);
    }
}
