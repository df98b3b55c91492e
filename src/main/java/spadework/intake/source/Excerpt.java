// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

/** A short, printable piece of what somebody wrote, fit for one line of a message. */
public final class Excerpt {
    private static final int LONGEST = 60;

    private Excerpt() {}

    /** At most 60 characters; what cannot be seen as its code, as {@code U+0007}. */
    static String of(String written) {
        if (isPlain(written)) {
            return written;
        }
        StringBuilder shown = new StringBuilder();
        written.codePoints().limit(LONGEST).forEach(c -> {
            if (isSeen(c)) {
                shown.appendCodePoint(c);
            } else {
                shown.append(String.format("U+%04X", c));
            }
        });
        return written.codePoints().limit(LONGEST + 1L).count() > LONGEST ? shown + "…" : shown.toString();
    }

    /** The same between quotation marks. */
    public static String quoted(String written) {
        return "\"" + of(written) + "\"";
    }

    /** Short and of printable ASCII, as nearly every key is: shown as it stands. */
    private static boolean isPlain(String written) {
        boolean plain = written.length() <= LONGEST;
        for (int i = 0; plain && i < written.length(); i++) {
            char c = written.charAt(i);
            plain = c >= ' ' && c <= '~';
        }
        return plain;
    }

    private static boolean isSeen(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
