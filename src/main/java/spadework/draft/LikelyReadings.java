// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What somebody may have meant with words that cannot be read at a place, the likeliest first. */
public final class LikelyReadings {
    private static final Pattern FIGURE = Pattern.compile("\\$?([\\d,]*\\.?\\d+)\\s*([a-zA-Z'\"%]*).*");
    private static final Pattern DAY = Pattern.compile("(\\d{1,4})\\D+(\\d{1,2})\\D+(\\d{1,4})");
    private static final int NEAR = 2;

    private LikelyReadings() {}

    /** At most three, each in the full form of a file; none where nobody can say. */
    public static List<String> of(SchemaField spot, String typed) {
        List<String> readings = new ArrayList<>();
        String plain = typed.strip();
        Matcher figure = FIGURE.matcher(plain);
        String number = figure.matches() ? figure.group(1) : "";
        String unit = number.isEmpty() ? "" : figure.group(2).toLowerCase(Locale.ROOT);
        switch (spot.kind()) {
            case LENGTH, LEVEL -> {
                if (!number.isEmpty()) {
                    readings.add(number + (unit.startsWith("i") ? " in" : " ft"));
                    readings.add(number + (unit.startsWith("i") ? " ft" : " in"));
                }
            }
            case AREA -> one(readings, number, " sf");
            case FILM -> one(readings, number, " mil");
            case RAIN -> one(readings, number, " in/h");
            case FLOW -> one(readings, number, " gpm");
            case PERCENT -> one(readings, number, "%");
            case MONEY -> one(readings, number.isEmpty() ? "" : "$" + number, "");
            case COUNT -> one(readings, number.replaceFirst("\\..*", ""), "");
            case DATE -> days(readings, plain);
            case CHOICE, YES_OR_NO -> nearest(spot.choices(), plain).ifPresent(readings::add);
            default -> {
                // Any words may stand there.
            }
        }
        readings.replaceAll(reading -> TypedValue.inFull(spot, reading));
        readings.removeIf(reading -> reading.equals(typed));
        return readings.stream().distinct().limit(3).toList();
    }

    private static void one(List<String> readings, String number, String unit) {
        if (!number.isEmpty()) {
            readings.add(number + unit);
        }
    }

    /** Month first, as Americans write; the other way round where that is a day too. */
    private static void days(List<String> readings, String plain) {
        Matcher day = DAY.matcher(plain);
        if (day.matches()) {
            int first = Integer.parseInt(day.group(1));
            int second = Integer.parseInt(day.group(2));
            int third = Integer.parseInt(day.group(3));
            if (first > 31) {
                date(first, second, third).ifPresent(readings::add);
                date(first, third, second).ifPresent(readings::add);
            } else {
                date(third, first, second).ifPresent(readings::add);
                date(third, second, first).ifPresent(readings::add);
            }
        }
    }

    private static Optional<String> date(int year, int month, int day) {
        try {
            return Optional.of(
                    LocalDate.of(year < 100 ? 2000 + year : year, month, day).toString());
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static Optional<String> nearest(List<String> choices, String typed) {
        String sought = typed.toLowerCase(Locale.ROOT);
        String best = "";
        int least = NEAR + 1;
        for (String choice : choices) {
            int steps = steps(sought, choice.toLowerCase(Locale.ROOT));
            if (steps < least) {
                best = choice;
                least = steps;
            }
        }
        return least <= NEAR ? Optional.of(best) : Optional.empty();
    }

    /** Letters to add, take out, or change on the way from one word to another (Levenshtein). */
    private static int steps(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int above = row[j];
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, Math.min(row[j - 1], above) + 1);
                diagonal = above;
            }
        }
        return row[to.length()];
    }
}
