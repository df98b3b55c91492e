// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import spadework.press.font.Fonts;
import spadework.press.font.GlyphCoverage;
import spadework.press.template.TemplateFault;
import spadework.press.template.Templates;
import spadework.wording.Language;

/**
 * Prints documents as PDF: the template is filled, then set in our own type.
 *
 * <p>One press parses its fonts once and keeps them for all documents; one document is printed at a time.
 */
public final class PagePress {
    /** A head, a table and a drawing, as every paper has them; it is thrown away. */
    private static final String FIRST_PAGE = """
            <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>1</title>
            <style>body { font-family: 'Source Sans 3' } table { -fs-table-paginate: paginate }</style></head>
            <body><h1>1</h1><table><thead><tr><th>1</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table>
            <div><svg xmlns="http://www.w3.org/2000/svg" alt="1" width="9pt" height="9pt" viewBox="0 0 9 9"
            font-family="Source Sans 3"><line x1="1" y1="1" x2="8" y2="8" stroke="#000000" stroke-dasharray="1 1"/>
            <text x="1" y="8" font-size="8" fill="#000000">1</text></svg></div></body></html>
            """;

    private final Templates templates;
    private final Fonts fonts;
    private final GlyphCoverage coverage;
    private final Typesetter typesetter;

    public PagePress(Templates templates) {
        this(templates, Fonts.bundled());
    }

    private PagePress(Templates templates, Fonts fonts) {
        this.templates = templates;
        this.fonts = fonts;
        this.coverage = new GlyphCoverage(fonts);
        this.typesetter = new Typesetter(fonts);
    }

    /**
     * A press that has set a first page: that one costs as much as ten more, and can be set while a job is being read.
     */
    public static PagePress warm(Templates templates) {
        PagePress press = new PagePress(templates);
        synchronized (press.fonts) {
            press.typesetter.set("", FIRST_PAGE, new PageInfo("en", "", LocalDate.EPOCH));
        }
        return press;
    }

    /** A press with type of its own, which can print while another one does. */
    public static PagePress beside(Templates templates) {
        return new PagePress(templates, Fonts.parsed());
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
        String page = coverage.spellOut(templates.fill(template, given, Language.ofTag(info.language())));
        synchronized (fonts) {
            return typesetter.set(template, page, info);
        }
    }

    /** Which characters this press can print. */
    public GlyphCoverage coverage() {
        return coverage;
    }
}
