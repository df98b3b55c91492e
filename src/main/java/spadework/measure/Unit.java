// SPDX-License-Identifier: Apache-2.0
package spadework.measure;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** A unit that a printed number can carry, with the decimals to which the trade prints it. */
public enum Unit {
    FOOT("ft", 1),
    INCH("in", 1),
    MIL("mil", 0),
    SQUARE_FOOT("sf", 0),
    SQUARE_YARD("sy", 1),
    CUBIC_FOOT("cf", 1),
    CUBIC_YARD("cy", 1),
    TON("ton", 1),
    POUND("lb", 0),
    GALLON("gal", 1),
    EACH("ea", 0),
    LOAD("load", 0),
    HOUR("h", 1),
    DAY("day", 1),
    LUMP("job", 0),
    INCH_PER_HOUR("in/h", 2),
    FOOT_PER_FOOT("ft/ft", 4),
    TON_PER_CUBIC_YARD("ton/cy", 2),
    GALLON_PER_MINUTE("gpm", 1),
    GALLON_PER_MINUTE_PER_FOOT("gpm/ft", 3),
    CUBIC_FOOT_PER_SECOND("cfs", 3),
    FOOT_PER_SECOND("ft/s", 2),
    FOOT_PER_HOUR("ft/h", 4),
    GALLON_PER_INCH("gal/in", 2),
    ACRE("acre", 3),
    PSI("psi", 2),
    MINUTE("min", 1),
    SQUARE_FOOT_PER_GALLON("sf/gal", 1),
    FOOT_PER_INCH("ft/in", 2),
    DEGREE("°", 0),
    PERCENT("%", 2),
    DOLLAR("$", 2),
    NONE("", 2);

    private static final Set<Unit> WORKED_OUT = EnumSet.range(GALLON_PER_MINUTE, FOOT_PER_INCH);

    private final String symbol;
    private final int decimals;

    Unit(String symbol, int decimals) {
        this.symbol = symbol;
        this.decimals = decimals;
    }

    /** The symbol as printed behind a number, empty for a bare ratio. */
    public String symbol() {
        return symbol;
    }

    /** How many decimals a printed quantity in this unit has. */
    public int decimals() {
        return decimals;
    }

    /** True for a unit in which something can be bought, counted or written in a book; flows are only worked out. */
    public boolean isCounted() {
        return this != NONE && !WORKED_OUT.contains(this);
    }

    /** The unit with that symbol in which something can be counted, if there is one. */
    public static Optional<Unit> findBySymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.isCounted() && unit.symbol.equals(symbol))
                .findFirst();
    }
}
