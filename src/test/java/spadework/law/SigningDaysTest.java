// SPDX-License-Identifier: Apache-2.0
package spadework.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.intake.law.StateRuleBook;

/**
 * Two hundred signing days a state, of ten years, against a calendar that is written here anew, day by day: 16 CFR
 * 429.0(f) with 5 USC 6103(a) for the holidays, the days of each state as gathered (reading status in the rule packs),
 * state holidays from memory. The last day is the latest of the federal and the state's.
 */
class SigningDaysTest {
    private static final int DAYS = 200;
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final StateRuleBook RULES = StateRuleBook.bundled();

    /** Easter Sundays as published calendars have them (from memory). */
    private static final Set<LocalDate> EASTERS = new TreeSet<>(List.of(
            LocalDate.of(2026, 4, 5),
            LocalDate.of(2027, 3, 28),
            LocalDate.of(2028, 4, 16),
            LocalDate.of(2029, 4, 1),
            LocalDate.of(2030, 4, 21),
            LocalDate.of(2031, 4, 13),
            LocalDate.of(2032, 3, 28),
            LocalDate.of(2033, 4, 17),
            LocalDate.of(2034, 4, 9),
            LocalDate.of(2035, 3, 25),
            LocalDate.of(2036, 4, 13)));

    private static final Map<String, Predicate<LocalDate>> STATE_DAYS = Map.ofEntries(
            Map.entry("CA", day -> on(day, 3, 31)),
            Map.entry("CT", day -> on(day, 2, 12) || isGoodFriday(day)),
            Map.entry("FL", SigningDaysTest::isAfterThanksgiving),
            Map.entry("IL", day -> on(day, 2, 12)),
            Map.entry("MA", day -> nth(day, Month.APRIL, DayOfWeek.MONDAY, 3)),
            Map.entry("NC", day -> isGoodFriday(day) || isAfterThanksgiving(day)),
            Map.entry("NJ", day -> isGoodFriday(day) || isElectionDay(day)),
            Map.entry("NY", day -> on(day, 2, 12) || isElectionDay(day)),
            Map.entry("TX", SigningDaysTest::isAfterThanksgiving),
            Map.entry("VA", SigningDaysTest::isAfterThanksgiving),
            Map.entry("WA", SigningDaysTest::isAfterThanksgiving));

    private static boolean on(LocalDate day, int month, int date) {
        return day.getMonthValue() == month && day.getDayOfMonth() == date;
    }

    private static boolean nth(LocalDate day, Month month, DayOfWeek weekday, int n) {
        return day.getMonth() == month && day.getDayOfWeek() == weekday && (day.getDayOfMonth() - 1) / 7 + 1 == n;
    }

    private static boolean isGoodFriday(LocalDate day) {
        return EASTERS.contains(day.plusDays(2));
    }

    private static boolean isAfterThanksgiving(LocalDate day) {
        return nth(day.minusDays(1), Month.NOVEMBER, DayOfWeek.THURSDAY, 4);
    }

    /** The Tuesday after the first Monday of November. */
    private static boolean isElectionDay(LocalDate day) {
        return nth(day.minusDays(1), Month.NOVEMBER, DayOfWeek.MONDAY, 1);
    }

    private static boolean isFixedFederal(LocalDate day) {
        return on(day, 1, 1) || on(day, 6, 19) || on(day, 7, 4) || on(day, 11, 11) || on(day, 12, 25);
    }

    private static boolean isFederal(LocalDate day) {
        return isFixedFederal(day)
                || nth(day, Month.JANUARY, DayOfWeek.MONDAY, 3)
                || nth(day, Month.FEBRUARY, DayOfWeek.MONDAY, 3)
                || (day.getMonth() == Month.MAY
                        && day.getDayOfWeek() == DayOfWeek.MONDAY
                        && day.plusDays(7).getMonth() == Month.JUNE)
                || nth(day, Month.SEPTEMBER, DayOfWeek.MONDAY, 1)
                || nth(day, Month.OCTOBER, DayOfWeek.MONDAY, 2)
                || nth(day, Month.NOVEMBER, DayOfWeek.THURSDAY, 4);
    }

    /** Friday before a Saturday, Monday after a Sunday. */
    private static boolean isBesideOne(LocalDate day, Predicate<LocalDate> holiday) {
        return (day.getDayOfWeek() == DayOfWeek.FRIDAY && holiday.test(day.plusDays(1)))
                || (day.getDayOfWeek() == DayOfWeek.MONDAY && holiday.test(day.minusDays(1)));
    }

    private static boolean federalCounts(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SUNDAY
                && !isFederal(day)
                && !isBesideOne(day, SigningDaysTest::isFixedFederal);
    }

