// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers of jobs that are counted by year, as {@code 2026-014}. */
public final class NumberOfYear {
    private static final Pattern NUMBERED = Pattern.compile("(\\d{4})-(\\d{3,6})");

    private NumberOfYear() {}

    /** The count of a number; nothing for one of another year or another kind. */
    public static OptionalInt of(String number, int year) {
        Matcher numbered = NUMBERED.matcher(number);
        return numbered.matches() && Integer.parseInt(numbered.group(1)) == year
                ? OptionalInt.of(Integer.parseInt(numbered.group(2)))
                : OptionalInt.empty();
    }

    /** In words: 14 of 2026 is {@code 2026-014}. */
    public static String text(int year, int count) {
        return String.format(Locale.ROOT, "%d-%03d", year, count);
    }
}
