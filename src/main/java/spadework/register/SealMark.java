// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of the register and the beginning of its seal, short enough to be printed: whoever holds the paper can show
 * later whether the register still has that line.
 *
 * @param line from 1
 * @param seal the first 16 hex digits of the seal, 64 bits of SHA-256
 */
public record SealMark(int line, String seal) {
    private static final int DIGITS = 16;
    private static final Pattern TEXT =
            Pattern.compile("(?<![0-9])([1-9][0-9]{0,8})-([0-9a-f]{4})-([0-9a-f]{4})-([0-9a-f]{4})-([0-9a-f]{4})");

    static SealMark of(Entry entry) {
        return new SealMark(entry.line(), entry.seal().substring(0, DIGITS));
    }

    /** As it is printed, as {@code 12-3f2a-91c0-77de-04b1}. */
    public String text() {
        return line + "-" + seal.replaceAll("(.{4})(?=.)", "$1-");
    }

    /** The first one in a text. */
    public static Optional<SealMark> in(String text) {
        Matcher found = TEXT.matcher(text.toLowerCase(Locale.ROOT));
        return found.find()
                ? Optional.of(new SealMark(
                        Integer.parseInt(found.group(1)),
                        found.group(2) + found.group(3) + found.group(4) + found.group(5)))
                : Optional.empty();
    }

    /** Whether a line of the register is the one that was marked. */
    public boolean marks(Entry entry) {
        return entry.line() == line && entry.seal().startsWith(seal);
    }
}
