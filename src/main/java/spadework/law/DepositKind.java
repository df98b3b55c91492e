// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/** How a state limits the deposit. These are kinds, not one number. */
public enum DepositKind {
    /** No limit was found. That is not proof that there is none. */
    NONE,
    /** The lesser of a sum and a share of the price. */
    LESSER_OF,
    /** A share of the price. */
    FRACTION,
    /** A share of the price, and the cost of special-order material on top. */
    FRACTION_OR_PLUS_SPECIAL_ORDER,
    /** The greater of a share of the price and the cost of special-order material. */
    GREATER_OF,
    /** No limit, but taking more than a share brings duties. */
    TRIGGER_DUTY,
    /** No limit, but the money is held in trust. */
    ESCROW
}
