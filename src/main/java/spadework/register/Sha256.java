// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 as 64 lower-case hex digits (FIPS 180-4). */
public final class Sha256 {
    /** Stands where there is nothing before. */
    static final String NONE = "0".repeat(64);

    private Sha256() {}

    /** Of all the bytes. */
    public static String of(byte[] bytes) {
        return of(bytes, bytes.length);
    }

    static String of(byte[] bytes, int length) {
        MessageDigest digest = digest();
        digest.update(bytes, 0, length);
        return HexFormat.of().formatHex(digest.digest());
    }

    /** Of a stream, read piece by piece. */
    static String of(InputStream in) throws IOException {
        MessageDigest digest = digest();
        byte[] piece = new byte[1 << 16];
        for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
            digest.update(piece, 0, read);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
