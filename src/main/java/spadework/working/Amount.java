// SPDX-License-Identifier: Apache-2.0
package spadework.working;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A value that is kept the way it came: a floating-point number becomes a decimal only once somebody asks for one, and
 * a decimal a floating-point number. Two are equal where their decimals are.
 */
public final class Amount {
    /** Not a number as long as only the decimal is known. */
    private double number;

    private BigDecimal exact;

    private Amount(double number, BigDecimal exact) {
        this.number = number;
        this.exact = exact;
    }

    /** @throws NumberFormatException if it is infinite or not a number */
    static Amount of(double number) {
        if (!Double.isFinite(number)) {
            throw new NumberFormatException("no amount: " + number);
        }
        return new Amount(number, null);
    }

    static Amount of(BigDecimal exact) {
        return new Amount(Double.NaN, Objects.requireNonNull(exact));
    }

    /** The shortest decimal that is this number and no other. */
    BigDecimal exact() {
        if (exact == null) {
            exact = BigDecimal.valueOf(number);
        }
        return exact;
    }

    double number() {
        if (Double.isNaN(number)) {
            number = exact.doubleValue();
        }
        return number;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Amount amount && exact().equals(amount.exact());
    }

    @Override
    public int hashCode() {
        return exact().hashCode();
    }

    @Override
    public String toString() {
        return exact().toString();
    }
}
