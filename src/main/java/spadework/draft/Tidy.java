package spadework.draft;

import spadework.measure.Length;
import spadework.measure.UnreadableMeasure;

/**
 * The tidy spelling of a measure: the same figures in the same units, spaced and spelled as the papers do. What cannot
 * be read stays as it was typed.
 */
public final class Tidy {
    private Tidy() {}

    /**
     * {@code 46'6"} becomes {@code 46 ft 6 in}, {@code 14.2m} becomes {@code 14.2 m}, {@code 10%} becomes {@code 10 %}.
     */
    public static String of(FieldKind kind, String typed) {
        String plain = typed.strip();
        if (!kind.isMeasure()) {
            return kind == FieldKind.TEXT ? typed : plain;
        }
        boolean length = kind == FieldKind.LENGTH || kind == FieldKind.LEVEL;
        String tidy = (length ? spelled(plain) : plain)
                .replaceAll("(?<=\\d)(?=[a-zA-Z%])", " ")
                .replaceAll("\\s+", " ")
                .strip();
        return length && !isSame(plain, tidy) ? plain : tidy;
    }

    private static String spelled(String typed) {
        return typed.replaceAll("[\u2032\u2019']", " ft ")
                .replaceAll("[\u2033\u201d\"]", " in ")
                .replaceAll("(?i)(?<![a-z])(feet|foot|ft)(?![a-z])\\.?", " ft ")
                .replaceAll("(?i)(?<![a-z])(inches|inch|in)(?![a-z])\\.?", " in ")
                .replaceAll("(?i)(?<![a-z])(yards|yard|yd)(?![a-z])\\.?", " yd ")
                .replaceAll("(?<= ft ) *- *", " ");
    }

    private static boolean isSame(String typed, String tidy) {
        try {
            return Length.parse(typed).equals(Length.parse(tidy));
        } catch (UnreadableMeasure unreadable) {
            return false;
        }
    }
}
