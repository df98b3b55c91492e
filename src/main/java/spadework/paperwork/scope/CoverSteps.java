// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Job;
import spadework.job.LocateTicket;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;

/** What is done before anybody digs. The engineer, where one is due, comes first. */
final class CoverSteps {
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
        texts.add(StepKind.PRIVATE_LINES, "", List.of());
        if (texts.isSold(StepKind.PROTECT) || !job.protection().isEmpty()) {
            List<StepEvidence> evidence = new ArrayList<>();
            List<String> how =
                    job.protection().isEmpty() ? List.of(texts.text("scope.protect.usual")) : job.protection();
            evidence.add(StepEvidence.photo(texts.text("scope.photo.before")));
            how.forEach(one -> evidence.add(StepEvidence.done(one)));
            texts.add(StepKind.PROTECT, "", evidence);
        }
        texts.sold(StepKind.SET_UP, "");
        texts.sold(
                StepKind.PLANTS_OUT,
                "",
                "count",
                Integer.toString(job.restoration().plants()));
        texts.sold(StepKind.CONCRETE_OUT, "");
        return texts.with(StepPage.COVER);
    }
}
