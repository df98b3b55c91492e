// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import spadework.drawing.PlanJob;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Role;
import spadework.drawing.shape.Shape.Weight;
import spadework.job.Side;

class SceneSvgTest {

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "A\" onload=\"x",
                "]]></text></svg>",
                "R&D 'west' <wall>",
                "${job.number} <#list>",
                "&lt;not a tag&gt;",
                "=HYPERLINK(\"http://example.com\")",
            })
    void textThatSomebodyTypedStaysText(String typed) throws Exception {
        Scene scene = new Scene(100, 50, List.of(new Shape.Label(5, 20, typed, "start", 9, true, Role.PLAIN)), typed);

        Element svg = parsed(SceneSvg.of(scene)).getDocumentElement();
        assertThat(children(svg)).containsExactly("title", "text");
        assertThat(svg.getElementsByTagName("text").item(0).getTextContent()).isEqualTo(typed);
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo(typed);
        assertThat(svg.getAttribute("aria-label")).isEqualTo(typed);
        assertThat(svg.getAttribute("alt")).isEqualTo(typed);
        assertThat(svg.hasAttribute("onload")).isFalse();
    }

    @Test
    void aHostileWallLabelComesThroughTheWholePlanAsText() throws Exception {
        Scene scene = PlanSketch.of(
                PlanJob.house(40, 28).wall("<b>&\"", Side.NORTH, 0, 40).job());

        NodeList texts = parsed(SceneSvg.of(scene)).getElementsByTagName("text");
        assertThat(texts.item(0).getTextContent()).isEqualTo("<b>&\"");
        assertThat(SceneSvg.of(scene)).doesNotContain("<b>");
    }

    @Test
    void aCharacterThatXmlForbidsIsReplaced() throws Exception {
        Scene scene = new Scene(10, 10, List.of(), "a\u0000b\u001fc\uD800d\uFFFEe");

        assertThat(parsed(SceneSvg.of(scene)).getDocumentElement().getAttribute("alt"))
                .isEqualTo("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe");
    }

    @Test
    void theElementSaysThatItIsAPictureAndWhatItShows() throws Exception {
        Scene scene = PlanSketch.of(PlanJob.corner());

        Element svg = parsed(SceneSvg.of(scene)).getDocumentElement();
        assertThat(svg.getTagName()).isEqualTo("svg");
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getAttribute("aria-label")).isEqualTo(scene.alternative());
        assertThat(svg.getAttribute("width")).isEqualTo("470.00pt");
        assertThat(svg.getAttribute("viewBox")).startsWith("0 0 470.00 ");
    }

    @Test
    void theSameJobGivesTheSameBytesWhateverTheLocale() {
        byte[] first = bytes();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(bytes()).isEqualTo(first);
            Locale.setDefault(Locale.GERMANY);
            assertThat(bytes()).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everyNumberHasTwoDecimals() {
        Scene scene = new Scene(
                10, 10, List.of(new Shape.Line(1 / 3.0, -0.001, 2 / 3.0, 1e-9, Weight.THIN, Role.PLAIN, false)), "");

        assertThat(SceneSvg.of(scene)).contains("<line x1=\"0.33\" y1=\"0.00\" x2=\"0.67\" y2=\"0.00\"");
    }

    @Test
    void anArrowIsAFilledHeadWithItsTipAtTheEndOfTheLine() {
        Scene scene = new Scene(100, 10, List.of(new Shape.Line(0, 5, 50, 5, Weight.MEDIUM, Role.MAIN, true)), "");

        assertThat(SceneSvg.of(scene))
                .contains("<line x1=\"0.00\" y1=\"5.00\" x2=\"43.00\" y2=\"5.00\"")
                .contains("<polygon points=\"50.00,5.00 43.00,7.60 43.00,2.40\" fill=\"#1f4e5f\"/>")
                .doesNotContain("marker");
    }

    /**
     * WCAG 2.1: words need a contrast of 4.5 to 1 (1.4.3), what is only drawn one of 3 to 1 (1.4.11), here against
     * white paper. Ground that is dug is hatched and carries no words.
     */
    @ParameterizedTest(name = "{0}")
    @EnumSource(Role.class)
    void everyColorIsDarkEnoughToReadInGray(Role role) {
        double least = role == Role.DUG || role == Role.EXTRA_DUG ? 3 : 4.5;
        int rgb = Integer.parseInt(SvgLineStyle.color(role).substring(1), 16);
        double luminance =
                0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);

        assertThat(1.05 / (luminance + 0.05)).isGreaterThan(least);
    }

    @Test
    void drainsAndLimitsDifferFromSolidLinesByTheirDash() {
        assertThat(SvgLineStyle.dash(Role.DRAIN)).isNotEmpty().isNotEqualTo(SvgLineStyle.dash(Role.LIMIT));
        assertThat(SvgLineStyle.dash(Role.LIMIT)).isNotEmpty();
        assertThat(List.of(Role.WALL, Role.MAIN)).extracting(SvgLineStyle::dash).containsOnly("");
    }

    /** Both run in solid pipe; three readers took the one for the other where weight alone told them apart. */
    @Test
    void roofWaterIsNotDrawnAsTheMain() {
        assertThat(SvgLineStyle.dash(Role.ROOF_LINE))
                .isNotEmpty()
                .isNotIn(SvgLineStyle.dash(Role.DRAIN), SvgLineStyle.dash(Role.LIMIT), SvgLineStyle.dash(Role.MAIN));
    }

    @Test
    void thereAreThreeLineWeights() {
        Pattern width = Pattern.compile("stroke-width=\"([^\"]+)\"");

        String svg = SceneSvg.of(PlanSketch.of(PlanJob.twelveWalls()));
        assertThat(width.matcher(svg).results().map(found -> found.group(1)).distinct())
                .containsExactlyInAnyOrder("0.60", "1.20", "3.60");
    }

    /** The sRGB transfer curve, IEC 61966-2-1. */
    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static byte[] bytes() {
        return SceneSvg.of(PlanSketch.of(PlanJob.twelveWalls())).getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> children(Element element) {
        NodeList nodes = element.getChildNodes();
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .filter(Element.class::isInstance)
                .map(node -> ((Element) node).getTagName())
                .toList();
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }
}
