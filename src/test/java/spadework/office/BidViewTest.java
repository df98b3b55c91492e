// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import spadework.drawing.shape.Scene;
import spadework.finding.Finding;
import spadework.samples.Samples;
import spadework.wording.Language;

/** What a window shows of a bid is in the language that the office reads: findings, drawings, names of lines. */
class BidViewTest {
    private static final Language SPANISH = Language.of("es");
    private static final Path SAMPLE = Path.of("sample-quotes/block-basement-to-swale");

    /** Words that no Spanish sentence has, outside of what is quoted from a file, a law or the job. */
    private static final Pattern ENGLISH = Pattern.compile("\\b(the|and|with|of|is|are|wall|trench|drain|run)\\b");

    @Test
    void findingsOfEverySampleAreSaidInSpanish() {
        Office office = Samples.office();
        Set<String> english = new TreeSet<>();
        int said = 0;
        for (Path sample : Samples.papered()) {
            for (Finding finding : Samples.bid(sample).findings()) {
                said++;
                String what = office.what(finding, SPANISH);
                String action = office.action(finding, SPANISH);
                if (what.equals(office.what(finding)) || action.equals(office.action(finding))) {
                    english.add(finding.id());
                }
            }
        }
        assertThat(said).isGreaterThan(200);
        assertThat(english).isEmpty();
        assertThat(office.deference(SPANISH)).startsWith("El código local").isNotEqualTo(office.deference());
    }

    @Test
    void figuresOfAFindingFollowEachOtherAsInSpanish() {
        List<String> said = Samples.bid(SAMPLE).findings().stream()
                .map(finding -> Samples.office().what(finding, SPANISH))
                .toList();
        assertThat(said).anyMatch(text -> text.contains("En las paredes A y B se excava a 6 ft 2 in de profundidad"));
        assertThat(said).anyMatch(text -> text.contains("se excava a 1 ft 9 in a 4 ft 8 in de profundidad"));
    }

    @Test
    void anOfficeThatReadsEnglishIsToldAsBefore() {
        Office office = Samples.office();
        Bid bid = Samples.bid(SAMPLE);
        BidView view = office.view(bid, Language.ENGLISH);
        assertThat(view.plan()).isEqualTo(bid.plan());
        assertThat(view.section("Wall A, back wall")).isEqualTo("Wall A, back wall");
        assertThat(view.ofBook("Scrape wall")).isEqualTo("Scrape wall");
        assertThat(bid.findings()).allSatisfy(finding -> {
            assertThat(office.what(finding, Language.ENGLISH)).isEqualTo(office.what(finding));
            assertThat(office.action(finding, Language.ENGLISH)).isEqualTo(office.action(finding));
        });
    }

    @Test
    void drawingsAndLinesAreCalledInSpanish() {
        BidView view = Samples.office().view(Samples.bid(SAMPLE), SPANISH);
        assertThat(view.section("Wall A, back wall")).isEqualTo("Pared A, back wall");
        assertThat(view.section("Soil, grading and planting")).isEqualTo("Tierra, nivelaci\u00f3n y plantas");
        assertThat(view.ofBook("Scrape wall")).isEqualTo("Raspar la pared");
        assertThat(view.ofBook("An item of the firm alone")).isEqualTo("An item of the firm alone");
        assertThat(view.plan().alternative()).startsWith("Plano de la casa").doesNotContainPattern("Footing|Street");
        assertThat(view.sections().values()).isNotEmpty().allSatisfy(BidViewTest::saysNoEnglish);
        assertThat(view.profiles().values()).isNotEmpty().allSatisfy(BidViewTest::saysNoEnglish);
    }

    private static void saysNoEnglish(Scene scene) {
        String ownWords = scene.alternative()
                .replaceAll("(?:bank of the )?swale along the front lot line", "")
                .replaceAll("top of [^:.]*", "");
        assertThat(ownWords).isNotBlank().doesNotContainPattern(ENGLISH);
    }
}
