// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Place;
import spadework.office.reply.FindingLines;
import spadework.office.reply.Reply;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.warranty.Claim;
import spadework.warranty.ClaimRules;
import spadework.warranty.ClaimStep;
import spadework.warranty.OwnerTerms;
import spadework.warranty.Warranty;

/** Writes claims down: what was seen, what was found, what came of it. */
public final class Claims {
    private Claims() {}

    /** Writes down a new claim under a number of its own. */
    public static Reply open(Path job, ClaimInput asked, LocalDate today) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        return open(reading, reading.only().stream().toList(), asked, today);
    }

    /** The same on one of several warranties, by any of its certificates. */
    public static Reply open(Path job, String certificate, ClaimInput asked, LocalDate today) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        return open(reading, reading.meant(certificate).stream().toList(), asked, today);
    }

    private static Reply open(WarrantyReading reading, List<Warranty> meant, ClaimInput asked, LocalDate today)
            throws IOException {
        if (meant.isEmpty() || !reading.wrong().isEmpty()) {
            return reading.refused();
        }
        if (!asked.faults(today).isEmpty()) {
            return Reply.refused(asked.faults(today));
        }
        Warranty warranty = meant.get(0);
        ClaimStep step = ClaimRules.inItsWords(warranty, asked.step().on(warranty.number()));
        List<Fault> faults = ClaimRules.faults(warranty, new Claim("", List.of(step)));
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        Entry entry = Register.of(reading.folder())
                .issue(
                        DocumentKind.CLAIM,
                        warranty.job(),
                        step.on(),
                        (number, mark) -> Issue.of(Map.of(), step.facts()));
        return described(
                reading, warranty, new Claim(entry.number().orElseThrow().text(), List.of(step)));
    }

    /** Adds what became of a claim. */
    public static Reply add(Path job, String number, ClaimInput asked, LocalDate today) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        Optional<Claim> before = reading.book().claim(number);
        Optional<Warranty> on =
                before.flatMap(claim -> claim.last(ClaimStep::certificate)).flatMap(reading.book()::current);
        if (!reading.wrong().isEmpty()) {
            return reading.refused();
        }
        if (before.isEmpty() || on.isEmpty()) {
            return Reply.refused(List.of(unknown(reading, number)));
        }
        if (!asked.faults(today).isEmpty()) {
            return Reply.refused(asked.faults(today));
        }
        ClaimStep step = ClaimRules.inItsWords(on.get(), asked.step());
        List<Fault> faults = ClaimRules.faults(on.get(), before.get().and(step));
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        Register.of(reading.folder())
                .append(step.on(), Event.CLAIM, DocumentNumber.of(number).orElseThrow(), step.facts());
        return described(reading, on.get(), before.get().and(step));
    }

    private static Fault unknown(WarrantyReading reading, String number) {
        List<String> numbers =
                reading.book().claims().stream().map(Claim::number).toList();
        return new Fault(
                Place.ofFile("--number"),
                "\"" + number + "\"",
                numbers.isEmpty() ? "no number: this job has no claim" : String.join(", ", numbers),
                "give the number of a claim of this job, or say --seen for a new one");
    }

    private static String next(OwnerTerms terms, Claim claim) {
        return claim.last(ClaimStep::inspected)
                .map(looked -> "say in writing what was found by " + ClaimRules.replyDay(looked, terms.findingDays()))
                .orElseGet(() -> "answer by " + ClaimRules.replyDay(claim.opened(), terms.replyDays()) + ", look by "
                        + ClaimRules.replyDay(claim.opened(), terms.visitDays()));
    }

    private static Reply described(WarrantyReading reading, Warranty warranty, Claim claim) {
        List<String> lines = new ArrayList<>(WarrantyText.of(claim));
        List<Finding> findings = new ArrayList<>(ClaimRules.findings(warranty, claim));
        findings.addAll(ClaimRules.before(warranty, claim, reading.book().claims(warranty)));
        lines.addAll(FindingLines.bundled().described(findings));
        if (claim.decided().isEmpty()) {
            lines.add(next(warranty.terms(), claim));
        }
        return Reply.done(lines);
    }
}
