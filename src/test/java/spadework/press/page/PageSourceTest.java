// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.press.DrawnOutline;
import spadework.press.PageFixtures;
import spadework.press.PageText;
import spadework.press.font.Fonts;
import spadework.press.template.TemplateFault;
import spadework.press.template.Templates;

/** A contractor's own template is told what is wrong with it, and cannot make text vanish or fetch anything. */
class PageSourceTest {
    private static final String OPEN = "<html lang=\"en-US\"><head><title>A paper</title></head><body>";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <html><head><title>x</title></head><body><p>open</body></html> | not well-formed XHTML at line 1, column
            <html><head></head><body><p>no name</p></body></html>          | has no <title>
            <!DOCTYPE html><html><head><title>x</title></head></html>      | not well-formed XHTML at line 1
            """)
    void aPageThatCannotBeSetIsAFaultOfItsTemplate(String page, String problem) {
        assertThatThrownBy(() -> print(page))
                .isInstanceOf(TemplateFault.class)
                .hasMessageStartingWith("own/page.ftlh: ")
                .hasMessageContaining(problem);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Georgia", "serif", "monospace", "\"No Such Face\""})
    void textInAnotherFamilyPrintsInOurs(String family) {
        byte[] pdf = print(
                OPEN + "<p style='font-family: " + family + "'>Words that stay</p><pre>and these</pre></body></html>");

        assertThat(PageText.all(pdf)).contains("Words that stay", "and these");
    }

    @Test
    void anAddressOutsideIsNotFollowed() throws IOException {
        Path picture = folder.resolve("picture.png");
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), "png", png);
        Files.write(picture, png.toByteArray());
        String within = "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());

        assertThat(pictures(within)).isEqualTo(1);
        assertThat(pictures(picture.toUri().toString())).isZero();
    }

    private int pictures(String address) throws IOException {
        byte[] pdf = print(OPEN + "<p>Before <img alt='a' src='" + address + "'/> after</p></body></html>");
        assertThat(PageText.all(pdf)).contains("Before", "after");
        try (PDDocument document = Loader.loadPDF(pdf)) {
            int pictures = 0;
            for (COSName name : document.getPage(0).getResources().getXObjectNames()) {
                pictures += document.getPage(0).getResources().isImageXObject(name) ? 1 : 0;
            }
            return pictures;
        }
    }

    @ParameterizedTest
    @CsvSource({"Source Sans 3", "SansSerif", "No Such Face"})
    void aDrawingUsesTheOutlinesOfOurTypeAndNotTheMachines(String family) throws IOException {
        Rectangle2D ours = Fonts.bundled().faces().get(0).parsed().getPath("F").getBounds2D();
        byte[] pdf = print(OPEN + "<svg xmlns='http://www.w3.org/2000/svg' alt='a letter' width='800' height='800'>"
                + "<text x='0' y='750' font-size='800' font-family='" + family + "'>F</text></svg></body></html>");
        Rectangle2D drawn = DrawnOutline.bounds(pdf);

        assertThat(drawn.getWidth() / drawn.getHeight()).isCloseTo(ours.getWidth() / ours.getHeight(), within(0.003));
    }

    @Test
    void aDrawingHasTwoWeights() {
        assertThat(print(drawing("Source Sans 3", "normal"))).isNotEqualTo(print(drawing("Source Sans 3", "bold")));
    }

    private static String drawing(String family, String weight) {
        return OPEN + "<svg xmlns='http://www.w3.org/2000/svg' alt='a word' width='100' height='20'>"
                + "<text x='0' y='15' font-family='" + family + "' font-weight='" + weight + "'>Footing</text></svg>"
                + "</body></html>";
    }

    private byte[] print(String page) {
        try {
            Path template = folder.resolve("own/page.ftlh");
            Files.createDirectories(template.getParent());
            Files.writeString(template, page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new PagePress(Templates.with(folder)).print("own", Map.of(), PageFixtures.INFO);
    }
}
