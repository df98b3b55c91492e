// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * A state's limit on what may be taken at signing. A share is kept as a fraction, one third as 1 over 3, and the limit
 * is rounded down to the cent, since a cent more breaks it.
 *
 * @param numerator of the share
 * @param denominator of the share
 * @param sum for {@link DepositKind#LESSER_OF}
 * @param valueOfWork whether later payments may not run ahead of the work that is done
 * @param from the price from which the limit holds; empty when it always does
 */
public record DepositCap(
        DepositKind kind,
        int numerator,
        int denominator,
        Optional<Dollars> sum,
        Optional<Dollars> from,
        boolean valueOfWork) {

    /**
     * The most that may be taken at signing; empty where no limit applies.
     *
     * @param price the contract price
     * @param specialOrder cost of special-order material that has to be ordered ahead
     */
    public Optional<Dollars> limit(Dollars price, Dollars specialOrder) {
        if (from.filter(price::isLessThan).isPresent()) {
            return Optional.empty();
        }
        return switch (kind) {
            case NONE, TRIGGER_DUTY, ESCROW -> Optional.empty();
            case LESSER_OF -> Optional.of(least(sum.orElseThrow(), share(price)));
            case FRACTION -> Optional.of(share(price));
            case FRACTION_OR_PLUS_SPECIAL_ORDER -> Optional.of(share(price).plus(specialOrder));
            case GREATER_OF -> Optional.of(greatest(share(price), specialOrder));
        };
    }

    /** The share of a price, rounded down to the cent. */
    public Dollars share(Dollars price) {
        return Dollars.of(price.amount()
                .multiply(BigDecimal.valueOf(numerator))
                .divide(BigDecimal.valueOf(denominator), MathContext.DECIMAL128)
                .setScale(2, RoundingMode.DOWN));
    }

    private static Dollars least(Dollars a, Dollars b) {
        return a.isLessThan(b) ? a : b;
    }

    private static Dollars greatest(Dollars a, Dollars b) {
        return a.isLessThan(b) ? b : a;
    }
}
