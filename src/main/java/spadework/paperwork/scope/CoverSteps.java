// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import spadework.job.Job;
import spadework.job.LocateTicket;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.FindingNote;

/** What is done before anybody digs. The engineer, where one is due, comes first. */
final class CoverSteps {
    /** Findings after which nobody knows how people get in. */
    private static final Set<String> OPEN = Set.of("way-in-shut", "way-in-front-door", "way-in-not-free");

    private CoverSteps() {}

    static List<ScopeStep> of(Dossier dossier, StepLines lines, List<FindingNote> notes) {
        Job job = dossier.job();
        StepTexts texts = new StepTexts(dossier, lines, "");
        boolean due = notes.stream().anyMatch(note -> note.id().startsWith("engineer-"));
        if (due || texts.isSold(StepKind.ENGINEER)) {
            texts.add(StepKind.ENGINEER, "", List.of(StepEvidence.figures(texts.text("scope.letter-of"), 1)));
        }
        texts.sold(StepKind.PERMIT, "");
        String ticket = job.site().locateTicket().map(LocateTicket::number).orElse("");
        texts.add(StepKind.LOCATE, ticket.isEmpty() ? ".open" : "", List.of(), "ticket", ticket);
        texts.add(StepKind.PRIVATE_LINES, texts.isSold(StepKind.PRIVATE_LINES) ? ".firm" : "", List.of());
        if (texts.isSold(StepKind.PROTECT) || !job.protection().isEmpty()) {
            List<StepEvidence> evidence = new ArrayList<>();
            List<String> how =
                    job.protection().isEmpty() ? List.of(texts.text("scope.protect.usual")) : job.protection();
            evidence.add(StepEvidence.photo(texts.text("scope.photo.before")));
            how.forEach(one -> evidence.add(StepEvidence.done(one)));
            texts.add(StepKind.PROTECT, "", evidence);
        }
        wayIn(job, texts, notes);
        texts.sold(StepKind.SET_UP, "");
        texts.sold(
                StepKind.PLANTS_OUT,
                "",
                "count",
                Integer.toString(job.restoration().plants()));
        texts.sold(StepKind.CONCRETE_OUT, "");
        return texts.with(StepPage.COVER);
    }

    /** The door that stays in use; nobody digs before it is known where the rules found that none may be left. */
    private static void wayIn(Job job, StepTexts texts, List<FindingNote> notes) {
        Set<String> ids = notes.stream().map(FindingNote::id).collect(Collectors.toSet());
        if (ids.stream().anyMatch(OPEN::contains)) {
            texts.add(StepKind.WAY_IN, ".open", List.of());
        } else if (ids.contains("way-in-unwritten")) {
            texts.add(StepKind.WAY_IN, "", List.of());
        } else {
            job.site()
                    .house()
                    .wayIn()
                    .ifPresent(way -> texts.add(
                            StepKind.WAY_IN, "." + PaperWords.key(way.by().name()), List.of(), "door", way.door()));
        }
    }
}
