// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/**
 * What may still be written into a job after it was accepted: the agreement itself, photos, notes, who answers for a
 * stop, the locate ticket. Everything else was agreed and moves only by a change order.
 */
public final class AfterAcceptance {
    private AfterAcceptance() {}

    /** The job as it was accepted, with what was written since. */
    public static Job of(Job accepted, Job now) {
        return with(
                accepted,
                now.photos(),
                now.acceptedStops(),
                now.notes(),
                accepted.site().withTicketOf(now.site()),
                now.agreement());
    }

    /** Whether something that was agreed reads otherwise now. */
    public static boolean isMoved(Job accepted, Job now) {
        return !agreedPart(accepted).equals(agreedPart(now));
    }

    /** The part of a job that an acceptance agrees to, with the options that may be chosen from. */
    public static Job agreedPart(Job job) {
        Agreement options = new Agreement(
                Optional.empty(),
                job.agreement().options(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        return with(job, List.of(), List.of(), List.of(), job.site().withoutTicket(), options);
    }

    private static Job with(
            Job j, List<Photo> photos, List<AcceptedStop> stops, List<String> notes, Site site, Agreement agreement) {
        return new Job(
                j.head(),
                j.customer(),
                site,
                j.survey().withPhotos(photos),
                j.work(),
                j.pricing(),
                j.contractTerms(),
                stops,
                agreement,
                notes);
    }
}
