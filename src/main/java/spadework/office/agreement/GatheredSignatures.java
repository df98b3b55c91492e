// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.job.ElectronicConsent;
import spadework.job.Job;
import spadework.job.Owners;
import spadework.office.Outcome;
import spadework.office.records.JobRecords;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Issue;
import spadework.register.Register;

/** The signatures on one paper, one by one as they come in. Nothing is agreed until the last of them is there. */
public final class GatheredSignatures {
    private static final String BY = "by";
    private static final String CHOSEN = "chosen";

    private final DocumentNumber paper;
    private final List<Entry> before;

    private GatheredSignatures(DocumentNumber paper, List<Entry> before) {
        this.paper = paper;
        this.before = before;
    }

    /** Those that are registered on a paper. */
    static GatheredSignatures on(JobRecords records, DocumentNumber paper) {
        return new GatheredSignatures(paper, records.signatures(paper));
    }

    /**
     * Why one more signature cannot stand beside those that are there.
     *
     * @param chosen what the signers agree to beside the paper, as the options taken
     */
    List<String> reasons(SignatureInput yes, String chosen) {
        List<String> reasons = new ArrayList<>();
        for (Entry entry : before) {
            String who = entry.fact(BY).orElse("");
            for (String name : who.split("; ")) {
                if (yes.by().stream().anyMatch(one -> Owners.isSame(one, name))) {
                    reasons.add(name + " signed " + paper.text() + " already, on " + entry.on() + ".");
                }
            }
            if (!entry.on().equals(yes.on())) {
                reasons.add(who + " signed " + paper.text() + " on " + entry.on() + ", and this signature is of "
                        + yes.on() + ". One day stands on the paper: correct the day, or print it for the later day,"
                        + " issue it again and have everybody sign that.");
            }
            String other = entry.fact(CHOSEN).orElse("");
            if (!other.equals(chosen)) {
                reasons.add(who + " signed with " + words(other) + ", and this signature is with " + words(chosen)
                        + ". All sign the same.");
            }
        }
        return reasons;
    }

    private static String words(String chosen) {
        return chosen.isEmpty() ? "no option" : chosen;
    }

    /** Who has still to sign once this signature is in. */
    List<String> missing(Job job, SignatureInput yes) {
        List<String> signed = new ArrayList<>(yes.by());
        before.forEach(entry -> signed.addAll(List.of(entry.fact(BY).orElse("").split("; "))));
        return Owners.missing(job, signed);
    }

    /** All signatures, the one that came last with them. */
    List<SignatureInput> with(SignatureInput yes) {
        List<SignatureInput> all =
                new ArrayList<>(before.stream().map(GatheredSignatures::read).toList());
        all.add(yes);
        return all;
    }

    /** Registers one more of them while others are missing. */
    Outcome add(JobRecords records, Path file, SignatureInput yes, String chosen, List<String> missing)
            throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Signatures.keep(files, paper.text() + "-signature-" + (before.size() + 1), file, yes);
        Register.of(records.folder())
                .append(
                        yes.on(),
                        Event.SIGNATURE_RECEIVED,
                        paper,
                        OnceGuard.signed(paper, yes.by()),
                        Issue.of(Map.of(), files, facts(yes, chosen)));
        return new Outcome.Gathered(paper.text(), yes.by(), missing);
    }

    private static Map<String, String> facts(SignatureInput yes, String chosen) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put(BY, String.join("; ", yes.by()));
        facts.put(CHOSEN, chosen);
        yes.file().ifPresent(name -> facts.put("file", name));
        yes.typed().ifPresent(name -> facts.put("typed", name));
        yes.consent().whole().ifPresent(consent -> {
            facts.put("given", consent.given().toString());
            facts.put("disclosed", consent.disclosed().toString());
            facts.put("paper", consent.paper());
            facts.put("withdrawal", consent.withdrawal());
            facts.put("equipment", consent.equipment());
            facts.put("access", consent.access());
        });
        return facts;
    }

    private static SignatureInput read(Entry entry) {
        return new SignatureInput(
                entry.on(),
                List.of(entry.fact(BY).orElse("").split("; ")),
                entry.fact("file"),
                entry.fact("typed"),
                entry.fact("given")
                        .map(given -> ConsentInput.of(new ElectronicConsent(
                                LocalDate.parse(given),
                                LocalDate.parse(entry.fact("disclosed").orElseThrow()),
                                entry.fact("paper").orElseThrow(),
                                entry.fact("withdrawal").orElseThrow(),
                                entry.fact("equipment").orElseThrow(),
                                entry.fact("access").orElseThrow())))
                        .orElse(ConsentInput.NONE));
    }
}
