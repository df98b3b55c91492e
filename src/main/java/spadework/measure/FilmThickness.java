package spadework.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The thickness of a coat. Mils inside (1 mil = 0.001 in).
 *
 * @param mils thickness in mils; more than zero, at most 1,000
 */
public record FilmThickness(double mils) implements Comparable<FilmThickness> {
    private static final Pattern WRITTEN = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(mil|mm)");

    /** @throws IllegalArgumentException if the thickness is not above zero and at most 1,000 mil */
    public FilmThickness {
        if (!(mils > 0 && mils <= 1000)) {
            throw new IllegalArgumentException("a film must be above 0 and at most 1000 mil");
        }
    }

    /**
     * Reads {@code 60 mil} or {@code 1.5 mm}.
     *
     * @throws UnreadableMeasure if the text is not a thickness with its unit
     */
    public static FilmThickness parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        String allowed = "a film thickness with its unit (mil, mm), above 0 and at most 1000 mil";
        if (!written.matches()) {
            throw new UnreadableMeasure(allowed, "write it as \"60 mil\"");
        }
        double number = Double.parseDouble(written.group(1));
        double mils = written.group(2).equals("mm") ? number / 0.0254 : number;
        if (!(mils > 0 && mils <= 1000)) {
            throw new UnreadableMeasure(allowed, "write it as \"60 mil\"");
        }
        return new FilmThickness(mils);
    }

    @Override
    public int compareTo(FilmThickness other) {
        return Double.compare(mils, other.mils);
    }
}
