// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;

/**
 * On what terms the work is offered.
 *
 * @param excluded what is not in the price, beside the company's own list
 * @param assumed what the price takes for granted
 * @param terms what is agreed on this job beside the company's own terms
 */
public record ContractTerms(
        List<String> excluded,
        List<String> assumed,
        List<Payment> payments,
        WarrantyTerms warranty,
        List<String> terms) {

    public ContractTerms {
        excluded = List.copyOf(excluded);
        assumed = List.copyOf(assumed);
        payments = List.copyOf(payments);
        terms = List.copyOf(terms);
    }
}
