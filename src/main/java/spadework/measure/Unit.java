package spadework.measure;

import java.util.Arrays;
import java.util.Optional;

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
    DEGREE("°", 0),
    PERCENT("%", 2),
    DOLLAR("$", 2),
    NONE("", 2);

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

    /** The unit with that symbol, if there is one. */
    public static Optional<Unit> findBySymbol(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol) && unit != NONE)
                .findFirst();
    }
}
