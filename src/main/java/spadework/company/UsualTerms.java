// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import java.util.List;
import spadework.job.Payment;
import spadework.job.WarrantyTerms;

/**
 * What the company's offers say where a job says nothing else.
 *
 * @param validDays how long a price stands
 * @param excluded what the company's price never includes, one thing a line
 * @param preparation what the homeowner is asked to do beforehand, one thing a line
 */
public record UsualTerms(
        int validDays,
        List<Payment> payments,
        WarrantyTerms warranty,
        List<String> excluded,
        List<String> preparation,
        List<String> terms) {

    public UsualTerms {
        payments = List.copyOf(payments);
        excluded = List.copyOf(excluded);
        preparation = List.copyOf(preparation);
        terms = List.copyOf(terms);
    }
}