    /** Md. Com. Law 14-301(b): nine named holidays on their own day, no M. L. King's, no Juneteenth. */
    private static boolean marylandCounts(LocalDate day) {
        boolean named = isFederal(day) && !nth(day, Month.JANUARY, DayOfWeek.MONDAY, 3) && !on(day, 6, 19);
        return day.getDayOfWeek() != DayOfWeek.SUNDAY && !named;
    }

    private static LocalDate after(LocalDate start, int days, Predicate<LocalDate> counts) {
        LocalDate day = start;
        int left = days;
        while (left > 0) {
            day = day.plusDays(1);
            left -= counts.test(day) ? 1 : 0;
        }
        return day;
    }

    private static Predicate<LocalDate> counting(String state) {
        Predicate<LocalDate> own = STATE_DAYS.getOrDefault(state, day -> false);
        Predicate<LocalDate> weekday = state.equals("MD")
                ? SigningDaysTest::marylandCounts
                : day -> day.getDayOfWeek() != DayOfWeek.SATURDAY && federalCounts(day);
        return weekday.and(day -> !own.test(day) && !isBesideOne(day, own));
    }

    @ParameterizedTest(name = "{0}: {1} business days, {2} from 65")
    @CsvSource({
        "CA, 3, 5",
        "CT, 3, 3",
        "FL, 3, 3",
        "IL, 3, 3",
        "MA, 3, 3",
        "MD, 5, 7",
        "NC, 3, 3",
        "NJ, 3, 3",
        "NY, 3, 3",
        "OH, 3, 3",
        "PA, 3, 3",
        "TX, 3, 3",
        "VA, 3, 3",
        "WA, 3, 3"
    })
    void lastDayIsTheLatestOfFederalAndStateOnTwoHundredDays(String state, int days, int senior) {
        Random random = new Random(state.hashCode());
        StateRules rules = RULES.find(state).orElseThrow();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < DAYS; i++) {
            LocalDate signed = FIRST.plusDays(random.nextInt(3650));
            LocalDate received = signed.plusDays(random.nextInt(4) == 0 ? random.nextInt(9) : 0);
            Optional<Integer> age = List.of(
                            Optional.of(40), Optional.of(64), Optional.of(65), Optional.<Integer>empty())
                    .get(random.nextInt(4));
            boolean old = age.map(years -> years >= 65).orElse(true);
            LocalDate federal = after(signed, 3, SigningDaysTest::federalCounts);
            LocalDate own = after(received, old ? senior : days, counting(state));
            LocalDate expected = federal.isAfter(own) ? federal : own;
            LocalDate found = Cancellation.of(
                            new Cancellation.Signed(signed, Optional.of(received), age, Optional.empty()),
                            new HouseLaw(StateRuleBook.bundled().federal(), Optional.of(rules)))
                    .lastDay();
            if (!found.equals(expected)) {
                wrong.add(signed + ", received " + received + ", age " + age + ": " + found + " and not " + expected);
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** Cal. BPC 7159 as AB 1327 has it: seven business days for repairs after a declared disaster, at any age. */
    @ParameterizedTest
    @CsvSource({"40, 7", "65, 7", ", 7"})
    void afterADisasterCaliforniaHasSevenDaysOnTwoHundredDays(Integer age, int days) {
        Random random = new Random(13);
        for (int i = 0; i < DAYS; i++) {
            LocalDate signed = FIRST.plusDays(random.nextInt(3650));
            assertThat(Cancellation.of(
                                    new Cancellation.Signed(
                                            signed, Optional.empty(), Optional.ofNullable(age), Optional.of(true)),
                                    RULES.at("CA"))
                            .lastDay())
                    .isEqualTo(after(signed, days, counting("CA")));
        }
    }

    /** A state without a pack has the federal floor. */
    @Test
    void withoutAPackTheFederalDayStands() {
        Random random = new Random(7);
        for (int i = 0; i < DAYS; i++) {
            LocalDate signed = FIRST.plusDays(random.nextInt(3650));
            assertThat(Cancellation.of(
                                    new Cancellation.Signed(
                                            signed, Optional.empty(), Optional.of(70), Optional.empty()),
                                    RULES.at("WY"))
                            .lastDay())
                    .isEqualTo(after(signed, 3, SigningDaysTest::federalCounts));
        }
    }

    /** 16 CFR 429.1(g): ten business days after receipt, holidays on their own day alone. */
    @Test
    void refundDayIsTheTenthBusinessDay() {
        Random random = new Random(11);
        for (int i = 0; i < DAYS; i++) {
            LocalDate came = FIRST.plusDays(random.nextInt(3650));
            assertThat(Cancellation.refundBy(came))
                    .isEqualTo(after(came, 10, day -> day.getDayOfWeek() != DayOfWeek.SUNDAY && !isFederal(day)));
        }
    }
}
