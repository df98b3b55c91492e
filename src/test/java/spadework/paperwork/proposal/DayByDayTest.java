// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.paperwork.Dossier;
import spadework.pricebook.WorkStep;
import spadework.samples.Samples;
import spadework.schedule.CrewCalendar;
import spadework.schedule.WorkDay;

/** What a homeowner reads day by day is the calendar of crews, and goes on in the order of the trade. */
class DayByDayTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+");

    /** Words of a row, and its step. */
    private static final Map<String, WorkStep> STEPS = Map.of(
            "We dig beside the wall", WorkStep.DIG,
            "We clean and repair the wall", WorkStep.PREPARE_WALL,
            "We lay the footing drain", WorkStep.DRAIN,
            "We fill the trench", WorkStep.BACKFILL,
            "We shape the ground", WorkStep.RESTORE);

    private static final List<String> ORDER = List.of(
            "We dig beside the wall",
            "We clean and repair the wall",
            "We lay the footing drain",
            "We fill the trench",
            "We shape the ground");

    @ParameterizedTest(name = "{0}")
    @MethodSource("spadework.samples.Samples#papered")
    void rowsAreTheCalendar(Path sample) {
        Dossier dossier = Samples.bid(sample).dossier();
        CrewCalendar calendar = CrewCalendar.of(dossier.job(), dossier.company(), dossier.book(), dossier.takeoff());
        DayByDay told = DayByDay.of(dossier);
        boolean fits = calendar.workingDays() <= dossier.job().schedule().workingDays();
        assertThat(told.rows().isEmpty()).isEqualTo(!fits);
        int last = 0;
        for (String words : told.rows().isEmpty() ? List.<String>of() : ORDER) {
            DayRow row = told.rows().stream()
                    .filter(one -> one.what().startsWith(words))
                    .findFirst()
                    .orElseThrow();
            List<Integer> days = calendar.days().stream()
                    .filter(day -> day.steps().contains(STEPS.get(words)))
                    .map(WorkDay::number)
                    .toList();
            assertThat(first(row)).as(words).isEqualTo(days.get(0)).isGreaterThanOrEqualTo(last);
            assertThat(end(row)).as(words).isEqualTo(days.get(days.size() - 1));
            last = end(row);
        }
    }

    private static int first(DayRow row) {
        Matcher number = NUMBER.matcher(row.days());
        assertThat(number.find()).isTrue();
        return Integer.parseInt(number.group());
    }

    private static int end(DayRow row) {
        return NUMBER.matcher(row.days())
                .results()
                .mapToInt(found -> Integer.parseInt(found.group()))
                .max()
                .getAsInt();
    }
}
