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
import spadework.paperwork.PaperWords;

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
    public static AgreedParts of(PaperWords terms, Job job) {
        Agreement agreement = job.agreement();
        Optional<Accepted> accepted = agreement.accepted();
        return new AgreedParts(
                accepted.map(yes -> yes.options().stream()
                                .map(agreement::option)
                                .map(option -> new AgreedPart(option.label(), option.title(), terms.day(yes.on())))
                                .toList())
                        .orElse(List.of()),
                agreement.acceptedChanges().stream()
                        .map(change -> part(terms, change))
                        .toList(),
                lastChange(agreement).isPresent() ? terms.day(job.issued()) : "");
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
    public static List<AgreedPart> ofCoverage(PaperWords terms, Agreement agreement) {
        return agreement.acceptedChanges().stream()
                .filter(change -> movesCoverage(change.alteration()))
                .map(change -> part(terms, change))
                .toList();
    }

    private static AgreedPart part(PaperWords terms, Change change) {
        return new AgreedPart(
                Integer.toString(change.number()),
                change.title(),
                change.decision().map(Decision::on).map(terms::day).orElse(""));
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
