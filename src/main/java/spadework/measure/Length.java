// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

/**
 * A length, depth, level or distance. US feet inside (the international foot, 0.3048 m exactly).
 *
 * @param feet the length in feet; finite; negative only where a level may lie below its benchmark
 */
public record Length(double feet) implements Comparable<Length> {

    public static final Length ZERO = new Length(0);

    /** @throws IllegalArgumentException if the length is not finite */
    public Length {
        if (!Double.isFinite(feet)) {
            throw new IllegalArgumentException("a length must be finite");
        }
    }

    public static Length ofFeet(double feet) {
        return new Length(feet);
    }

    public static Length ofInches(double inches) {
        return new Length(inches / 12);
    }

    /**
     * Reads every spelling a job file may use: {@code 46 ft 6 in}, {@code 46' 6"}, {@code 46.5 ft}, {@code 14.2 m},
     * {@code 5 ft 6 1/2 in}.
     *
     * @throws UnreadableMeasure if the text is not a length with its unit
     */
    public static Length parse(String text) throws UnreadableMeasure {
        return LengthText.read(text);
    }

    public double inches() {
        return feet * 12;
    }

    public Length plus(Length other) {
        return new Length(feet + other.feet);
    }

    public Length minus(Length other) {
        return new Length(feet - other.feet);
    }

    public boolean isPositive() {
        return feet > 0;
    }

    /** Text for people in feet and inches to the nearest half inch, as {@code 46 ft 6 in}. */
    public String text() {
        long halves = Math.round(Math.abs(feet) * 24);
        long wholeFeet = halves / 24;
        long rest = halves % 24;
        String inches = rest % 2 == 0 ? Long.toString(rest / 2) : (rest == 1 ? "½" : rest / 2 + "½");
        String sign = feet < 0 && halves > 0 ? "−" : "";
        if (rest == 0) {
            return sign + wholeFeet + " ft";
        }
        return sign + (wholeFeet == 0 ? "" : wholeFeet + " ft ") + inches + " in";
    }

    /** Text for a level, in decimal feet, as {@code 94.35 ft}. */
    public String levelText() {
        return Digits.fixed(feet, 2) + " ft";
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(feet, other.feet);
    }
}
