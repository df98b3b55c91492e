// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spadework.money.Dollars;

/**
 * What is written down about a claim at one time. A claim is the sum of its steps.
 *
 * @param on the day it was made known or decided
 * @param certificate number of the certificate it is made on, in the first step
 * @param seen what the owner saw
 * @param since the day on which it was first seen; that of the claim where it is left out
 * @param wall label of the wall or run, when the owner names one
 * @param inspected the day somebody looked
 * @param covered whether the warranty covers it
 * @param clause what that rests on, in the certificate's words
 * @param cause what brought the water, where the claim is turned down
 * @param remedy what is done
 * @param cost what that cost the contractor
 * @param closed the day it was done with
 */
@RecordBuilder
public record ClaimStep(
        LocalDate on,
        Optional<String> certificate,
        Optional<String> seen,
        Optional<LocalDate> since,
        Optional<String> wall,
        Optional<LocalDate> inspected,
        Optional<Boolean> covered,
        Optional<String> clause,
        Optional<String> cause,
        Optional<String> remedy,
        Optional<Dollars> cost,
        Optional<LocalDate> closed)
        implements ClaimStepBuilder.With {

    /** The step as names and texts, in a fixed order; what is not known is left out. */
    public Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        certificate.ifPresent(value -> facts.put("certificate", value));
        seen.ifPresent(value -> facts.put("seen", value));
        since.ifPresent(value -> facts.put("since", value.toString()));
        wall.ifPresent(value -> facts.put("wall", value));
        inspected.ifPresent(value -> facts.put("inspected", value.toString()));
        covered.ifPresent(value -> facts.put("covered", value ? "yes" : "no"));
        clause.ifPresent(value -> facts.put("clause", value));
        cause.ifPresent(value -> facts.put("cause", value));
        remedy.ifPresent(value -> facts.put("remedy", value));
        cost.ifPresent(value -> facts.put("cost", value.plain()));
        closed.ifPresent(value -> facts.put("closed", value.toString()));
        return facts;
    }

    /**
     * Reads what {@link #facts()} wrote.
     *
     * @throws RuntimeException if a date or an amount among them cannot be read
     */
    public static ClaimStep of(LocalDate on, Map<String, String> facts) {
        return new ClaimStep(
                on,
                Optional.ofNullable(facts.get("certificate")),
                Optional.ofNullable(facts.get("seen")),
                Optional.ofNullable(facts.get("since")).map(LocalDate::parse),
                Optional.ofNullable(facts.get("wall")),
                Optional.ofNullable(facts.get("inspected")).map(LocalDate::parse),
                Optional.ofNullable(facts.get("covered")).map("yes"::equals),
                Optional.ofNullable(facts.get("clause")),
                Optional.ofNullable(facts.get("cause")),
                Optional.ofNullable(facts.get("remedy")),
                Optional.ofNullable(facts.get("cost")).map(Dollars::of),
                Optional.ofNullable(facts.get("closed")).map(LocalDate::parse));
    }

    /** The same, made on a certificate. */
    public ClaimStep on(String number) {
        return withCertificate(Optional.of(number));
    }

    /** The same with another wording of the clause. */
    ClaimStep withClause(String words) {
        return withClause(Optional.of(words));
    }
}
