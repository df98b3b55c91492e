// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import spadework.company.Company;
import spadework.job.Job;
import spadework.pricebook.PriceBook;

/** The price book as one job uses it: of its day, at its own costs, at the pace of the company's machines. */
public final class JobBook {
    private JobBook() {}

    /** The book for that job. */
    public static PriceBook of(PriceBook book, Company company, Job job) {
        return of(book, company, job, job.issued());
    }

    /** The same as a bid of another day would use it. */
    public static PriceBook of(PriceBook book, Company company, Job job, LocalDate on) {
        PriceBook then = book.on(on);
        return DigPace.paced(
                company.backfill().map(then::filledBy).orElse(then).changedBy(job.priceChanges()),
                company,
                job.site().soil().texture());
    }
}
