// SPDX-License-Identifier: Apache-2.0
package spadework.press.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import spadework.drawing.PlanJob;
import spadework.drawing.ProfileSketchJob;
import spadework.drawing.SectionJob;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.profile.ProfileSketch;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.shape.Scene;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.press.font.Fonts;
import spadework.press.page.PageInfo;
import spadework.press.page.PageSource;
import spadework.press.page.Typesetter;
import spadework.wording.Language;

/** Plain drawings are drawn by the press itself; whatever else an SVG holds is left to the SVG library. */
class PlainSvgTest {
    private static final PageInfo INFO = new PageInfo("en-US", "Test Firm", LocalDate.of(2026, 3, 3));

    @Test
    void allOurDrawingsArePlain() {
        for (Scene scene : List.of(
                PlanSketch.of(PlanJob.twelveWalls()),
                SectionSketch.of(SectionJob.at(6, SoilType.C, Protection.SLOPED), SectionJob.RUBBER, Language.ENGLISH),
                ProfileSketch.of(ProfileSketchJob.measured(), Language.ENGLISH))) {
            assertThat(PlainSvg.of(svg(SceneSvg.of(scene))))
                    .get()
                    .satisfies(plain -> assertThat(plain.shapes()).hasSize(elements(scene)));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<path d='M0 0 L9 9' stroke='#000000'/>",
                "<g/>",
                "<rect x='1' y='1' width='5' height='5' fill='#000000' style='fill: red'/>",
                "<rect x='1' y='1' width='5' height='5' fill='red'/>",
                "<rect x='1' y='1' width='5' height='50%' fill='#000000'/>",
                "<rect x='1' y='1' width='5' fill='#000000'/>",
                "<line x1='1 Q' y1='1' x2='5' y2='5' stroke='#000000'/>",
                "<polygon points='1,1 2' fill='#000000'/>",
                "<text x='1' y='5' font-size='5' fill='#000000'>a<tspan>b</tspan></text>"
            })
    void anythingElseIsNotPlain(String element) {
        assertThat(PlainSvg.of(svg(framed(element, "")))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"class='x'", "transform='scale(2)'", "opacity='0.5'"})
    void aFrameThatChangesWhatIsDrawnIsNotPlain(String attribute) {
        assertThat(PlainSvg.of(svg(framed("", attribute)))).isEmpty();
        assertThat(PlainSvg.of(svg(framed("", "")))).isPresent();
    }

    /** The attribute that makes the second one not plain does not change how it looks. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <rect x='20' y='10' width='50' height='20' fill='#1f4e5f' stroke='#000000' stroke-width='3'/>
            <circle cx='40' cy='40' r='20' fill='none' stroke='#1f4e5f' stroke-width='4'/>
            <polygon points='10,10 90,20 50,90' fill='#e2e2e2' stroke='#000000' stroke-width='2'/>
            <line x1='10' y1='10' x2='90' y2='60' stroke='#000000' stroke-width='3.6' stroke-dasharray='11 4'/>
            <text x='50' y='50' font-size='20' text-anchor='middle' font-weight='bold' fill='#000000'>Hog</text>
            <text x='90' y='50' font-size='14' text-anchor='end' fill='#1f4e5f'>½ in × 8</text>
            """)
    void thePressDrawsWhatTheSvgLibraryDraws(String element) throws IOException {
        BufferedImage ours = printed(framed(element, ""));
        BufferedImage library = printed(framed(element, "opacity='1'"));

        assertThat(ink(ours)).isGreaterThan(200);
        assertThat(differing(ours, library)).isLessThan(ink(library) / 50);
    }

    private static int elements(Scene scene) {
        return SceneSvg.of(scene).split("<(line|rect|circle|polygon|text) ").length - 1;
    }

    private static String framed(String element, String attribute) {
        return ("<svg xmlns='http://www.w3.org/2000/svg' alt='a drawing' width='150pt' height='150pt' "
                        + "viewBox='0 0 150 150' %s>%s</svg>")
                .formatted(attribute, element);
    }

    private static Element svg(String text) {
        return PageSource.read("drawing", text).getDocumentElement();
    }

    private static BufferedImage printed(String svg) throws IOException {
        String page = "<html xmlns='http://www.w3.org/1999/xhtml' lang='en-US'><head><title>Drawing</title>"
                + "<style>@page { size: 170pt 170pt; margin: 10pt } body { margin: 0 }</style></head>"
                + "<body>" + svg + "</body></html>";
        byte[] pdf = new Typesetter(Fonts.bundled()).set("drawing", page, INFO);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, 144);
        }
    }

    private static int ink(BufferedImage image) {
        BufferedImage paper = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        paper.createGraphics().fillRect(0, 0, image.getWidth(), image.getHeight());
        return differing(image, paper);
    }

    /** Points that differ by more than an edge smoothed a little otherwise. */
    private static int differing(BufferedImage one, BufferedImage other) {
        int count = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                Color a = new Color(one.getRGB(x, y));
                Color b = new Color(other.getRGB(x, y));
                count += Math.abs(a.getGreen() - b.getGreen()) > 60 ? 1 : 0;
            }
        }
        return count;
    }
}
