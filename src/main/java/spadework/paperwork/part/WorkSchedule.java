// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import spadework.job.Job;
import spadework.law.DayCount;
import spadework.paperwork.PaperWords;

/**
 * When the work is done.
 *
 * @param startFrom the first day, in words
 * @param finishBy the last day, in words
 * @param workingDays how many days at the house
 * @param reserve whether more working days lie between the two than it takes, Monday to Friday without federal
 *     holidays
 * @param note what may move them; empty where nothing is said
 */
public record WorkSchedule(String startFrom, String finishBy, int workingDays, boolean reserve, String note) {

    /** As the job has it. */
    public static WorkSchedule of(PaperWords terms, Job job) {
        return new WorkSchedule(
                terms.day(job.schedule().earliestStart()),
                terms.day(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                daysBetween(job) > job.schedule().workingDays(),
                job.schedule().note());
    }

    private static long daysBetween(Job job) {
        return job.schedule()
                .earliestStart()
                .datesUntil(job.schedule().latestFinish().plusDays(1))
                .filter(DayCount.MONDAY_TO_FRIDAY::counts)
                .count();
    }
}
