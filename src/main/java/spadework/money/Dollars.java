// SPDX-License-Identifier: Apache-2.0
package spadework.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import spadework.measure.Digits;

/**
 * An amount in US dollars and whole cents, as it is printed.
 *
 * <p>It never carries a fraction of a cent: whatever could lose one is done on {@link ExactDollars} and
 * brought here by {@link ExactDollars#toCents(RoundingMode)}, which makes the caller name the rounding.
 */
public record Dollars(Money money) implements Comparable<Dollars> {

    /** No money: $0.00. */
    public static final Dollars ZERO = new Dollars(Money.zero(CurrencyUnit.USD));

    /**
     * Makes an amount from an exact decimal.
     *
     * @param amount dollars, at most two decimals
     * @throws ArithmeticException if the amount has a fraction of a cent
     */
    public static Dollars of(BigDecimal amount) {
        return new Dollars(Money.of(CurrencyUnit.USD, amount));
    }

    /**
     * Makes an amount from plain decimal text, as {@code Dollars.of("1234.50")}.
     *
     * @throws ArithmeticException if the amount has a fraction of a cent
     * @throws NumberFormatException if the text is not a decimal number
     */
    public static Dollars of(String amount) {
        return of(new BigDecimal(amount));
    }

    /** The sum of the amounts; {@link #ZERO} when there are none. */
    public static Dollars total(Collection<Dollars> amounts) {
        BigDecimal sum = ZERO.amount();
        for (Dollars amount : amounts) {
            sum = sum.add(amount.amount());
        }
        return of(sum);
    }

    public Dollars plus(Dollars other) {
        return new Dollars(money.plus(other.money));
    }

    public Dollars minus(Dollars other) {
        return new Dollars(money.minus(other.money));
    }

    /** The same amount, ready for arithmetic that may pass through fractions of a cent. */
    public ExactDollars exact() {
        return ExactDollars.of(money.getAmount());
    }

    public boolean isLessThan(Dollars other) {
        return money.isLessThan(other.money);
    }

    public boolean isZero() {
        return money.isZero();
    }

    public boolean isNegative() {
        return money.isNegative();
    }

    /** The amount as a decimal with exactly two decimals. */
    public BigDecimal amount() {
        return money.getAmount();
    }

    /** Plain text for machines, as {@code 1234.50}. */
    public String plain() {
        return money.getAmount().toPlainString();
    }

    /** Text for people, as {@code $1,234.50} or {@code −$20.00}. */
    public String text() {
        String digits = Digits.grouped(money.getAmount().abs(), 2);
        return (isNegative() ? "\u2212$" : "$") + digits;
    }

    @Override
    public int compareTo(Dollars other) {
        return money.compareTo(other.money);
    }

    @Override
    public String toString() {
        return text();
    }
}
