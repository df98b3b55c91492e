// SPDX-License-Identifier: Apache-2.0
package spadework.cli.bundle;

import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import spadework.form.kit.AppIcon;

/**
 * The program's picture in the file that each desktop takes: PNG for Linux, ICO for Windows and ICNS for macOS. The
 * last two are lists of PNG pictures, as both systems have read them since 2007.
 */
final class IconFiles {
    private static final int LARGE = 256;
    private static final int[] WINDOWS = {16, 32, 48, LARGE};

    /** Types of an ICNS entry by the side of its PNG picture, in pixels. */
    private static final Map<String, Integer> MAC = new TreeMap<>(Map.of("ic07", 128, "ic08", 256, "ic09", 512));

    private static final int HEADER = 6;
    private static final int ENTRY = 16;

    private IconFiles() {}

    /** What each file holds, by its name. */
    static Map<String, byte[]> files() throws IOException {
        return Map.of("spadework.png", png(LARGE), "spadework.ico", ico(), "spadework.icns", icns());
    }

    static byte[] png(int side) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        RenderedImage image = AppIcon.image(side);
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    /** A header, an entry of 16 bytes for each picture, the pictures; little-endian, a side of 256 is written 0. */
    static byte[] ico() throws IOException {
        byte[][] pictures = new byte[WINDOWS.length][];
        int size = HEADER + ENTRY * WINDOWS.length;
        for (int i = 0; i < WINDOWS.length; i++) {
            pictures[i] = png(WINDOWS[i]);
            size += pictures[i].length;
        }
        ByteBuffer file = ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) WINDOWS.length);
        int at = HEADER + ENTRY * WINDOWS.length;
        for (int i = 0; i < WINDOWS.length; i++) {
            byte side = (byte) (WINDOWS[i] % LARGE);
            file.put(side).put(side).put((byte) 0).put((byte) 0);
            file.putShort((short) 1).putShort((short) Integer.SIZE);
            file.putInt(pictures[i].length).putInt(at);
            at += pictures[i].length;
        }
        for (byte[] picture : pictures) {
            file.put(picture);
        }
        return file.array();
    }

    /** A header of 8 bytes, then for each picture its type, its length with this header, and its bytes; big-endian. */
    static byte[] icns() throws IOException {
        ByteArrayOutputStream entries = new ByteArrayOutputStream();
        for (Map.Entry<String, Integer> each : MAC.entrySet()) {
            entries.writeBytes(entry(each.getKey(), png(each.getValue())));
        }
        return entry("icns", entries.toByteArray());
    }

    private static byte[] entry(String type, byte[] content) {
        int length = 2 * Integer.BYTES + content.length;
        return ByteBuffer.allocate(length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .putInt(length)
                .put(content)
                .array();
    }
}
