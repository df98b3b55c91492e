// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** How a camera was held, from the Exif part of a JPEG file (Exif 2.32, tag 274 of the first directory). */
final class ExifOrientation {
    private static final byte[] HEAD = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final int TAG = 274;
    private static final int SHORT = 3;
    private static final int ENTRY = 12;
    private static final int LAST = 8;

    private ExifOrientation() {}

    /** From 1 to 8; what was known before where the part says nothing that can be used. */
    static int in(byte[] part, int before) {
        if (part.length < HEAD.length + 8 || !java.util.Arrays.equals(part, 0, HEAD.length, HEAD, 0, HEAD.length)) {
            return before;
        }
        ByteBuffer tiff =
                ByteBuffer.wrap(part, HEAD.length, part.length - HEAD.length).slice();
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int at = tiff.getInt(4);
        if (at < 0 || at + 2 > tiff.limit()) {
            return before;
        }
        int count = tiff.getShort(at) & 0xFFFF;
        for (int i = 0; i < count && at + 2 + (i + 1) * ENTRY <= tiff.limit(); i++) {
            int entry = at + 2 + i * ENTRY;
            if ((tiff.getShort(entry) & 0xFFFF) == TAG && tiff.getShort(entry + 2) == SHORT) {
                int value = tiff.getShort(entry + 8);
                return value >= 1 && value <= LAST ? value : before;
            }
        }
        return before;
    }
}
