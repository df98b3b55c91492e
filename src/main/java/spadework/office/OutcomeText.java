// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.nio.file.Path;
import java.util.List;
import spadework.finding.Fault;

/**
 * What came of a step or of an order for documents, in the words that every way of asking for it shares.
 *
 * @param done whether what was asked for stands now
 * @param head the first sentence; empty for files alone
 * @param lines what belongs below it, one line each
 */
public record OutcomeText(boolean done, String head, List<String> lines) {

    public OutcomeText {
        lines = List.copyOf(lines);
    }

    /**
     * The words for an outcome.
     *
     * @param undone that nothing came of it, as "nothing was done"
     * @param answered where it is written who answers for a stop, as "in acceptedStops"
     */
    public static OutcomeText of(Outcome outcome, String undone, String answered) {
        if (outcome instanceof Outcome.Issued issued) {
            return new OutcomeText(true, issued.number(), texts(issued.files()));
        }
        if (outcome instanceof Outcome.Standing standing) {
            return new OutcomeText(
                    true, standing.number() + " stands: it was done before, with the same facts.", List.of());
        }
        if (outcome instanceof Outcome.Gathered gathered) {
            return new OutcomeText(
                    true,
                    gathered.number() + ": the signature of " + String.join(" and ", gathered.by())
                            + " is in. Still to sign: " + String.join(" and ", gathered.missing())
                            + ". Nothing is agreed until then.",
                    List.of());
        }
        if (outcome instanceof Outcome.Printed printed) {
            return new OutcomeText(true, "", texts(printed.files()));
        }
        if (outcome instanceof Outcome.Faulty faulty) {
            List<Fault> faults = faulty.faults();
            return new OutcomeText(
                    false,
                    undone + ". " + faults.size() + " to fix:",
                    faults.stream().map(Fault::text).toList());
        }
        if (outcome instanceof Outcome.Stopped stopped) {
            return new OutcomeText(
                    false, undone + ". Fix each stop, or write " + answered + " who answers for it:", stopped.stops());
        }
        return new OutcomeText(false, undone + ", for these reasons:", ((Outcome.Refused) outcome).reasons());
    }

    private static List<String> texts(List<Path> files) {
        return files.stream().map(Path::toString).toList();
    }
}
