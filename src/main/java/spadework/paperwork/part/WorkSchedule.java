// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import spadework.job.Job;
import spadework.paperwork.PaperWords;

/**
 * When the work is done.
 *
 * @param startFrom the first day, in words
 * @param finishBy the last day, in words
 * @param workingDays how many days at the house
 * @param note what may move them; empty where nothing is said
 */
public record WorkSchedule(String startFrom, String finishBy, int workingDays, String note) {

    /** As the job has it. */
    public static WorkSchedule of(PaperWords terms, Job job) {
        return new WorkSchedule(
                terms.day(job.schedule().earliestStart()),
                terms.day(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                job.schedule().note());
    }
}
