// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.util.Locale;
import java.util.Set;

/** A file name made from what a contractor typed. */
public final class FileName {
    private static final int LONGEST = 60;

    /** Names that some systems keep for devices. */
    private static final Set<String> RESERVED =
            Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "lpt1", "lpt2");

    private FileName() {}

    /** Letters, digits, hyphen and point stay; everything else becomes a hyphen. Never empty, hidden or reserved. */
    public static String safe(String text) {
        String plain = text.replaceAll("[^A-Za-z0-9.-]+", "-").replaceAll("^[.-]+|[.-]+$", "");
        String cut = plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
        boolean unusable =
                cut.isEmpty() || RESERVED.contains(cut.toLowerCase(Locale.ROOT).replaceAll("\\..*", ""));
        return unusable ? "job-" + Integer.toHexString(text.hashCode()) : cut;
    }
}
