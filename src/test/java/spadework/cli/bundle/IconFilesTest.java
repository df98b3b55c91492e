// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** The icon of each desktop, read back as the desktop reads it: by the offsets and lengths that the file names. */
class IconFilesTest {

    private static BufferedImage png(byte[] file, int at, int length) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file, at, length));
    }

    /** Windows: ICONDIR and ICONDIRENTRY, documented with the ICO format. */
    @Test
    void windowsFindsFourSidesWhereTheHeaderSays() throws IOException {
        byte[] file = IconFiles.ico();
        ByteBuffer header = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(header.getShort()).isZero();
        assertThat(header.getShort()).as("an icon, not a pointer").isEqualTo((short) 1);
        int count = header.getShort();
        List<Integer> sides = new ArrayList<>();
        int end = 0;
        for (int i = 0; i < count; i++) {
            int side = Byte.toUnsignedInt(header.get());
            header.position(header.position() + 7);
            int length = header.getInt();
            int at = header.getInt();
            BufferedImage picture = png(file, at, length);
            assertThat(picture.getWidth()).isEqualTo(side == 0 ? 256 : side).isEqualTo(picture.getHeight());
            sides.add(picture.getWidth());
            end = at + length;
        }
        assertThat(sides).containsExactly(16, 32, 48, 256);
        assertThat(end).isEqualTo(file.length);
    }

    /** macOS: each entry is its type and its length, which counts these eight bytes as well. */
    @Test
    void macFindsThreeSides() throws IOException {
        byte[] file = IconFiles.icns();
        ByteBuffer entries = ByteBuffer.wrap(file);
        assertThat(type(entries)).isEqualTo("icns");
        assertThat(entries.getInt()).isEqualTo(file.length);
        List<String> found = new ArrayList<>();
        while (entries.hasRemaining()) {
            String type = type(entries);
            int length = entries.getInt() - 8;
            found.add(type + " " + png(file, entries.position(), length).getWidth());
            entries.position(entries.position() + length);
        }
        assertThat(found).containsExactly("ic07 128", "ic08 256", "ic09 512");
    }

    @Test
    void pictureIsClearAtItsCornersAndHoldsWallSoilAndWater() throws IOException {
        byte[] file = IconFiles.png(64);
        BufferedImage picture = png(file, 0, file.length);
        assertThat(picture.getRGB(0, 0) >>> 24).as("clear corner").isZero();
        assertThat(List.of(picture.getRGB(6, 30), picture.getRGB(24, 58), picture.getRGB(26, 24)))
                .containsExactly(0xff5c6166, 0xff8b7355, 0xff1f6f80);
    }

    private static String type(ByteBuffer entries) {
        byte[] type = new byte[4];
        entries.get(type);
        return new String(type, StandardCharsets.US_ASCII);
    }
}
