// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.paperwork.PrintedDates;

/**
 * The options and change orders that the agreed work holds.
 *
 * @param replaces the day of the papers that the contract names, in words, where later change orders took their place;
 *     else empty
 */
public record AgreedParts(List<AgreedPart> options, List<AgreedPart> changes, String replaces) {
    /** The work as proposed. */
    public static final AgreedParts NONE = new AgreedParts(List.of(), List.of(), "");

    public AgreedParts {
        options = List.copyOf(options);
        changes = List.copyOf(changes);
    }

    /** What the agreed work of a job holds. */
    public static AgreedParts of(Job job) {
        Agreement agreement = job.agreement();
        Optional<Accepted> accepted = agreement.accepted();
        return new AgreedParts(
                accepted.map(yes -> yes.options().stream()
                                .map(agreement::option)
                                .map(option ->
                                        new AgreedPart(option.label(), option.title(), PrintedDates.words(yes.on())))
                                .toList())
                        .orElse(List.of()),
                agreement.acceptedChanges().stream().map(AgreedParts::part).toList(),
                lastChange(agreement).isPresent() ? PrintedDates.words(job.issued()) : "");
    }

    /** The day of a paper of the agreed work: that of the last change order that is in it, else the proposal's. */
    public static LocalDate day(Job job) {
        return lastChange(job.agreement()).orElse(job.issued());
    }

    private static Optional<LocalDate> lastChange(Agreement agreement) {
        return agreement.acceptedChanges().stream()
                .flatMap(change -> change.decision().stream())
                .map(Decision::on)
                .max(LocalDate::compareTo);
    }

    /** The change orders that moved what a warranty covers: walls, their finish, pipes. */
    public static List<AgreedPart> ofCoverage(Agreement agreement) {
        return agreement.acceptedChanges().stream()
                .filter(change -> movesCoverage(change.alteration()))
                .map(AgreedParts::part)
                .toList();
    }

    private static AgreedPart part(Change change) {
        return new AgreedPart(
                Integer.toString(change.number()),
                change.title(),
                change.decision().map(Decision::on).map(PrintedDates::words).orElse(""));
    }

    private static boolean movesCoverage(Alteration alteration) {
        return !(alteration.walls().isEmpty()
                && alteration.finishes().isEmpty()
                && alteration.drains().isEmpty()
                && alteration.mains().isEmpty()
                && alteration.roofLines().isEmpty()
                && alteration.takenAway().walls().isEmpty()
                && alteration.takenAway().pipes().isEmpty());
    }
}
