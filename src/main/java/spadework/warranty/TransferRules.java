// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Place;
import spadework.finding.Severity;

/** Holds a transfer to a later owner to the warranty's own terms. */
public final class TransferRules {
    private TransferRules() {}

    /**
     * What keeps a warranty from passing on.
     *
     * @param on the day the new owner's notice came
     * @param handover what is said of the sale; inheritance and divorce count as no transfer and have none
     */
    public static List<Fault> faults(Warranty warranty, LocalDate on, Handover handover) {
        Optional<LocalDate> sold = handover.sold();
        Optional<String> withoutSale = handover.withoutSale();
        List<Fault> faults = new ArrayList<>();
        if (sold.isPresent() == withoutSale.isPresent()) {
            faults.add(new Fault(
                    Place.ofFile("--sold"),
                    sold.isPresent() ? "a sale, and that there was none" : "no day of the sale",
                    "the day of the sale; or --unsold with inheritance or divorce",
                    "ask the new owner for it: the days of notice are counted from there"));
        }
        if (warranty.terms().transfers() < 1 && withoutSale.isEmpty()) {
            faults.add(new Fault(
                    Place.ofFile(warranty.number()),
                    "no transfer left",
                    "as many transfers as the first certificate gives",
                    "leave it with its owner; the law may give a later owner rights all the same: ask counsel"));
        }
        if (on.isAfter(warranty.lastDay())) {
            faults.add(new Fault(
                    Place.ofFile("--on"),
                    on + ", after the last part ended on " + warranty.lastDay(),
                    "a day on which some part is in force",
                    "there is nothing left to pass on"));
        }
        sold.filter(day -> day.isAfter(on))
                .ifPresent(day -> faults.add(new Fault(
                        Place.ofFile("--sold"),
                        day + ", after the notice of " + on,
                        on + " or earlier",
                        "give the day of the sale")));
        sold.filter(day -> day.isBefore(warranty.firstDay()))
                .ifPresent(day -> faults.add(new Fault(
                        Place.ofFile("--sold"),
                        day + ", before the warranty began on " + warranty.firstDay(),
                        warranty.firstDay() + " or later",
                        "give the day of the sale; a house sold while the work went on is a matter of the contract:"
                                + " ask counsel")));
        sold.filter(day -> isLate(warranty, on, day) && handover.waived().isEmpty())
                .ifPresent(day -> faults.add(new Fault(
                        Place.ofFile("--on"),
                        on + ", " + ChronoUnit.DAYS.between(day, on) + " days after the sale",
                        "at most " + warranty.terms().transferNoticeDays() + " days after it",
                        "the certificate does not bind you to it; to pass it on all the same, say why with --waive")));
        return faults;
    }

    /**
     * What has to be known of claims when a warranty passes on. A claim that was turned down keeps nobody from passing
     * it on and takes nothing out of it: what was answered to one owner binds no other. It is told with the line of
     * the certificate and the cause that it rested on, for whoever buys the house asks what was wrong with it. An open
     * claim goes on with the warranty.
     */
    public static List<Finding> findings(Warranty warranty, List<Claim> claims) {
        String terms = "certificate " + warranty.number();
        List<Finding> findings = new ArrayList<>();
        for (Claim claim : claims) {
            if (isDenied(claim)) {
                findings.add(new Finding(
                        "transfer-claim-denied",
                        Severity.MUST,
                        claim.number(),
                        Map.of(
                                "on", claim.decided().orElse(claim.opened()).toString(),
                                "clause", claim.last(ClaimStep::clause).orElse("no line of it"),
                                "cause", claim.last(ClaimStep::cause).orElse("not said")),
                        terms));
            } else if (claim.state() != Claim.State.CLOSED) {
                findings.add(new Finding(
                        "transfer-claim-open",
                        Severity.MUST,
                        claim.number(),
                        Map.of("state", claim.state().words()),
                        terms));
            }
        }
        return findings;
    }

    /** Whether a claim was turned down, be it closed since or not. */
    static boolean isDenied(Claim claim) {
        return !claim.last(ClaimStep::covered).orElse(true);
    }

    private static boolean isLate(Warranty warranty, LocalDate on, LocalDate sold) {
        return ChronoUnit.DAYS.between(sold, on) > warranty.terms().transferNoticeDays();
    }
}
