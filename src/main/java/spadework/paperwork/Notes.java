package spadework.paperwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.AcceptedStop;

/** Findings in words. */
final class Notes {
    private Notes() {}

    /** Findings about the work, for the crew. */
    static List<Note> forCrew(Dossier dossier) {
        return dossier.findings().stream().map(finding -> note(dossier, finding)).toList();
    }

    /** Every finding, for the contractor. */
    static List<Note> all(Dossier dossier) {
        return Stream.concat(dossier.contractFindings().stream(), dossier.findings().stream())
                .sorted(Comparator.comparing(Finding::severity))
                .map(finding -> note(dossier, finding))
                .toList();
    }

    /** The findings that concern the homeowner, in the homeowner's words; the same words only once. */
    static List<Note> forHomeowner(Dossier dossier) {
        List<Note> notes = new ArrayList<>();
        for (Finding finding : dossier.findings()) {
            dossier.phrases().homeowner(finding).ifPresent(text -> {
                if (notes.stream().noneMatch(note -> note.what().equals(text))) {
                    notes.add(note(dossier, finding, text, ""));
                }
            });
        }
        return notes;
    }

    private static Note note(Dossier dossier, Finding finding) {
        return note(dossier, finding, dossier.phrases().what(finding), dossier.phrases().action(finding));
    }

    private static Note note(Dossier dossier, Finding finding, String what, String action) {
        return new Note(
                finding.id(),
                finding.severity().name().toLowerCase(Locale.ROOT),
                finding.about(),
                what,
                action,
                finding.citation(),
                finding.severity() == Severity.STOP ? accepted(dossier, finding) : "");
    }

    private static String accepted(Dossier dossier, Finding finding) {
        Optional<AcceptedStop> accepted = dossier.job().acceptedStops().stream()
                .filter(stop -> stop.finding().equals(finding.id()) && stop.about().equals(finding.about()))
                .findFirst();
        return accepted
                .map(stop -> dossier.terms()
                        .get("accepted", "by", stop.by(), "on", Dates.words(stop.on()), "why", stop.why()))
                .orElse("");
    }
}
