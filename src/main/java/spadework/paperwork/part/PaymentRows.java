// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.ArrayList;
import java.util.List;
import spadework.paperwork.PaperWords;
import spadework.pricing.Due;

/** Payments as the papers list them. */
public final class PaymentRows {
    private PaymentRows() {}

    public static List<PaymentRow> of(PaperWords terms, List<Due> dues) {
        List<PaymentRow> rows = new ArrayList<>();
        for (Due due : dues) {
            rows.add(new PaymentRow(
                    rows.size() + 1,
                    terms.own(due.when()),
                    due.share().text(),
                    due.share().fraction(),
                    rows.size() == dues.size() - 1,
                    due.amount()));
        }
        return rows;
    }
}
