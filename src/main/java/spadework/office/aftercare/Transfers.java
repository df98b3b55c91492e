// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.office.reply.FindingLines;
import spadework.office.reply.Reply;
import spadework.register.DocumentKind;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Guard;
import spadework.register.Issue;
import spadework.register.Register;
import spadework.register.WarrantyBook;
import spadework.warranty.TransferRules;
import spadework.warranty.Warranty;

/** Passes warranties on to later owners. */
public final class Transfers {
    private Transfers() {}

    /** Passes a warranty on, if its terms allow that, under a certificate with a number of its own. */
    public static Reply transfer(Path job, TransferInput asked, Optional<Path> templates) throws IOException {
        WarrantyReading reading = WarrantyReading.of(job);
        Optional<Warranty> meant = reading.meant(asked.certificate());
        if (meant.isEmpty() || !reading.wrong().isEmpty()) {
            return reading.refused();
        }
        Warranty warranty = meant.get();
        List<Fault> faults = TransferRules.faults(warranty, asked.on(), asked.sold(), asked.waived());
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        WarrantyPapers papers = new WarrantyPapers(templates);
        Entry entry = Register.of(reading.folder())
                .issue(
                        DocumentKind.CERTIFICATE,
                        Event.TRANSFERRED,
                        warranty.job(),
                        asked.on(),
                        stillCurrent(warranty),
                        (number, mark) -> {
                            Warranty passed = warranty.reissued(number.text(), asked.to());
                            return new Issue(
                                    papers.certificate(passed, warranty.number(), asked.on(), mark),
                                    Map.of(),
                                    facts(warranty, asked),
                                    Optional.of(passed));
                        });
        List<String> lines = new ArrayList<>(WarrantyText.of(entry.warranty().orElseThrow(), asked.on()));
        entry.files()
                .forEach(file -> lines.add(reading.folder().resolve(file.name()).toString()));
        lines.addAll(FindingLines.bundled().told(TransferRules.findings(warranty, asked.sold())));
        return Reply.done(lines);
    }

    private static Map<String, String> facts(Warranty warranty, TransferInput asked) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("certificate", warranty.number());
        facts.put("from", String.join(" and ", warranty.parties().owners()));
        facts.put("to", String.join(" and ", asked.to()));
        asked.sold().ifPresent(day -> facts.put("sold", day.toString()));
        asked.waived().ifPresent(why -> facts.put("waived", why));
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
