// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.company.Company;
import spadework.company.Insurance;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.law.CoverKind;
import spadework.law.HouseLaw;
import spadework.law.LeastCover;
import spadework.law.ReadStatus;
import spadework.law.StateRules;
import spadework.money.Dollars;

/**
 * Whether the insurance and the license that the contract prints hold: on every day of the work, and for as much as the
 * state of the house asks. What nobody said is told, never passed over.
 */
final class CoverChecks {
    private static final String PRACTICE = "common practice, no source";

    private CoverChecks() {}

    /** What there is to say of a contract of that price. */
    static List<Finding> of(Job job, Company company, HouseLaw law, Dollars price) {
        List<Finding> found = new ArrayList<>(limits(job, company.insurance(), law, price));
        found.addAll(ends(job, "insurance", company.insurance().until()));
        Optional<LocalDate> licensed = company.license().until();
        licensed.ifPresent(last -> found.addAll(ends(job, "license", last)));
        if (licensed.isEmpty()) {
            Map<String, String> which = Map.of(
                    "license",
                    company.license().label() + " " + company.license().number());
            found.add(new Finding("license-end-unsaid", Severity.ADVISE, state(job), which, PRACTICE));
        }
        return found;
    }

    private static List<Finding> limits(Job job, Insurance insurance, HouseLaw law, Dollars price) {
        List<LeastCover> known = law.state().map(StateRules::insurance).orElse(List.of());
        if (known.isEmpty()) {
            return List.of(new Finding("insurance-least-unknown", Severity.ADVISE, state(job), Map.of(), PRACTICE));
        }
        List<LeastCover> asked =
                known.stream().filter(least -> least.reaches(price)).toList();
        List<Finding> found = new ArrayList<>();
        for (boolean ofWork : new boolean[] {false, true}) {
            List<LeastCover> least = asked.stream()
                    .filter(one -> ofWork == (one.cover() == CoverKind.IMPROPER_WORK))
                    .toList();
            held(job, insurance, ofWork, least).ifPresent(found::add);
        }
        return found;
    }

    /** One limit bears all that one occurrence may bring, so that it is held against their sum. */
    private static Optional<Finding> held(Job job, Insurance insurance, boolean ofWork, List<LeastCover> asked) {
        Optional<Dollars> has = ofWork ? insurance.improperWork() : insurance.eachOccurrence();
        Dollars least = Dollars.total(asked.stream().map(LeastCover::least).toList());
        if (has.map(limit -> !limit.isLessThan(least)).orElse(least.isZero())) {
            return Optional.empty();
        }
        String parts = asked.stream().map(LeastCover::text).collect(Collectors.joining(" and "));
        Map<String, String> values = Map.of(
                "least", least.text(),
                "parts", parts,
                "has", has.map(Dollars::text).orElse("nothing said"));
        String cite = asked.stream().map(CoverChecks::cited).distinct().collect(Collectors.joining("; "));
        String id = (ofWork ? "improper-work" : "insurance") + (has.isPresent() ? "-below-least" : "-limit-unsaid");
        return Optional.of(new Finding(id, Severity.MUST, state(job), values, cite));
    }

    private static List<Finding> ends(Job job, String which, LocalDate last) {
        LocalDate signed = job.agreement()
                .signing()
                .flatMap(signing -> signing.sale().on())
                .orElse(job.issued());
        LocalDate done = job.schedule().latestFinish();
        if (last.isBefore(signed)) {
            return List.of(ended(job, which + "-ended", Map.of("last", last.toString(), "signed", signed.toString())));
        }
        if (last.isBefore(done)) {
            return List.of(ended(job, which + "-ends-early", Map.of("last", last.toString(), "done", done.toString())));
        }
        return List.of();
    }

    private static Finding ended(Job job, String id, Map<String, String> values) {
        return new Finding(id, Severity.MUST, state(job), values, PRACTICE);
    }

    private static String cited(LeastCover least) {
        return least.citation()
                + (least.status().equals("R") ? "" : " (" + ReadStatus.words(least.status()) + "; not verified)");
    }

    private static String state(Job job) {
        return job.site().address().state();
    }
}
