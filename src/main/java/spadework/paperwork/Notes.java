package spadework.paperwork;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.AcceptedStop;

/** Findings in words. */
final class Notes {
    private Notes() {}

    /** Findings about the work, for the crew. */
    static List<Note> forCrew(Dossier dossier) {
        return notes(dossier, dossier.findings());
    }

    /** Every finding, for the contractor. */
    static List<Note> all(Dossier dossier) {
        return notes(
                dossier,
                Stream.concat(dossier.contractFindings().stream(), dossier.findings().stream())
                        .sorted(Comparator.comparing(Finding::severity))
                        .toList());
    }

    /** The findings that concern the homeowner, in the homeowner's words; the same words only once. */
    static List<Note> forHomeowner(Dossier dossier) {
        List<Note> notes = new ArrayList<>();
        for (SameWords told : SameWords.of(dossier, dossier.findings(), "homeowner")) {
            told.text(dossier.phrases())
                    .or(() -> dossier.phrases().homeowner(told.finding()))
                    .filter(text -> notes.stream().noneMatch(note -> note.what().equals(text)))
                    .ifPresent(text -> notes.add(note(dossier, told, text, "")));
        }
        return notes;
    }

    private static List<Note> notes(Dossier dossier, List<Finding> findings) {
        Phrases phrases = dossier.phrases();
        return SameWords.of(dossier, findings, "what").stream()
                .map(told -> note(
                        dossier,
                        told,
                        told.text(phrases).orElseGet(() -> phrases.what(told.finding())),
                        phrases.action(told.finding())))
                .toList();
    }

    private static Note note(Dossier dossier, SameWords told, String what, String action) {
        Finding finding = told.finding();
        return new Note(
                finding.id(),
                finding.severity().name().toLowerCase(Locale.ROOT),
                told.about(),
                what,
                action,
                finding.citation(),
                finding.severity() == Severity.STOP ? accepted(dossier, finding) : "");
    }

    private static String accepted(Dossier dossier, Finding finding) {
        Optional<AcceptedStop> accepted = dossier.job().acceptedStops().stream()
                .filter(stop ->
                        stop.finding().equals(finding.id()) && stop.about().equals(finding.about()))
                .findFirst();
        return accepted.map(stop -> dossier.terms()
                        .get("accepted", "by", stop.by(), "on", Dates.words(stop.on()), "why", stop.why()))
                .orElse("");
    }
}
