// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.Map;

/** What sort of value a place takes. */
public enum FieldKind {
    TEXT,
    LABEL,
    LENGTH,
    LEVEL,
    AREA,
    RAIN,
    FILM,
    PERCENT,
    MONEY,
    DATE,
    FILE,
    QUANTITY,
    FLOW,
    /** A number without unit, in quotes or not. */
    RATIO,
    /** A whole number without quotes. */
    COUNT,
    YES_OR_NO,
    CHOICE,
    GROUP,
    LIST;

    private static final Map<String, FieldKind> BY_DEFINITION = Map.ofEntries(
            Map.entry("text", TEXT),
            Map.entry("label", LABEL),
            Map.entry("length", LENGTH),
            Map.entry("lengthOrUnknown", LENGTH),
            Map.entry("level", LEVEL),
            Map.entry("area", AREA),
            Map.entry("rainRate", RAIN),
            Map.entry("film", FILM),
            Map.entry("percent", PERCENT),
            Map.entry("money", MONEY),
            Map.entry("date", DATE),
            Map.entry("file", FILE),
            Map.entry("quantity", QUANTITY),
            Map.entry("quantityOrMeasured", QUANTITY),
            Map.entry("flow", FLOW),
            Map.entry("ratio", RATIO));

    /** The kind that a definition of the schema stands for; null for one that is a group or a list. */
    static FieldKind ofDefinition(String name) {
        return BY_DEFINITION.get(name);
    }

    /**
     * What was typed, as this kind of value stands in a file. What is typed wrong stays as it is, in quotes, so that
     * the reader can say what is wrong with it.
     */
    public DraftValue written(String typed) {
        boolean bare = (this == COUNT && typed.strip().matches("-?(0|[1-9]\\d*)"))
                || ((this == YES_OR_NO || this == CHOICE) && (typed.equals("true") || typed.equals("false")));
        return bare ? new DraftValue.Bare(typed.strip()) : new DraftValue.Text(typed);
    }

    /** Whether it is a measure with its unit. */
    public boolean isMeasure() {
        return this == LENGTH
                || this == LEVEL
                || this == AREA
                || this == RAIN
                || this == FILM
                || this == PERCENT
                || this == FLOW
                || this == QUANTITY;
    }
}
