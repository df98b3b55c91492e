// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.money.Dollars;
import spadework.warranty.ClaimStep;

/**
 * What is to be written down about a claim, as it was typed.
 *
 * @param covered {@code yes} or {@code no}
 * @param cost dollars, as {@code 1250.00}
 */
public record ClaimInput(
        LocalDate on,
        Optional<String> seen,
        Optional<LocalDate> since,
        Optional<String> wall,
        Optional<LocalDate> inspected,
        Optional<String> covered,
        Optional<String> clause,
        Optional<String> cause,
        Optional<String> remedy,
        Optional<String> cost,
        Optional<LocalDate> closed) {

    /** What cannot be read or cannot have happened by that day. */
    List<Fault> faults(LocalDate today) {
        List<Fault> faults = new ArrayList<>();
        future("--on", on, today, faults);
        since.ifPresent(day -> future("--since", day, today, faults));
        inspected.ifPresent(day -> future("--inspected", day, today, faults));
        closed.ifPresent(day -> future("--closed", day, today, faults));
        covered.filter(text -> !text.equals("yes") && !text.equals("no"))
                .ifPresent(text -> faults.add(
                        new Fault(Place.ofFile("--covered"), "\"" + text + "\"", "yes, no", "say one of them")));
        cost.filter(text -> !text.matches("\\d{1,9}(\\.\\d\\d)?"))
                .ifPresent(text -> faults.add(new Fault(
                        Place.ofFile("--cost"),
                        "\"" + text + "\"",
                        "dollars and cents without a sign, as 1250.00",
                        "write the amount so")));
        return faults;
    }

    static void future(String flag, LocalDate day, LocalDate today, List<Fault> faults) {
        if (day.isAfter(today)) {
            faults.add(new Fault(
                    Place.ofFile(flag),
                    day + ", a day that has not come",
                    today + " or earlier",
                    "give the day on which it was"));
        }
    }

    /** The step, once there are no faults. */
    ClaimStep step() {
        return new ClaimStep(
                on,
                Optional.empty(),
                seen,
                since,
                wall,
                inspected,
                covered.map("yes"::equals),
                clause,
                cause,
                remedy,
                cost.map(Dollars::of),
                closed);
    }
}
