// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import spadework.billing.Ledger;
import spadework.money.Dollars;

/**
 * Where an account stands.
 *
 * @param contract the contract price as it was signed
 * @param changes what accepted change orders add; below zero where they take away
 * @param unbilled what is agreed and not billed yet
 * @param open what is billed and not paid
 */
public record AccountTotals(
        Dollars contract,
        Dollars changes,
        Dollars agreed,
        Dollars invoiced,
        Dollars received,
        Dollars open,
        Dollars unbilled) {

    /** What the firm owes the owner: zero unless more came in than is billed. */
    public Dollars owed() {
        return open.isNegative() ? Dollars.ZERO.minus(open) : Dollars.ZERO;
    }

    static AccountTotals of(Ledger ledger) {
        Dollars contract = ledger.contract().contracted().total();
        return new AccountTotals(
                contract,
                ledger.agreed().minus(contract),
                ledger.agreed(),
                ledger.invoiced(),
                ledger.received(),
                ledger.open(),
                ledger.unbilled());
    }
}
