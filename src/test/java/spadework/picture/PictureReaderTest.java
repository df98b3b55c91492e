// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureReaderTest {
    private static final int SIDE = 64;

    /** Red, green / blue, white by quarter, 64 × 32. */
    private static BufferedImage quarters() {
        BufferedImage picture = new BufferedImage(SIDE, SIDE / 2, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < SIDE; x++) {
            for (int y = 0; y < SIDE / 2; y++) {
                Color color =
                        y < SIDE / 4 ? x < SIDE / 2 ? Color.RED : Color.GREEN : x < SIDE / 2 ? Color.BLUE : Color.WHITE;
                picture.setRGB(x, y, color.getRGB());
            }
        }
        return picture;
    }

    /**
     * What stands at the top left of the picture as it was seen, for each way to hold a camera (Exif 2.32, tag 274:
     * where row 0 and column 0 of the file belong).
     */
    @ParameterizedTest(name = "orientation {0}")
    @CsvSource({
        "1, RED, 64, 32", "2, GREEN, 64, 32", "3, WHITE, 64, 32", "4, BLUE, 64, 32",
        "5, RED, 32, 64", "6, BLUE, 32, 64", "7, WHITE, 32, 64", "8, GREEN, 32, 64"
    })
    void pictureIsTurnedUpright(int orientation, String topLeft, int wide, int high) throws IOException {
        PrintablePicture read = PictureReader.read(withExif(jpeg(quarters()), orientation));
        BufferedImage upright = ImageIO.read(new ByteArrayInputStream(read.bytes()));
        assertThat(upright.getWidth()).isEqualTo(wide);
        assertThat(upright.getHeight()).isEqualTo(high);
        assertThat(nearest(upright.getRGB(6, 6))).isEqualTo(topLeft);
    }

    @Test
    void nothingButThePictureIsKept() throws IOException {
        byte[] jpeg = withExif(jpeg(quarters()), 1);
        byte[] words = Arrays.copyOf(jpeg, jpeg.length + 20);
        System.arraycopy("what follows it".getBytes(StandardCharsets.US_ASCII), 0, words, jpeg.length, 15);
        byte[] read = PictureReader.read(words).bytes();
        assertThat(new String(read, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "what follows it", "JFIF");
        byte[] png = PictureReader.read(png(8, 8, "Author\0Juniper")).bytes();
        assertThat(new String(png, StandardCharsets.ISO_8859_1)).doesNotContain("Juniper", "tEXt");
    }

    @Test
    void largePictureIsMadeAsSmallAsPrintNeeds() throws IOException {
        byte[] large = jpeg(new BufferedImage(6000, 3000, BufferedImage.TYPE_INT_RGB));
        BufferedImage read =
                ImageIO.read(new ByteArrayInputStream(PictureReader.read(large).bytes()));
        assertThat(read.getWidth()).isEqualTo(PictureReader.LONGEST_SIDE);
        assertThat(read.getHeight()).isEqualTo(PictureReader.LONGEST_SIDE / 2);
    }

    @Test
    void halfAPictureIsTold() throws IOException {
        byte[] jpeg = jpeg(quarters());
        assertThatThrownBy(() -> PictureReader.read(Arrays.copyOf(jpeg, jpeg.length - 40)))
                .isInstanceOf(PictureFault.class)
                .hasMessage("a JPEG picture that ends before it is whole");
        byte[] png = png(8, 8, "");
        assertThatThrownBy(() -> PictureReader.read(Arrays.copyOf(png, png.length - 14)))
                .hasMessage("a PNG picture that ends before it is whole");
    }

    /** 100,000 × 100,000 pixels in some hundred bytes: told before anything is unpacked. */
    @Test
    void pictureThatWouldFillTheMemoryIsTold() throws IOException {
        assertThatThrownBy(() -> PictureReader.read(png(100_000, 100_000, "")))
                .hasMessage("a picture of 100000 × 100000 pixels");
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "'', an empty file",
        "'%PDF-1.7', a PDF",
        "'hello there, not a picture', a file that is no picture",
        "'RIFF____WEBPVP8 ', a WebP picture",
        "'____ftypheic____', 'a HEIC or AVIF picture, as some phones save them'",
    })
    void whatIsNoPictureIsToldByItsKind(String content, String words) {
        assertThatThrownBy(() -> PictureReader.read(content.getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(PictureFault.class)
                .hasMessage(words);
    }

    @Test
    void fileIsBoundedInBytes() {
        assertThatThrownBy(() -> PictureReader.read(new byte[PictureReader.LARGEST_FILE + 1]))
                .hasMessage("a file of 40 MB");
    }

    private static String nearest(int rgb) {
        Color color = new Color(rgb);
        boolean red = color.getRed() > 128;
        boolean green = color.getGreen() > 128;
        boolean blue = color.getBlue() > 128;
        return red && green && blue ? "WHITE" : red ? "RED" : green ? "GREEN" : blue ? "BLUE" : "BLACK";
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpeg", bytes);
        return bytes.toByteArray();
    }

    private static byte[] withExif(byte[] jpeg, int orientation) {
        ByteBuffer exif = ByteBuffer.allocate(4 + 6 + 8 + 2 + 12 + 4);
        exif.putShort((short) 0xFFE1).putShort((short) (exif.capacity() - 2));
        exif.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put("MM".getBytes(StandardCharsets.US_ASCII));
        exif.putShort((short) 42).putInt(8).putShort((short) 1);
        exif.putShort((short) 274)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        exif.putInt(0);
        ByteBuffer all = ByteBuffer.allocate(jpeg.length + exif.capacity());
        all.put(jpeg, 0, 2).put(exif.array()).put(jpeg, 2, jpeg.length - 2);
        return all.array();
    }

    private static byte[] png(int wide, int high, String text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteBuffer head = ByteBuffer.allocate(13).putInt(wide).putInt(high);
        head.put((byte) 8).put((byte) 0).put((byte) 0).put((byte) 0).put((byte) 0);
        chunk(out, "IHDR", head.array());
        if (!text.isEmpty()) {
            chunk(out, "tEXt", text.getBytes(StandardCharsets.ISO_8859_1));
        }
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[9 * 8]);
        deflater.finish();
        byte[] packed = new byte[200];
        chunk(out, "IDAT", Arrays.copyOf(packed, deflater.deflate(packed)));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String kind, byte[] content) {
        byte[] named = new byte[4 + content.length];
        System.arraycopy(kind.getBytes(StandardCharsets.US_ASCII), 0, named, 0, 4);
        System.arraycopy(content, 0, named, 4, content.length);
        CRC32 sum = new CRC32();
        sum.update(named);
        out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
        out.writeBytes(named);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }
}
