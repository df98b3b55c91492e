// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.working.Worked;
import spadework.working.Working;

/** An answer as lines of text. Figures are rounded for reading only. */
public final class AnswerText {
    private AnswerText() {}

    /** The figures, one a line, name first. */
    public static List<String> values(Answer answer) {
        int width = answer.values().stream()
                .mapToInt(value -> value.name().length())
                .max()
                .orElse(0);
        List<String> lines = new ArrayList<>();
        for (AnswerValue value : answer.values()) {
            lines.add(value.name() + " ".repeat(width - value.name().length() + 2) + text(value));
        }
        return lines;
    }

    private static String text(AnswerValue value) {
        if (value instanceof Day day) {
            return day.date().toString();
        }
        if (value instanceof Amount amount) {
            return amount.dollars().map(Dollars::text).orElse("no limit found");
        }
        String number = Figures.inAnswer(((Figure) value).value());
        return value.unit() == Unit.NONE ? number : number + " " + value.unit().symbol();
    }

    /**
     * Where the figures come from: each number once, after those that it was worked out from, then each rule of law.
     */
    public static List<String> working(Answer answer) {
        Set<String> lines = new LinkedHashSet<>();
        answer.working().forEach(working -> tell(working, lines));
        answer.rules().forEach(rule -> lines.add(rule.line()));
        return List.copyOf(lines);
    }

    private static void tell(Working working, Set<String> lines) {
        working.inputs().forEach(input -> tell(input, lines));
        String right = working instanceof Worked worked ? worked.line() : working.valueText();
        lines.add(working.symbol() + " = " + right + "  [" + working.name() + "; " + working.source() + "]");
    }
}
