// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Place;

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
        sold.filter(day -> isLate(warranty, on, day) && handover.waived().isEmpty())
                .ifPresent(day -> faults.add(new Fault(
                        Place.ofFile("--on"),
                        on + ", " + ChronoUnit.DAYS.between(day, on) + " days after the sale",
                        "at most " + warranty.terms().transferNoticeDays() + " days after it",
                        "the certificate does not bind you to it; to pass it on all the same, say why with --waive")));
        return faults;
    }

    private static boolean isLate(Warranty warranty, LocalDate on, LocalDate sold) {
        return ChronoUnit.DAYS.between(sold, on) > warranty.terms().transferNoticeDays();
    }
}
