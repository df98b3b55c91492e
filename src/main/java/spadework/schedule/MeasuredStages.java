// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.ArrayList;
import java.util.List;
import spadework.company.Company;
import spadework.job.Job;
import spadework.pricebook.PriceBook;

/**
 * A job's stages (proposed, with each option, after each change), each measured once: what an accepted change leads to
 * is where the next one starts. Stages are few and share most of their parts, so that comparing two is quicker than
 * hashing one. Not for several threads.
 */
public final class MeasuredStages {
    private final Company company;
    private final PriceBook book;
    private final List<Stage> known = new ArrayList<>();

    private record Stage(Job job, ScheduledTakeoff measured) {}

    /** @param book as this job uses it */
    public MeasuredStages(Company company, PriceBook book) {
        this.company = company;
        this.book = book;
    }

    public Company company() {
        return company;
    }

    public PriceBook book() {
        return book;
    }

    /** A stage with its days, measured when it is first asked for. */
    public ScheduledTakeoff of(Job job) {
        for (Stage stage : known) {
            if (stage.job.equals(job)) {
                return stage.measured;
            }
        }
        ScheduledTakeoff measured = ScheduledTakeoff.of(job, company, book);
        known.add(new Stage(job, measured));
        return measured;
    }
}
