// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How much water flows. US gallons a minute inside.
 *
 * @param gallonsPerMinute flow; more than zero, at most 1,000,000
 */
public record FlowRate(double gallonsPerMinute) {
    /** US gallons a minute in one cubic foot a second: 60 × 1728 ÷ 231. */
    public static final double GPM_PER_CFS = 448.831;

    private static final Pattern WRITTEN = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(gpm|gph|cfs)");
    private static final double MOST = 1_000_000;

    /** @throws IllegalArgumentException if the flow is not above zero and at most 1,000,000 gpm */
    public FlowRate {
        if (!(gallonsPerMinute > 0 && gallonsPerMinute <= MOST)) {
            throw new IllegalArgumentException("a flow must be above 0 and at most 1,000,000 gpm");
        }
    }

    /**
     * Reads {@code 30 gpm}, {@code 1800 gph} or {@code 0.5 cfs}.
     *
     * @throws UnreadableMeasure if the text is not a flow with its unit
     */
    public static FlowRate parse(String text) throws UnreadableMeasure {
        Matcher written = WRITTEN.matcher(text.strip());
        String allowed = "a flow with its unit (gpm, gph, cfs), above 0 and at most 1,000,000 gpm";
        if (!written.matches()) {
            throw new UnreadableMeasure(allowed, "write it as \"30 gpm\"");
        }
        double number = Double.parseDouble(written.group(1));
        double gpm = switch (written.group(2)) {
            case "gph" -> number / 60;
            case "cfs" -> number * GPM_PER_CFS;
            default -> number;
        };
        if (!(gpm > 0 && gpm <= MOST)) {
            throw new UnreadableMeasure(allowed, "check the figure; write it as \"30 gpm\"");
        }
        return new FlowRate(gpm);
    }
}
