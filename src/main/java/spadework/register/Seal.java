// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The seal that ends a line: {@code ,"seal":"…"}} with the SHA-256 of all bytes of the line before it. It is checked
 * on the bytes, not on what they mean, so that a change which reads the same is found as well.
 */
final class Seal {
    private static final byte[] OPENS = ",\"seal\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] CLOSES = "\"}".getBytes(StandardCharsets.US_ASCII);
    private static final int HEX = 64;
    private static final int LENGTH = OPENS.length + HEX + CLOSES.length;

    private Seal() {}

    /** A JSON object with the seal put in as its last member. */
    static byte[] sealed(byte[] object) {
        int open = object.length - 1;
        byte[] line = Arrays.copyOf(object, open + LENGTH);
        System.arraycopy(OPENS, 0, line, open, OPENS.length);
        System.arraycopy(ascii(Sha256.of(object, open)), 0, line, open + OPENS.length, HEX);
        System.arraycopy(CLOSES, 0, line, open + OPENS.length + HEX, CLOSES.length);
        return line;
    }

    /** Whether the first bytes of a line are a whole sealed line. */
    static boolean holds(byte[] line, int length) {
        int open = length - LENGTH;
        return open > 0
                && at(line, open, OPENS)
                && at(line, length - CLOSES.length, CLOSES)
                && at(line, open + OPENS.length, ascii(Sha256.of(line, open)));
    }

    /** Whether something follows a whole line that should have ended there: that is no half-written line. */
    static boolean runsOn(byte[] line) {
        for (int length = LENGTH + 1; length < line.length; length++) {
            if (at(line, length - CLOSES.length, CLOSES) && holds(line, length)) {
                return true;
            }
        }
        return false;
    }

    private static boolean at(byte[] line, int from, byte[] expected) {
        return from >= 0
                && from + expected.length <= line.length
                && Arrays.equals(line, from, from + expected.length, expected, 0, expected.length);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
