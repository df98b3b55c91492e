package spadework.measure;

import java.util.List;

/**
 * A span of time. Minutes inside.
 *
 * @param minutes finite and not negative
 */
public record Minutes(double minutes) implements Comparable<Minutes> {

    /** @throws IllegalArgumentException if the span is negative or not finite */
    public Minutes {
        if (!(minutes >= 0) || Double.isInfinite(minutes)) {
            throw new IllegalArgumentException("a span of time must be finite and not negative");
        }
    }

    /**
     * Reads {@code 10 min}, {@code 90 s} or {@code 0.5 h}.
     *
     * @throws UnreadableMeasure if the text is not a span of time with its unit
     */
    public static Minutes parse(String text) throws UnreadableMeasure {
        NumberAndUnit written = NumberAndUnit.read(text, "a span of time", "10 min", List.of("min", "s", "h"));
        return switch (written.unit()) {
            case "s" -> new Minutes(written.number() / 60);
            case "h" -> new Minutes(written.number() * 60);
            default -> new Minutes(written.number());
        };
    }

    @Override
    public int compareTo(Minutes other) {
        return Double.compare(minutes, other.minutes);
    }
}
