// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.Collection;
import spadework.money.Dollars;

/**
 * A price and the sales tax that the homeowner pays on it; both below zero for a credit.
 *
 * @param tax zero unless the company collects it
 */
public record Sum(Dollars price, Dollars tax) {
    /** Nothing. */
    public static final Sum ZERO = new Sum(Dollars.ZERO, Dollars.ZERO);

    /** What the homeowner pays. */
    public Dollars total() {
        return price.plus(tax);
    }

    public Sum plus(Sum other) {
        return new Sum(price.plus(other.price), tax.plus(other.tax));
    }

    /** The sum of all of them. */
    public static Sum of(Collection<Sum> sums) {
        return sums.stream().reduce(ZERO, Sum::plus);
    }
}
