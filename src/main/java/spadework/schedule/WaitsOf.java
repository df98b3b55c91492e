// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.WaitFor;
import spadework.job.Waits;

/**
 * What the work at hand waits for: a washed wall dries before it is coated, and what covers the walls comes after the
 * coating has cured and, where there is a permit, the inspector has seen it.
 */
record WaitsOf(DayRun run, Waits waits, boolean permit, List<Activity> activities) {

    List<Wait> of(Activity activity) {
        List<Wait> found = new ArrayList<>();
        if (activity.stage() == Stage.COAT) {
            last(Stage.WASH, activity.place())
                    .ifPresent(washed -> cure(WaitFor.WALL_DRY, washed).ifPresent(found::add));
        }
        if (activity.stage().compareTo(Stage.DRAIN) >= 0) {
            Stream.of(Stage.COAT, Stage.PROTECT)
                    .flatMap(stage -> last(stage, "").stream())
                    .max(LocalDate::compareTo)
                    .ifPresent(coated -> {
                        cure(WaitFor.COATING_CURE, coated).ifPresent(found::add);
                        inspection(coated).ifPresent(found::add);
                    });
        }
        return found;
    }

    /** Whole days by the calendar lie between. */
    private Optional<Wait> cure(WaitFor what, LocalDate after) {
        int days = waits.days(what);
        return days > 0 ? Optional.of(new Wait(what, after.plusDays(1L + days))) : Optional.empty();
    }

    private Optional<Wait> inspection(LocalDate coated) {
        int days = waits.days(WaitFor.INSPECTION);
        return permit && days > 0
                ? Optional.of(new Wait(WaitFor.INSPECTION, run.after(coated, 1 + days)))
                : Optional.empty();
    }

    /** The last day of that stage at a wall, or at all walls. */
    private Optional<LocalDate> last(Stage stage, String place) {
        return activities.stream()
                .filter(activity -> activity.stage() == stage)
                .filter(activity -> place.isEmpty()
                        || activity.place().isEmpty()
                        || activity.place().equals(place))
                .map(Activity::lastDay)
                .flatMap(Optional::stream)
                .max(LocalDate::compareTo);
    }
}
