// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import spadework.intake.source.ValueKind;

/** Bare numbers: whole counts, and ratios that have no unit. */
public final class Counts {
    private static final Pattern WHOLE = Pattern.compile("-?\\d{1,9}");
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

    private Counts() {}

    /** A whole number without quotes. */
    public static ValueKind<Integer> between(int least, int most) {
        String allowed = "a whole number from " + least + " to " + most;
        String example = Integer.toString(Math.max(least, Math.min(most, 1)));
        return new ValueKind<>(example, node -> {
            Optional<String> digits = node.number(allowed, example);
            if (digits.isEmpty()) {
                return least;
            }
            int count = WHOLE.matcher(digits.get()).matches() ? Integer.parseInt(digits.get()) : Integer.MIN_VALUE;
            if (count < least || count > most) {
                node.fault(digits.get(), allowed, "count again");
                return least;
            }
            return count;
        });
    }

    /** A number without unit, as 1.25 or "1.25". */
    public static ValueKind<BigDecimal> ratio(Limits<BigDecimal> limits) {
        String allowed = "a number, " + limits.words();
        String example = "\"1.25\"";
        return new ValueKind<>(example, node -> {
            boolean bare = node.json() != null && node.json().isNumber();
            Optional<String> digits = bare ? node.number(allowed, example) : node.text(allowed, example);
            if (digits.isEmpty()) {
                return BigDecimal.ONE;
            }
            String text = digits.get().strip();
            Optional<BigDecimal> value =
                    DECIMAL.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
            if (value.filter(limits::allow).isEmpty()) {
                boolean number = value.isPresent();
                String fix = number ? "check the figure and write one within the limits" : "write it as " + example;
                node.fault(node.written(), allowed, fix);
            }
            return value.filter(limits::allow).orElse(BigDecimal.ONE);
        });
    }
}
