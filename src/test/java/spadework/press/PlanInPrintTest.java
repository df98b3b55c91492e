// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import static org.assertj.core.api.Assertions.assertThat;

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
import spadework.drawing.PlanJob;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.drawing.shape.Shape;
import spadework.drawing.shape.Shape.Role;
import spadework.press.font.Fonts;
import spadework.press.page.PageInfo;
import spadework.press.page.Typesetter;
import spadework.press.svg.SceneSvg;

/** A drawing on a printed page, looked at point by point. */
class PlanInPrintTest {
    private static final PageInfo INFO = new PageInfo("en-US", "Test Firm", LocalDate.of(2026, 3, 3));

    /** An upper-case H is about 0.66 em high in the printed face. */
    @ParameterizedTest(name = "{0} pt, bold {1}")
    @CsvSource({"9, false", "9, true", "12, false", "12, true", "13, false", "13, true"})
    void wordsOnADrawingArePrintedAtTheirSize(double size, boolean bold) throws IOException {
        Scene scene =
                new Scene(100, 40, List.of(new Shape.Label(10, 30, "H", "start", size, bold, Role.PLAIN)), "A letter");

        assertThat(inkHeight(printed(scene))).isBetween(0.6 * size, 0.75 * size);
    }

    @Test
    void aPageWithThePlanConforms() throws Exception {
        assertThat(VeraPdf.failedRules(page(PlanSketch.of(PlanJob.twelveWalls()))))
                .isEmpty();
    }

    @Test
    void thePlanPrintsTheSameBytesTwice() {
        Scene scene = PlanSketch.of(PlanJob.corner());

        assertThat(page(scene)).isEqualTo(page(scene));
    }

    private static byte[] page(Scene scene) {
        String page = "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-US\"><head><title>Plan</title>"
                + "<style>@page { size: letter; margin: 0.8in } body { font-family: 'Source Sans 3' }</style></head>"
                + "<body>" + SceneSvg.of(scene) + "</body></html>";
        return new Typesetter(Fonts.bundled()).set("plan", page, INFO);
    }

    private static BufferedImage printed(Scene scene) throws IOException {
        try (PDDocument document = Loader.loadPDF(page(scene))) {
            return new PDFRenderer(document).renderImageWithDPI(0, 288);
        }
    }

    /** From the first row with ink to the last, points. */
    private static double inkHeight(BufferedImage image) {
        int first = Integer.MAX_VALUE;
        int last = -1;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if ((image.getRGB(x, y) & 255) < 128) {
                    first = Math.min(first, y);
                    last = y;
                }
            }
        }
        return last < 0 ? 0 : (last - first + 1) / 4.0;
    }
}
