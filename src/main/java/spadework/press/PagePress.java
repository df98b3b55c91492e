package spadework.press;

import java.util.HashMap;
import java.util.Map;

/**
 * Prints documents as PDF: the template is filled, then set in our own type.
 *
 * <p>One press parses its fonts once and keeps them for all documents; one document is printed at a time.
 */
public final class PagePress {
    private final Templates templates;
    private final Fonts fonts;
    private final GlyphCoverage coverage;
    private final Typesetter typesetter;

    public PagePress(Templates templates) {
        this.templates = templates;
        this.fonts = Fonts.bundled();
        this.coverage = new GlyphCoverage(fonts);
        this.typesetter = new Typesetter(fonts);
    }

    /**
     * Prints one document. The same arguments give the same bytes.
     *
     * @param document the folder of its template, as {@code proposal}
     * @param model the finished records by the names the template gives them; {@code info} is added to them
     * @return a tagged PDF that claims PDF/UA-1 and PDF/A-3a
     * @throws TemplateFault if the template cannot be used, or what it gives is not a page
     */
    public byte[] print(String document, Map<String, Object> model, PageInfo info) {
        String template = document + "/page.ftlh";
        Map<String, Object> given = new HashMap<>(model);
        given.put("info", info);
        String page = coverage.spellOut(templates.fill(template, given));
        synchronized (fonts) {
            return typesetter.set(template, page, info);
        }
    }

    /** Which characters this press can print. */
    public GlyphCoverage coverage() {
        return coverage;
    }
}
