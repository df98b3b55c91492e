// SPDX-License-Identifier: Apache-2.0
package spadework.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import spadework.measure.Percent;
import spadework.measure.Quotient;

/**
 * An amount in US dollars on its way to a price: it keeps fractions of a cent.
 *
 * <p>Products and sums are exact. A quotient is kept to 34 significant digits. It becomes {@link Dollars} only
 * through {@link #toCents(RoundingMode)} or {@link #toStep(Dollars, RoundingMode)}.
 */
public record ExactDollars(BigMoney money) implements Comparable<ExactDollars> {

    /** No money. */
    public static final ExactDollars ZERO = new ExactDollars(BigMoney.zero(CurrencyUnit.USD));

    public static ExactDollars of(BigDecimal amount) {
        return new ExactDollars(BigMoney.of(CurrencyUnit.USD, amount));
    }

    public static ExactDollars of(String amount) {
        return of(new BigDecimal(amount));
    }

    /** The exact sum; {@link #ZERO} when there are none. */
    public static ExactDollars total(Collection<ExactDollars> amounts) {
        BigDecimal sum = ZERO.amount();
        for (ExactDollars amount : amounts) {
            sum = sum.add(amount.amount());
        }
        return of(sum);
    }

    public ExactDollars plus(ExactDollars other) {
        return new ExactDollars(money.plus(other.money));
    }

    public ExactDollars minus(ExactDollars other) {
        return new ExactDollars(money.minus(other.money));
    }

    public ExactDollars times(BigDecimal factor) {
        return new ExactDollars(money.multipliedBy(factor));
    }

    /** This much and the percentage of it on top, exactly. */
    public ExactDollars plusPercent(Percent percent) {
        return times(BigDecimal.ONE.add(percent.fraction()));
    }

    /**
     * The quotient to 34 significant digits.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public ExactDollars dividedBy(BigDecimal divisor) {
        return of(Quotient.of(money.getAmount(), divisor));
    }

    /**
     * The quotient in whole cents, rounded once; the caller says how.
     *
     * @throws ArithmeticException if the divisor is zero
     */
    public Dollars dividedBy(BigDecimal divisor, RoundingMode mode) {
        return Dollars.of(money.getAmount().divide(divisor, 2, mode));
    }

    /** Rounds to whole cents; the caller says how. */
    public Dollars toCents(RoundingMode mode) {
        return Dollars.of(money.getAmount().setScale(2, mode));
    }

    /** Rounds to a whole multiple of the step, as whole dollars for a step of $1.00. */
    public Dollars toStep(Dollars step, RoundingMode mode) {
        BigDecimal steps = money.getAmount().divide(step.amount(), 0, mode);
        return Dollars.of(steps.multiply(step.amount()));
    }

    public boolean isZero() {
        return money.isZero();
    }

    public BigDecimal amount() {
        return money.getAmount();
    }

    @Override
    public int compareTo(ExactDollars other) {
        return money.compareTo(other.money);
    }
}
