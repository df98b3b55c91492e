// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Agreement;
import spadework.job.AsBuilt;
import spadework.job.Payment;
import spadework.job.Received;
import spadework.law.HouseLaw;
import spadework.law.PaymentEvent;
import spadework.measure.Percent;
import spadework.money.Dollars;
import spadework.pricing.Due;

/** Whether each payment waits for work that is done, and, where a state asks for it, for enough of it. */
public final class PaymentChecks {
    private PaymentChecks() {}

    static List<Finding> of(List<Payment> payments, List<Due> dues, String state, HouseLaw law) {
        List<Finding> found = new ArrayList<>();
        boolean byValue =
                law.state().map(rules -> rules.deposit().valueOfWork()).orElse(false);
        String cite =
                law.state().map(rules -> String.join("; ", rules.citations())).orElse("common practice, no source");
        Percent taken = Percent.ZERO;
        for (int i = 0; i < Math.min(payments.size(), dues.size()); i++) {
            Payment payment = payments.get(i);
            taken = taken.plus(payment.share());
            Map<String, String> values = Map.of(
                    "number", Integer.toString(i + 1),
                    "when", payment.when(),
                    "amount", dues.get(i).amount().text(),
                    "taken", taken.text(),
                    "done", payment.workDone().map(Percent::text).orElse(""));
            PaymentEvent event = PaymentEvent.of(payment.when(), payment.atSigning());
            if (!payment.atSigning() && event != PaymentEvent.WORK_DONE) {
                found.add(new Finding("payment-before-work", Severity.MUST, state, values, cite));
            } else if (byValue && !payment.atSigning() && i < payments.size() - 1) {
                byValue(payment, taken, state, values, cite, found);
            }
        }
        return found;
    }

    /** Whether the schedule says for every payment how much of the work is done by then, and none runs ahead of it. */
    static boolean areInStep(List<Payment> payments) {
        Percent taken = Percent.ZERO;
        for (int i = 0; i < payments.size() - 1; i++) {
            Payment payment = payments.get(i);
            taken = taken.plus(payment.share());
            Percent asked = taken;
            if (!payment.atSigning()
                    && payment.workDone().map(done -> done.compareTo(asked) < 0).orElse(true)) {
                return false;
            }
        }
        return true;
    }

    /** What falls due before any of the work is done. */
    static Dollars beforeWork(List<Due> dues) {
        return Dollars.total(dues.stream()
                .filter(due -> PaymentEvent.of(due.when(), due.atSigning()) != PaymentEvent.WORK_DONE)
                .map(Due::amount)
                .toList());
    }

    /**
     * What came in before the work began, held to what the contract lets fall due before it.
     *
     * @param due what falls due before any of the work is done
     */
    static List<Finding> received(Agreement agreement, Dollars due, String state) {
        Optional<LocalDate> start = agreement.asBuilt().map(AsBuilt::started);
        Dollars taken = Dollars.total(agreement.received().stream()
                .filter(one -> start.map(day -> one.on().isBefore(day)).orElse(true))
                .map(Received::amount)
                .toList());
        return agreement.accepted().isPresent() && due.isLessThan(taken)
                ? List.of(new Finding(
                        "paid-ahead",
                        Severity.MUST,
                        state,
                        Map.of("taken", taken.text(), "due", due.text()),
                        "the contract's own payments"))
                : List.of();
    }

    private static void byValue(
            Payment payment,
            Percent taken,
            String state,
            Map<String, String> values,
            String cite,
            List<Finding> found) {
        if (payment.workDone().isEmpty()) {
            found.add(new Finding("payment-value-unsaid", Severity.MUST, state, values, cite));
        } else if (payment.workDone().get().compareTo(taken) < 0) {
            found.add(new Finding("payment-ahead-of-work", Severity.STOP, state, values, cite));
        }
    }
}
