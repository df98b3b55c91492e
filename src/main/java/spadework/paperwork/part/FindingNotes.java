// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.finding.Severity;
import spadework.job.AcceptedStop;
import spadework.paperwork.Dossier;

/** Findings in words. */
public final class FindingNotes {
    private FindingNotes() {}

    /** Findings about the work, for the crew. */
    public static List<FindingNote> forCrew(Dossier dossier) {
        return notes(dossier, dossier.findings().site(), finding -> Optional.empty());
    }

    /** Those findings, in the contractor's words. */
    public static List<FindingNote> of(Dossier dossier, List<Finding> findings) {
        return notes(dossier, findings, finding -> Optional.empty());
    }

    /** Every finding, for the contractor. */
    public static List<FindingNote> all(Dossier dossier) {
        return notes(
                dossier,
                Stream.concat(dossier.findings().contract().stream(), dossier.findings().site().stream())
                        .sorted(Comparator.comparing(Finding::severity))
                        .toList(),
                dossier.phrases()::paid);
    }

    /** The findings that concern the homeowner, in the homeowner's words; the same words only once. */
    public static List<FindingNote> forHomeowner(Dossier dossier) {
        return forHomeowner(dossier, dossier.findings().site());
    }

    /** Of these findings, those that concern the homeowner. */
    public static List<FindingNote> forHomeowner(Dossier dossier, List<Finding> findings) {
        List<FindingNote> notes = new ArrayList<>();
        for (FindingGroup group : FindingGroup.of(dossier, findings, "homeowner")) {
            FindingGroup described = group.in(dossier.terms());
            described
                    .text(dossier.phrases())
                    .or(() -> dossier.phrases().homeowner(described.finding()))
                    .filter(text -> notes.stream().noneMatch(note -> note.what().equals(text)))
                    .ifPresent(text -> notes.add(note(dossier, described, text, "")));
        }
        return notes;
    }

    /** A finding carries its ranges as "5 ft to 6 ft". */
    private static String ranges(Dossier dossier, String text) {
        return text.replaceAll("(?<=[\\w½¼¾]) to (?=\\d)", dossier.terms().get("between"));
    }

    /** @param paid what to add about the line item that pays for it */
    private static List<FindingNote> notes(
            Dossier dossier, List<Finding> findings, Function<Finding, Optional<String>> paid) {
        Phrases phrases = dossier.phrases();
        return FindingGroup.of(dossier, findings, "what").stream()
                .map(group -> group.in(dossier.terms()))
                .map(described -> note(
                        dossier,
                        described,
                        described.text(phrases).orElseGet(() -> phrases.what(described.finding())),
                        phrases.actionOnPaper(described.finding())
                                + paid.apply(described.finding())
                                        .map(words -> " " + words)
                                        .orElse("")))
                .toList();
    }

    private static FindingNote note(Dossier dossier, FindingGroup described, String what, String action) {
        Finding finding = described.finding();
        return new FindingNote(
                finding.id(),
                finding.severity().name().toLowerCase(Locale.ROOT),
                described.named(),
                described.labels(),
                ranges(dossier, what),
                ranges(dossier, action),
                finding.citation(),
                finding.severity() == Severity.STOP ? accepted(dossier, finding) : "");
    }

    private static String accepted(Dossier dossier, Finding finding) {
        Optional<AcceptedStop> accepted = dossier.job().acceptedStops().stream()
                .filter(stop ->
                        stop.finding().equals(finding.id()) && stop.about().equals(finding.about()))
                .findFirst();
        return accepted.map(stop -> dossier.terms()
                        .get("accepted", "by", stop.by(), "on", dossier.terms().day(stop.on()), "why", stop.why()))
                .orElse("");
    }
}
