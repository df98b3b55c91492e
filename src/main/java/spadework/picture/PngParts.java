// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;

/** A PNG file taken apart (ISO/IEC 15948): only the chunks that make the picture are kept. */
final class PngParts {
    private static final byte[] HEAD = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final Set<String> KEPT = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final int AROUND = 12;

    private PngParts() {}

    static boolean isOne(byte[] file) {
        return file.length > HEAD.length && Arrays.equals(file, 0, HEAD.length, HEAD, 0, HEAD.length);
    }

    static byte[] kept(byte[] file) throws PictureFault {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(file.length);
        kept.writeBytes(HEAD);
        ByteBuffer in = ByteBuffer.wrap(file);
        int at = HEAD.length;
        while (at + AROUND <= file.length) {
            int length = in.getInt(at);
            if (length < 0 || length > file.length - at - AROUND) {
                break;
            }
            String kind = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
            if (KEPT.contains(kind)) {
                kept.write(file, at, length + AROUND);
            }
            if (kind.equals("IEND")) {
                return kept.toByteArray();
            }
            at += length + AROUND;
        }
        throw new PictureFault(
                "a PNG picture that ends before it is whole", "a whole picture", "save it again, or copy it again");
    }
}
