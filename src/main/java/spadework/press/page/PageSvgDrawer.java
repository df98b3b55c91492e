// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.awt.FontFormatException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.w3c.dom.Element;
import spadework.press.font.Fonts;
import spadework.press.svg.PlainSvg;

/**
 * Draws the SVG of one document. Plain drawings, as all of ours are, go straight into the page; style sheets do not
 * reach into them. Any other SVG, as a contractor's own template may hold, is left to the SVG library, which takes as
 * long to start as a paper takes to print.
 */
public final class PageSvgDrawer implements SVGDrawer {
    private final Fonts fonts;
    private List<FontFaceRule> rules = List.of();
    private SharedContext context;
    private UserAgentCallback reading;
    private BatikSVGDrawer library;

    PageSvgDrawer(Fonts fonts) {
        this.fonts = fonts;
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        Optional<PlainSvg> plain = PlainSvg.of(svg);
        if (plain.isPresent()) {
            return new PlainSvgImage(
                    plain.get(), fonts.inDrawings(), box, css, new CssSize(cssWidth, cssHeight, dotsPerPixel));
        }
        return library().buildSVGImage(svg, box, css, cssWidth, cssHeight, dotsPerPixel);
    }

    @Override
    public SVGImage buildStandaloneSVGImage(
            Element svg, String address, double width, double height, double dotsPerPixel) {
        return library().buildStandaloneSVGImage(svg, address, width, height, dotsPerPixel);
    }

    private BatikSVGDrawer library() {
        if (library == null) {
            library = new BatikSVGDrawer();
            library.importFontFaceRules(rules, context);
            library.withUserAgent(reading);
            try {
                fonts.registerForDrawings(library);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (FontFormatException e) {
                throw new IllegalStateException(e);
            }
        }
        return library;
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        rules = fontFaces;
        context = shared;
    }

    @Override
    public void withUserAgent(UserAgentCallback userAgent) {
        reading = userAgent;
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        throw new UnsupportedOperationException("all faces of drawings are bundled");
    }

    @Override
    public void addFontStream(FSSupplier<InputStream> bytes, String family, Integer weight, FontStyle style) {
        throw new UnsupportedOperationException("all faces of drawings are bundled");
    }

    @Override
    public void close() {
        if (library != null) {
            library.close();
        }
    }
}
