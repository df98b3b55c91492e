// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * What one page says of its artifacts: marks that are drawn and not read aloud, as rules, shades, and running feet
 * (ISO 32000-1, 14.8.2.2).
 *
 * <p>The renderer hands over a list of properties for each cell that has a rule, 350 on a full page, and the library
 * searches all earlier ones before it adds one. Rules and shades of cells are layout artifacts, which carry no place of
 * their own (table 330), so one list serves all of them; the same goes for running feet.
 */
final class PageArtifacts extends COSDictionary {
    private static final COSName LAYOUT = COSName.getPDFName("Layout");

    private final Map<COSName, COSName> names = new HashMap<>();

    /** A new page at the end of the document; its size in points. */
    static PDPage page(PDDocument document, float width, float height) {
        PDPage page = new PDPage(new PDRectangle(width, height));
        PDResources resources = new PDResources();
        resources.getCOSObject().setItem(COSName.PROPERTIES, new PageArtifacts());
        page.setResources(resources);
        document.addPage(page);
        return page;
    }

    /** Keeps a list of properties under a name; of an artifact only its type is kept. */
    @Override
    public void setItem(COSName name, COSBase properties) {
        COSName type = type(properties);
        if (type == null) {
            super.setItem(name, properties);
            return;
        }
        COSDictionary artifact = new COSDictionary();
        artifact.setItem(COSName.TYPE, type);
        super.setItem(name, artifact);
        names.put(type, name);
    }

    @Override
    public boolean containsValue(Object properties) {
        return names.containsKey(type(properties)) || super.containsValue(properties);
    }

    @Override
    public COSName getKeyForValue(Object properties) {
        COSName type = type(properties);
        return names.containsKey(type) ? names.get(type) : super.getKeyForValue(properties);
    }

    /** Null for what is no artifact with a type. */
    private static COSName type(Object properties) {
        COSName type = properties instanceof COSDictionary list ? list.getCOSName(COSName.TYPE) : null;
        return COSName.BACKGROUND.equals(type) ? LAYOUT : type;
    }
}
