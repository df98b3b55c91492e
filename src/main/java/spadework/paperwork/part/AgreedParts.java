// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.List;
import java.util.Optional;
import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.job.Decision;
import spadework.paperwork.PrintedDates;

/** The options and change orders that the agreed work holds. */
public record AgreedParts(List<AgreedPart> options, List<AgreedPart> changes) {
    /** The work as proposed. */
    public static final AgreedParts NONE = new AgreedParts(List.of(), List.of());

    public AgreedParts {
        options = List.copyOf(options);
        changes = List.copyOf(changes);
    }

    public static AgreedParts of(Agreement agreement) {
        Optional<Accepted> accepted = agreement.accepted();
        return new AgreedParts(
                accepted.map(yes -> yes.options().stream()
                                .map(agreement::option)
                                .map(option ->
                                        new AgreedPart(option.label(), option.title(), PrintedDates.words(yes.on())))
                                .toList())
                        .orElse(List.of()),
                agreement.acceptedChanges().stream().map(AgreedParts::part).toList());
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
