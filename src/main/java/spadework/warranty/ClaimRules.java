// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Place;
import spadework.finding.Severity;

/** Holds a claim to the certificate it is made on. Whether something is covered is decided by people. */
public final class ClaimRules {
    private ClaimRules() {}

    /** What keeps a step from being written down. */
    public static List<Fault> faults(Warranty warranty, Claim with) {
        ClaimStep step = with.steps().get(with.steps().size() - 1);
        List<Fault> faults = new ArrayList<>();
        if (with.opened().isAfter(step.on())) {
            faults.add(fault("--on", step.on() + ", before the claim was made", with.opened() + " or later"));
        }
        step.inspected()
                .filter(day -> day.isAfter(step.on()))
                .ifPresent(day -> faults.add(
                        fault("--inspected", day + ", after the day of this entry", step.on() + " or earlier")));
        step.inspected()
                .filter(day -> day.isBefore(with.opened()))
                .ifPresent(day -> faults.add(
                        fault("--inspected", day + ", before the claim was made", with.opened() + " or later")));
        if (with.steps().size() == 1) {
            cover(warranty, step, faults);
        }
        step.closed()
                .filter(day -> day.isBefore(with.opened()))
                .ifPresent(day -> faults.add(
                        fault("--closed", day + ", before the claim was made", with.opened() + " or later")));
        if (step.closed().isPresent() && with.decided().isEmpty()) {
            faults.add(new Fault(
                    Place.ofFile("--closed"),
                    "a claim that nobody decided",
                    "closing a decided claim",
                    "say --covered yes or --covered no with it"));
        }
        step.cost()
                .filter(cost -> cost.isNegative())
                .ifPresent(cost -> faults.add(fault("--cost", cost.text(), "$0.00 or more")));
        if (!with.last(ClaimStep::covered).orElse(true)
                && with.last(ClaimStep::clause)
                        .flatMap(text -> clause(warranty, text))
                        .isEmpty()) {
            faults.add(new Fault(
                    Place.ofFile("--clause"),
                    with.last(ClaimStep::clause).map(text -> "\"" + text + "\"").orElse("no clause"),
                    String.join(" | ", clauses(warranty).toList()),
                    "a claim is turned down by what the certificate does not cover or by a duty of the owner, in the"
                            + " certificate's words; where none of them fits, it is covered"));
        }
        if (!with.last(ClaimStep::covered).orElse(true)
                && with.last(ClaimStep::cause).filter(text -> !text.isBlank()).isEmpty()) {
            boolean duty = with.last(ClaimStep::clause)
                    .filter(text -> warranty.terms().duties().stream()
                            .anyMatch(one -> plain(one).equals(plain(text))))
                    .isPresent();
            faults.add(new Fault(
                    Place.ofFile("--cause"),
                    duty ? "a missed duty alone" : "no cause",
                    duty ? "what the missed duty caused, as it was found" : "what brought the water, as it was found",
                    duty
                            ? "a missed duty turns a claim down only where it caused the leak: say with --cause how it"
                                    + " did; where it did not, the claim is covered"
                            : "say it with --cause, so that the owner can answer"));
        }
        return faults;
    }

    /** A claim is about something that was first seen while some part was in force. */
    private static void cover(Warranty warranty, ClaimStep step, List<Fault> faults) {
        LocalDate seen = step.since().orElse(step.on());
        step.since()
                .filter(day -> day.isAfter(step.on()))
                .ifPresent(day ->
                        faults.add(fault("--since", day + ", after the day of the claim", step.on() + " or earlier")));
        if (seen.isBefore(warranty.firstDay())) {
            faults.add(new Fault(
                    Place.ofFile(step.since().isPresent() ? "--since" : "--on"),
                    seen + ", before the warranty begins",
                    warranty.firstDay() + " or later",
                    "what was seen before the work was complete belongs to the work itself: mend it under the"
                            + " contract"));
        } else if (seen.isAfter(warranty.lastDay())) {
            faults.add(new Fault(
                    Place.ofFile(step.since().isPresent() ? "--since" : "--on"),
                    seen + ", after the last part ended",
                    warranty.lastDay() + " or earlier",
                    "ask since when it was seen and give that day with --since; what failed in the term counts. State"
                            + " law may reach further: ask counsel"));
        }
    }

    /** The step with its clause in the certificate's own words. */
    public static ClaimStep inItsWords(Warranty warranty, ClaimStep step) {
        return step.clause()
                .flatMap(text -> clause(warranty, text))
                .map(step::withClause)
                .orElse(step);
    }

