// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture is read once, and again when its file is another one. */
class PictureFilesTest {
    private final PictureFiles pictures = new PictureFiles();

    @TempDir
    private Path folder;

    private Path photo;

    @BeforeEach
    void take() throws IOException {
        photo = write("wall.jpg", "before", 1);
    }

    @Test
    void pictureOfTheJobBeforeIsNotReadAgain() throws IOException {
        String first = shown();
        assertThat(first).isEqualTo("data:image/png;base64," + base64("before"));
        assertThat(shown()).isSameAs(first);
    }

    @Test
    void fileOfAnotherTimeOrLengthIsReadAgain() throws IOException {
        shown();
        write("wall.jpg", "behind", 2);
        assertThat(shown()).endsWith(base64("behind"));
        write("wall.jpg", "behind the porch", 2);
        assertThat(shown()).endsWith(base64("behind the porch"));
    }

    @Test
    void picturesOfAnotherJobTakeTheirPlace() throws IOException {
        String first = shown();
        PictureFiles.Album other = pictures.album();
        assertThat(other.address(write("logo.PNG", "mark", 1))).isEqualTo("data:image/png;base64," + base64("mark"));
        other.keep();
        assertThat(shown()).isEqualTo(first).isNotSameAs(first);
    }

    private String shown() {
        PictureFiles.Album album = pictures.album();
        String address = album.address(photo);
        album.keep();
        return address;
    }

    private Path write(String name, String content, long seconds) throws IOException {
        Path file = Files.write(folder.resolve(name), picture(content));
        return Files.setLastModifiedTime(file, FileTime.fromMillis(1_000 * seconds));
    }

    private static String base64(String content) {
        return Base64.getEncoder().encodeToString(picture(content));
    }

    /** A PNG picture as wide as a text is long: what it is, is read from its bytes and not from its name. */
    private static byte[] picture(String content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        BufferedImage picture = new BufferedImage(content.length(), 1, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, content.hashCode());
        try {
            ImageIO.write(picture, "png", bytes);
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return bytes.toByteArray();
    }
}
