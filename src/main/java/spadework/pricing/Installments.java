// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import spadework.job.Payment;
import spadework.money.Dollars;

/** Splits a price into payments that add to it exactly. Each is cut down to whole cents; the last takes the rest. */
public final class Installments {
    private Installments() {}

    /**
     * The payments with their amounts.
     *
     * @param payments shares that sum to 100%
     */
    public static List<Due> of(Dollars total, List<Payment> payments) {
        List<Due> dues = new ArrayList<>();
        Dollars rest = total;
        for (int i = 0; i < payments.size(); i++) {
            Payment payment = payments.get(i);
            Dollars amount = i == payments.size() - 1
                    ? rest
                    : total.exact().times(payment.share().fraction()).toCents(RoundingMode.DOWN);
            rest = rest.minus(amount);
            dues.add(new Due(payment.when(), payment.share(), payment.atSigning(), amount));
        }
        return dues;
    }
}
