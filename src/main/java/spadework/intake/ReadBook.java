// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.List;
import java.util.Optional;
import spadework.company.Company;
import spadework.finding.Fault;
import spadework.pricebook.PriceBook;

/**
 * A price book that was read with the company beside it.
 *
 * @param company empty where there is none
 * @param book empty where the text is no JSON; not to be relied on where there are faults
 * @param faults of both files
 */
public record ReadBook(Optional<Company> company, Optional<PriceBook> book, List<Fault> faults) {

    public ReadBook {
        faults = List.copyOf(faults);
    }
}
