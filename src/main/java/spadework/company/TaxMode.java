// SPDX-License-Identifier: Apache-2.0
package spadework.company;

/** Who pays sales tax on what. Set by the contractor with a tax adviser; it differs by state and kind of contract. */
public enum TaxMode {
    /** No tax is figured anywhere. */
    NONE,
    /** The contractor pays it on purchases: a cost, never a line for the homeowner. */
    ON_PURCHASES,
    /** The contractor collects it on the whole price: a line of its own. */
    ON_PRICE
}
