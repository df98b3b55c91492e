// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.billing.BillItem;
import spadework.billing.Invoice;
import spadework.contract.Contract;
import spadework.paperwork.PaperWords;

/** Lines of a bill in the contract's own words. */
final class BillRows {
    private BillRows() {}

    static List<BillRow> of(PaperWords terms, Contract contract, Invoice invoice) {
        return invoice.lines().stream()
                .map(line -> new BillRow(
                        line.item().isPayment(),
                        line.item().number(),
                        what(terms, contract, line.item()),
                        line.amount()))
                .toList();
    }

    private static String what(PaperWords terms, Contract contract, BillItem item) {
        if (item.isPayment()) {
            return terms.own(contract.payments().get(item.number() - 1).when());
        }
        return contract.accepted().stream()
                .filter(change -> change.change().number() == item.number())
                .findFirst()
                .orElseThrow()
                .change()
                .title();
    }
}
