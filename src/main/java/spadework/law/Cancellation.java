package spadework.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Until when a contract signed at home may be cancelled: every rule counted its own way, and the latest of them. */
public record Cancellation(List<Deadline> deadlines) {
    /** Business days of 16 CFR 429.1. */
    public static final int FEDERAL_DAYS = 3;

    public Cancellation {
        deadlines = List.copyOf(deadlines);
    }

    /**
     * Counts every rule that fits.
     *
     * @param signed the day of signing, or of receiving the signed copy where the state counts from that
     * @param state the state's rules; empty where they were not gathered
     * @param age the buyer's age, of several buyers the oldest's; unknown counts as old
     */
    public static Cancellation of(LocalDate signed, Optional<StateRules> state, Optional<Integer> age) {
        List<Deadline> deadlines = new ArrayList<>();
        DayCount safe = DayCount.FEDERAL_AND_OBSERVED;
        deadlines.add(new Deadline(
                "US-FTC", FEDERAL_DAYS, safe, safe.lastDay(signed, FEDERAL_DAYS), "16 CFR 429.0(f), 429.1", "R"));
        state.ifPresent(rules -> {
            int days = rules.cancel().daysFor(age);
            DayCount count = rules.cancel().counted();
            deadlines.add(new Deadline(
                    rules.state(),
                    days,
                    count,
                    count.lastDay(signed, days),
                    String.join("; ", rules.citations()),
                    rules.cancel().status()));
        });
        return new Cancellation(deadlines);
    }

    /** The day that is printed: the latest. */
    public LocalDate lastDay() {
        return deadlines.stream().map(Deadline::last).max(Comparator.naturalOrder()).orElseThrow();
    }
}
