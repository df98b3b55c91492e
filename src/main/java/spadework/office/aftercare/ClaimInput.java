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
        Optional<String> wall,
        Optional<LocalDate> inspected,
        Optional<String> covered,
        Optional<String> clause,
        Optional<String> remedy,
        Optional<String> cost,
        Optional<LocalDate> closed) {

    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
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

    /** The step, once there are no faults. */
    ClaimStep step() {
        return new ClaimStep(
                on,
                Optional.empty(),
                seen,
                wall,
                inspected,
                covered.map("yes"::equals),
                clause,
                remedy,
                cost.map(Dollars::of),
                closed);
    }
}