    /** What has to be known about a claim as it stands. */
    public static List<Finding> findings(Warranty warranty, Claim claim) {
        List<Finding> findings = new ArrayList<>();
        String terms = "certificate " + warranty.number();
        late(warranty.terms(), claim, terms).forEach(findings::add);
        claim.last(ClaimStep::wall)
                .filter(label -> !isCovered(warranty, label))
                .ifPresent(label -> findings.add(new Finding(
                        "claim-elsewhere", Severity.ADVISE, claim.number(), Map.of("label", label), terms)));
        if (warranty.inForce(claim.opened()).isEmpty()) {
            findings.add(new Finding(
                    "claim-out-of-term",
                    Severity.ADVISE,
                    claim.number(),
                    Map.of(
                            "on",
                            claim.opened().toString(),
                            "last",
                            warranty.lastDay().toString()),
                    terms));
        }
        if (claim.state() == Claim.State.NOT_COVERED
                && claim.last(ClaimStep::inspected).isEmpty()) {
            findings.add(new Finding("claim-unseen", Severity.MUST, claim.number(), Map.of(), terms));
        }
        return findings;
    }

    /**
     * Claims that were turned down before at the same place: they decide nothing about this one.
     *
     * @param others the other claims on the same warranty, under any of its certificates
     */
    public static List<Finding> before(Warranty warranty, Claim claim, List<Claim> others) {
        return others.stream()
                .filter(other -> !other.number().equals(claim.number()) && TransferRules.isDenied(other))
                .filter(other -> isSamePlace(other, claim))
                .map(other -> new Finding(
                        "claim-denied-before",
                        Severity.MUST,
                        claim.number(),
                        Map.of(
                                "other", other.number(),
                                "clause", other.last(ClaimStep::clause).orElse("no line of it"),
                                "cause", other.last(ClaimStep::cause).orElse("not said")),
                        "certificate " + warranty.number()))
                .toList();
    }

    /** A claim that names no wall may be about any. */
    private static boolean isSamePlace(Claim one, Claim other) {
        Optional<String> here = one.last(ClaimStep::wall);
        Optional<String> there = other.last(ClaimStep::wall);
        return here.isEmpty() || there.isEmpty() || here.get().equalsIgnoreCase(there.get());
    }

    /**
     * The last day on which an answer is in time: working days from Monday to Friday after the day of the claim.
     * Holidays are counted, so that the day is never later than the owner may understand it.
     */
    public static LocalDate replyDay(LocalDate opened, int workingDays) {
        LocalDate day = opened;
        for (int counted = 0; counted < workingDays; ) {
            day = day.plusDays(1);
            if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                counted++;
            }
        }
        return day;
    }

    /** The promised days: to the look from the claim, to what was found in writing from the look. */
    private static List<Finding> late(OwnerTerms terms, Claim claim, String citation) {
        List<Finding> late = new ArrayList<>();
        LocalDate lookBy = replyDay(claim.opened(), terms.visitDays());
        Optional<LocalDate> look = claim.steps().stream()
                .flatMap(step -> step.inspected().stream())
                .min(Comparator.naturalOrder());
        look.filter(day -> day.isAfter(lookBy))
                .ifPresent(day -> late.add(late(
                        "claim-look-late", claim, Map.of("looked", day, "by", lookBy), terms.visitDays(), citation)));
        LocalDate writeBy = replyDay(look.orElse(lookBy), terms.findingDays());
        claim.decided()
                .filter(day -> day.isAfter(writeBy))
                .ifPresent(day -> late.add(late(
                        "claim-late", claim, Map.of("decided", day, "by", writeBy), terms.findingDays(), citation)));
        return late;
    }

    private static Finding late(String id, Claim claim, Map<String, LocalDate> dates, int promised, String citation) {
        Map<String, String> values = new TreeMap<>();
        dates.forEach((name, day) -> values.put(name, day.toString()));
        values.put("days", String.valueOf(promised));
        return new Finding(id, Severity.MUST, claim.number(), values, citation);
    }

    private static boolean isCovered(Warranty warranty, String label) {
        return Stream.concat(warranty.coverage().walls().stream(), warranty.coverage().runs().stream())
                .anyMatch(covered -> covered.label().equalsIgnoreCase(label));
    }

    private static Optional<String> clause(Warranty warranty, String text) {
        return clauses(warranty)
                .filter(clause -> plain(clause).equals(plain(text)))
                .findFirst();
    }

    private static Stream<String> clauses(Warranty warranty) {
        return Stream.concat(warranty.coverage().notCovered().stream(), warranty.terms().duties().stream());
    }

    private static String plain(String text) {
        return text.strip()
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("\\s+", " ")
                .replaceAll("\\.$", "");
    }

    private static Fault fault(String flag, String found, String allowed) {
        return new Fault(Place.ofFile(flag), found, allowed, "see the dates of the claim with: warranty show");
    }
}
