// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import spadework.press.font.Fonts;
import spadework.press.template.TemplateFault;
import spadework.reason.Reason;
import spadework.wording.Language;

/**
 * Sets one filled page template as a tagged PDF.
 *
 * <p>It reads nothing from outside: an address in a template other than a {@code data:} address is not followed.
 */
public final class Typesetter {
    private static final byte[] SRGB =
            ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

    static {
        XRLog.setLoggingEnabled(false);
        // Pictures are read from memory; the copy that the platform would make of each on disk helps nobody.
        ImageIO.setUseCache(false);
    }

    private final Fonts fonts;
    private final FSCacheEx<String, FSCacheValue> metrics = new FSDefaultCacheStore();

    public Typesetter(Fonts fonts) {
        this.fonts = fonts;
    }

    /**
     * Sets the page.
     *
     * @param template named in a fault
     * @param page well-formed XHTML with a title
     * @throws TemplateFault if the page is not well-formed or has no title
     */
    public byte[] set(String template, String page, PageInfo info) {
        Document source = PageSource.read(template, page);
        String title = PageSource.title(template, source);
        PageSource.setInOneFamily(source, Fonts.FAMILY);
        WholeMeasures.keep(source);
        if (!info.governing().isEmpty()) {
            ReadingCopy.mark(source, Language.ofTag(info.language()), Language.ofTag(info.governing()));
        }
        RecordCode.put(source, info.recordCode(), Language.ofTag(info.language()));
        PagePictures pictures = PagePictures.takenFrom(source);
        try (PDDocument document = new PDDocument()) {
            PdfRendererBuilder builder = new PdfRendererBuilder()
                    .usePDDocument(document)
                    .usePdfUaAccessibility(true)
                    .usePdfAConformance(PdfAConformance.PDFA_3_A)
                    .useColorProfile(SRGB)
                    .useSVGDrawer(new PageSvgDrawer(fonts))
                    .useProtocolsStreamImplementation(pictures, "data")
                    .useCacheStore(CacheStore.PDF_FONT_METRICS, metrics)
                    .usePageSupplier((into, width, height, number, shadow) -> PageArtifacts.page(into, width, height))
                    .withW3cDocument(source, null);
            for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
                builder.useExternalResourceAccessControl((address, kind) -> address.startsWith("data:"), when);
            }
            fonts.register(builder, document, page);
            PdfBoxRenderer renderer = builder.buildPdfRenderer();
            renderer.getSharedContext().setTextRenderer(new WordWidths());
            try {
                renderer.createPDFWithoutClosing();
                PdfMetadata.put(document, title, info);
                ByteArrayOutputStream bytes = new ByteArrayOutputStream(128 * 1024);
                // Object streams: a third of the size, and the first files of a program sooner.
                document.save(bytes, CompressParameters.DEFAULT_COMPRESSION);
                return bytes.toByteArray();
            } finally {
                renderer.close();
            }
        } catch (IOException e) {
            throw new TemplateFault(template, "it cannot be set: " + Reason.of(e), e);
        }
    }
}
