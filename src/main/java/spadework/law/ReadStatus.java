// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/** How far a rule was read, in words. */
public final class ReadStatus {
    private ReadStatus() {}

    /** Words for {@code R}, {@code RX}, {@code RS} and {@code M}. */
    public static String words(String status) {
        return switch (status) {
            case "R" -> "read";
            case "RX" -> "excerpt read";
            case "RS" -> "secondary source";
            default -> "from memory";
        };
    }
}
