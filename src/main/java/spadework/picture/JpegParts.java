// SPDX-License-Identifier: Apache-2.0
package spadework.picture;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;

/**
 * A JPEG file taken apart (ITU-T T.81, annex B): what a decoder needs is kept, everything else, as place and time of
 * the shot, comments, previews and what follows the picture, is left out.
 */
final class JpegParts {
    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int PROGRESSIVE = 0xC2;
    private static final int APPLICATION_FIRST = 0xE0;
    private static final int APPLICATION_LAST = 0xEF;
    private static final int EXIF = 0xE1;
    private static final int ADOBE = 0xEE;
    private static final int COMMENT = 0xFE;

    private final byte[] file;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private int orientation = 1;
    private int scans;
    private boolean progressive;

    private JpegParts(byte[] file) {
        this.file = file;
    }

    static boolean isOne(byte[] file) {
        return file.length > 3 && (file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == START && (file[2] & 0xFF) == 0xFF;
    }

    static JpegParts of(byte[] file) throws PictureFault {
        JpegParts parts = new JpegParts(file);
        parts.read();
        return parts;
    }

    private void read() throws PictureFault {
        kept.write(file, 0, 2);
        int at = 2;
        while (true) {
            int marker = marker(at);
            at = past(at);
            if (marker == END) {
                put(END);
                return;
            }
            int length = length(at);
            segment(marker, at, length);
            at += length;
            if (marker == SCAN) {
                int end = endOfScan(at);
                kept.write(file, at, end - at);
                at = end;
                scans++;
            }
        }
    }

    private int marker(int at) throws PictureFault {
        int next = at;
        while (next < file.length && (file[next] & 0xFF) == 0xFF) {
            next++;
        }
        if (next == at || next >= file.length) {
            throw cutShort();
        }
        return file[next] & 0xFF;
    }

    /** Just behind the marker, which may have more than one FF before it. */
    private int past(int at) {
        int next = at;
        while ((file[next] & 0xFF) == 0xFF) {
            next++;
        }
        return next + 1;
    }

    private int length(int at) throws PictureFault {
        int length = at + 1 < file.length ? ((file[at] & 0xFF) << 8) | (file[at + 1] & 0xFF) : 0;
        if (length < 2 || at + length > file.length) {
            throw cutShort();
        }
        return length;
    }

    private void segment(int marker, int at, int length) {
        progressive |= marker == PROGRESSIVE;
        if (marker == EXIF) {
            orientation = ExifOrientation.in(Arrays.copyOfRange(file, at + 2, at + length), orientation);
        }
        boolean described = (marker >= APPLICATION_FIRST && marker <= APPLICATION_LAST) || marker == COMMENT;
        if (!described || marker == ADOBE) {
            put(marker);
            kept.write(file, at, length);
        }
    }

    private int endOfScan(int from) throws PictureFault {
        for (int at = from; at + 1 < file.length; at++) {
            int next = file[at + 1] & 0xFF;
            boolean restart = next >= 0xD0 && next <= 0xD7;
            if ((file[at] & 0xFF) == 0xFF && next != 0 && next != 0xFF && !restart) {
                return at;
            }
        }
        throw cutShort();
    }

    private void put(int marker) {
        kept.write(0xFF);
        kept.write(marker);
    }

    private static PictureFault cutShort() {
        return new PictureFault(
                "a JPEG picture that ends before it is whole", "a whole picture", "copy it from the camera again");
    }

    byte[] kept() {
        return kept.toByteArray();
    }

    /** How the camera was held, 1 to 8 as Exif counts; 1 is upright. */
    int orientation() {
        return orientation;
    }

    int scans() {
        return scans;
    }

    boolean isProgressive() {
        return progressive;
    }
}
