// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.swing.NaiveUserAgent.DataUriFactory;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The pictures that a page holds as data addresses. On the page each gets a short address in their stead: the renderer
 * looks through an address again and again, and a photo's is a hundred thousand characters long.
 */
public final class PagePictures implements FSStreamFactory {
    private static final Pattern HELD = Pattern.compile("data:image/(?:png|jpeg);base64,");
    private static final String SHORT = "data:picture,";

    private final Map<String, byte[]> pictures = new HashMap<>();
    private final FSStreamFactory others = new DataUriFactory();

    private PagePictures() {}

    /** Takes the pictures out of a page. The same picture in two places keeps being one. */
    static PagePictures takenFrom(Document page) {
        PagePictures taken = new PagePictures();
        Map<String, String> known = new HashMap<>();
        NodeList all = page.getElementsByTagName("img");
        for (int i = 0; i < all.getLength(); i++) {
            Element image = (Element) all.item(i);
            String address = image.getAttribute("src");
            Matcher held = HELD.matcher(address);
            if (held.lookingAt()) {
                image.setAttribute("src", known.computeIfAbsent(address, of -> taken.take(of, held.end())));
            }
        }
        return taken;
    }

    private String take(String address, int start) {
        try {
            byte[] picture = Base64.getMimeDecoder().decode(address.substring(start));
            String shorter = SHORT + pictures.size();
            pictures.put(shorter, picture);
            return shorter;
        } catch (IllegalArgumentException malformed) {
            return address;
        }
    }

    @Override
    public FSStream getUrl(String address) {
        byte[] picture = pictures.get(address);
        return picture == null ? others.getUrl(address) : new Held(picture);
    }

    private record Held(byte[] picture) implements FSStream {
        @Override
        public InputStream getStream() {
            return new ByteArrayInputStream(picture);
        }

        @Override
        public Reader getReader() {
            return new InputStreamReader(getStream(), StandardCharsets.ISO_8859_1);
        }
    }
}
