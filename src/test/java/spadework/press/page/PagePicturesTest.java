// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Pictures get short addresses on the page, and those addresses give the same bytes. */
class PagePicturesTest {
    private static final byte[] ONE = {1, 2, 3, 4};
    private static final byte[] OTHER = {5, 6, 7};

    @Test
    void aShortAddressGivesThePicture() throws IOException {
        Document page = page("image/png;base64," + text(ONE), "image/jpeg;base64," + text(OTHER));
        PagePictures pictures = PagePictures.takenFrom(page);

        assertThat(source(page, 0)).hasSizeLessThan(20).isNotEqualTo(source(page, 1));
        assertThat(read(pictures, source(page, 0))).isEqualTo(ONE);
        assertThat(read(pictures, source(page, 1))).isEqualTo(OTHER);
    }

    @Test
    void theSamePictureInTwoPlacesIsOne() {
        Document page = page("image/png;base64," + text(ONE), "image/png;base64," + text(ONE));
        PagePictures.takenFrom(page);

        assertThat(source(page, 0)).isEqualTo(source(page, 1));
    }

    @Test
    void anAddressOfAnotherKindStaysAsItIs() throws IOException {
        Document page = page("image/gif;base64," + text(ONE), "image/png;base64,#not base 64#===x=");
        PagePictures pictures = PagePictures.takenFrom(page);

        assertThat(source(page, 0)).isEqualTo("data:image/gif;base64," + text(ONE));
        assertThat(read(pictures, source(page, 0))).isEqualTo(ONE);
        assertThat(source(page, 1)).isEqualTo("data:image/png;base64,#not base 64#===x=");
    }

    private static Document page(String first, String second) {
        return PageSource.read(
                "page",
                "<html xmlns='http://www.w3.org/1999/xhtml'><body><img src='data:" + first + "'/><img src='data:"
                        + second + "'/></body></html>");
    }

    private static String source(Document page, int number) {
        return ((Element) page.getElementsByTagName("img").item(number)).getAttribute("src");
    }

    private static byte[] read(PagePictures pictures, String address) throws IOException {
        try (InputStream in = pictures.getUrl(address).getStream()) {
            return in.readAllBytes();
        }
    }

    private static String text(byte[] picture) {
        return Base64.getEncoder().encodeToString(picture);
    }
}
