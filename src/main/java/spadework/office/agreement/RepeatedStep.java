// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.Owners;
import spadework.office.Outcome;

/** A step that was taken before, asked for once more: with the same facts it stands, with others it is refused. */
public final class RepeatedStep {
    private final String number;
    private final List<String> differences = new ArrayList<>();

    RepeatedStep(String number) {
        this.number = number;
    }

    /** Holds one fact to what was registered. */
    RepeatedStep fact(String what, String registered, String asked) {
        if (!registered.equals(asked)) {
            differences.add(what + " is " + said(registered) + " there, and " + said(asked) + " was asked for");
        }
        return this;
    }

    /** Who signed, as far as they are asked for: one of several may be named again. */
    static String among(List<String> signed, List<String> asked) {
        boolean known = !asked.isEmpty()
                && asked.stream().allMatch(name -> signed.stream().anyMatch(one -> Owners.isSame(one, name)));
        return String.join("; ", known ? asked : signed);
    }

    /** Labels in one order. */
    static String sorted(List<String> labels) {
        return String.join(", ", labels.stream().sorted().toList());
    }

    private static String said(String value) {
        return value.isEmpty() ? "nothing" : "\"" + value + "\"";
    }

    /** The refusal; empty where every fact is the same. */
    Optional<Outcome> refusal() {
        return differences.isEmpty()
                ? Optional.empty()
                : Optional.of(new Outcome.Refused(List.of(number + " is registered already, with other facts: "
                        + String.join("; ", differences)
                        + ". A step is taken once and what is registered stays: look at it with \"spadework register"
                        + " list\". What changes now is a change order.")));
    }
}
