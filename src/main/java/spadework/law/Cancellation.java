// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Until when a contract signed at home may be canceled: every rule counted its own way, and the latest of them. */
public record Cancellation(List<Deadline> deadlines) {
    /** Business days of 16 CFR 429.1. */
    public static final int FEDERAL_DAYS = 3;

    private static final int REFUND_DAYS = 10;

    public Cancellation {
        deadlines = List.copyOf(deadlines);
    }

    /**
     * How a contract was signed.
     *
     * @param on the day of signing
     * @param received the day on which the buyer got the signed copy, where it was not that day. The state's days then
     *     start there, whether or not its law says so: that never shortens the right
     * @param oldestAge the buyer's age, of several buyers the oldest's; unknown counts as old
     * @param afterDisaster whether the work repairs damage by a declared disaster; unknown counts as no
     */
    public record Signed(
            LocalDate on, Optional<LocalDate> received, Optional<Integer> oldestAge, Optional<Boolean> afterDisaster) {

        /** By a buyer who got the signed copy at signing and whose age nobody wrote down. */
        public static Signed on(LocalDate day) {
            return new Signed(day, Optional.empty(), Optional.empty(), Optional.empty());
        }

        private LocalDate start() {
            return received.filter(day -> day.isAfter(on)).orElse(on);
        }

        /** The business days that a rule gives this buyer. */
        public int days(CancelRule rule) {
            int byAge = oldestAge.map(rule::daysFor).orElseGet(rule::daysForUnknownAge);
            return afterDisaster.orElse(false) ? rule.daysAfterDisaster(byAge) : byAge;
        }
    }

    /** Counts every rule that fits. */
    public static Cancellation of(Signed signed, HouseLaw law) {
        List<Deadline> deadlines = new ArrayList<>();
        deadlines.add(new Deadline(
                "US-FTC",
                signed.on(),
                FEDERAL_DAYS,
                DayCount.FEDERAL_AND_OBSERVED,
                DayCount.FEDERAL_AND_OBSERVED.lastDay(signed.on(), FEDERAL_DAYS),
                "16 CFR 429.0(f), 429.1",
                "R"));
        law.state().ifPresent(rules -> deadlines.add(of(signed.start(), rules, signed.days(rules.cancel()))));
        return new Cancellation(deadlines);
    }

    private static Deadline of(LocalDate start, StateRules rules, int days) {
        CancelRule rule = rules.cancel();
        return new Deadline(
                rules.state(),
                start,
                days,
                rule.counted(),
                rule.counted().lastDay(start, days, rule.holidays()),
                rules.cancelCitation(),
                rule.status());
    }

    /** The day that is printed: the latest. */
    public LocalDate lastDay() {
        return deadlines.stream()
                .map(Deadline::last)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * The last day to give back what was paid: ten business days after a notice of cancellation was received, that day
     * not counted (16 CFR 429.1(g)). Days on which holidays are observed count, so that it is never too late.
     */
    public static LocalDate refundBy(LocalDate noticeReceived) {
        return DayCount.FEDERAL.lastDay(noticeReceived, REFUND_DAYS);
    }
}
