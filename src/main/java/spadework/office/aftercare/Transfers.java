// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.office.Office;
import spadework.office.reply.FindingLines;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.register.DocumentKind;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Guard;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.WarrantyBook;
import spadework.warranty.Claim;
import spadework.warranty.Handover;
import spadework.warranty.TransferRules;
import spadework.warranty.Warranty;

/** Passes warranties on to later owners. */
public final class Transfers {
    private Transfers() {}

    /** Passes a warranty on, if its terms allow that, under a certificate with a number of its own. */
    public static Reply transfer(Path job, TransferInput asked, TemplateFolder own, LocalDate today)
            throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        Optional<Warranty> meant = asked.certificate().map(reading::meant).orElseGet(reading::only);
        if (meant.isEmpty() || !reading.wrong().isEmpty()) {
            return reading.refused();
        }
        Warranty warranty = meant.get();
        List<Fault> faults = new ArrayList<>(TransferRules.faults(
                warranty, asked.on(), new Handover(asked.sold(), asked.waived(), asked.withoutSale())));
        ClaimInput.future("--on", asked.on(), today, faults);
        asked.sold().ifPresent(day -> ClaimInput.future("--sold", day, today, faults));
        if (warranty.parties().owners().equals(asked.to())) {
            faults.add(new Fault(
                    Place.ofFile("--to"),
                    String.join(" and ", asked.to()) + ", who has it already",
                    "a later owner",
                    "look at it with: warranty show"));
        }
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        List<Claim> claims = reading.book().claims(warranty);
        WarrantyPapers papers = new WarrantyPapers(Office.with(own));
        Entry entry = Register.of(reading.folder())
                .issue(
                        DocumentKind.CERTIFICATE,
                        Event.TRANSFERRED,
                        warranty.job(),
                        asked.on(),
                        stillCurrent(warranty),
                        (number, mark) -> {
                            Warranty passed = asked.withoutSale().isPresent()
                                    ? warranty.inherited(number.text(), asked.to())
                                    : warranty.reissued(number.text(), asked.to());
                            return new Issue(
                                    papers.certificate(job, passed, warranty.number(), claims, asked.on(), mark),
                                    Map.of(),
                                    facts(warranty, asked, claims),
                                    Optional.of(passed));
                        });
        List<String> lines = new ArrayList<>(WarrantyText.of(entry.warranty().orElseThrow(), asked.on()));
        lines.addAll(FindingLines.bundled().described(TransferRules.findings(warranty, claims)));
        entry.files()
                .forEach(file -> lines.add(reading.folder().resolve(file.name()).toString()));
        return Reply.done(lines);
    }

    private static Map<String, String> facts(Warranty warranty, TransferInput asked, List<Claim> claims) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("certificate", warranty.number());
        facts.put("from", String.join(" and ", warranty.parties().owners()));
        facts.put("to", String.join(" and ", asked.to()));
        asked.sold().ifPresent(day -> facts.put("sold", day.toString()));
        asked.withoutSale().ifPresent(how -> facts.put("withoutSale", how));
        asked.waived().ifPresent(why -> facts.put("waived", why));
        if (!claims.isEmpty()) {
            facts.put(
                    "claimsTold",
                    claims.stream()
                            .map(claim -> claim.number() + " " + claim.state().words())
                            .collect(Collectors.joining(", ")));
        }
        return facts;
    }

    /** Of two programs that pass the same warranty on at once, the second is refused. */
    private static Guard stillCurrent(Warranty warranty) {
        return entries -> {
            if (!WarrantyBook.of(entries).current().contains(warranty)) {
                throw new IllegalStateException(warranty.number() + " was passed on in the meantime");
            }
        };
    }
}
