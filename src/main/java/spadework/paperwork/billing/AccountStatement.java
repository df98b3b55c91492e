// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.billing;

import java.util.List;
import spadework.paperwork.part.PaperHead;

/**
 * Everything that a statement of account or a late notice prints, finished.
 *
 * @param number of the late notice; blank for a statement, which has none
 * @param contract number of the contract
 * @param signed the day of the contract, in words
 * @param late bills that are not paid in full, oldest first
 * @param payTo how to pay, line by line, as the company says
 */
public record AccountStatement(
        PaperHead head,
        String number,
        String contract,
        String signed,
        List<StatementRow> rows,
        List<LateRow> late,
        AccountTotals totals,
        List<String> payTo) {

    public AccountStatement {
        rows = List.copyOf(rows);
        late = List.copyOf(late);
        payTo = List.copyOf(payTo);
    }

    public boolean isLateNotice() {
        return !number.isEmpty();
    }
}
