// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.law.Cancellation;
import spadework.law.Deadline;
import spadework.law.HouseLaw;
import spadework.law.StateRules;

/** Until when a contract signed at home may be canceled. */
public final class CancelFigure {
    private static final String FTC = "16 CFR 429.0(a), 429.1";

    private CancelFigure() {}

    /**
     * What is known of the signing.
     *
     * @param on the day of signing
     * @param received the day on which the buyer got the signed copy, not before signing
     * @param age the oldest buyer's; unknown counts as old
     * @param afterDisaster whether the work repairs damage by a declared disaster; unknown counts as no
     */
    public record Known(
            LocalDate on, Optional<LocalDate> received, Optional<Integer> age, Optional<Boolean> afterDisaster) {}

    /**
     * Every rule counted its own way, and the latest day.
     *
     * @param state two letters
     * @param law the state's rules, where they were gathered
     * @throws WrongInputs if the copy was received before it was signed
     */
    public static Answer of(String state, HouseLaw law, Known signed) throws WrongInputs {
        Optional<LocalDate> before = signed.received().filter(day -> day.isBefore(signed.on()));
        if (before.isPresent()) {
            throw new WrongInputs(
                    "the copy received on " + before.get() + ", before signing on " + signed.on(),
                    "a day of receipt on or after the day of signing",
                    "check --signed and --received");
        }
        Cancellation cancellation = Cancellation.of(
                new Cancellation.Signed(signed.on(), signed.received(), signed.age(), signed.afterDisaster()), law);
        List<AnswerValue> values =
                new ArrayList<>(List.of(AnswerValue.of("last day to cancel", cancellation.lastDay())));
        List<Applied> applied = new ArrayList<>();
        for (Deadline deadline : cancellation.deadlines()) {
            values.add(AnswerValue.of("last day by the rule of " + deadline.rule(), deadline.last()));
            applied.add(applied(deadline));
        }
        return Answer.lawful(values, applied, findings(state, law, signed));
    }

    private static Applied applied(Deadline deadline) {
        String calculation = deadline.days() + " business days after " + deadline.from() + ", "
                + deadline.count().words() + ", until midnight";
        return Applied.day(deadline.rule(), calculation, deadline.last(), deadline.citation(), deadline.status());
    }

    private static List<Finding> findings(String state, HouseLaw law, Known signed) {
        List<Finding> found = new ArrayList<>();
        if (law.state().isEmpty()) {
            found.add(finding("cancel-state-unread", Severity.MUST, state, Map.of(), FTC));
            return found;
        }
        StateRules known = law.state().get();
        String cited = known.cancelCitation();
        if (known.cancel().fromReceipt() && signed.received().isEmpty()) {
            found.add(finding("cancel-from-receipt", Severity.MUST, state, Map.of(), cited));
        }
        known.cancel()
                .disasterDays()
                .filter(days -> signed.afterDisaster().isEmpty())
                .ifPresent(days -> found.add(
                        finding("disaster-unsaid", Severity.MUST, state, Map.of("days", days.toString()), cited)));
        if (known.cancel().seniorAge().isPresent() && signed.age().isEmpty()) {
            found.add(finding(
                    "cancel-age-unknown",
                    Severity.MUST,
                    state,
                    Map.of("age", known.cancel().seniorAge().get().toString()),
                    cited));
        }
        if (known.cancel().count().isEmpty()) {
            found.add(finding("cancel-count-unread", Severity.ADVISE, state, Map.of(), cited));
        }
        return found;
    }

    private static Finding finding(
            String id, Severity severity, String about, Map<String, String> values, String citation) {
        return new Finding(id, severity, about, values, citation);
    }
}
