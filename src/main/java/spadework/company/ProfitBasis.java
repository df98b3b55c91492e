// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/** What the company's profit is a percentage of. The two are never mixed up. */
public enum ProfitBasis {
    /** Of the price: price = cost ÷ (1 − margin). */
    MARGIN,
    /** Of the cost: price = cost × (1 + markup). */
    MARKUP
}
