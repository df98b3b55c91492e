// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tasks that go on together at one place; what is left of them shrinks as the days are filled. */
final class Activity {
    /** Rest of floating point, in hours. */
    private static final double NOTHING = 1e-9;

    private final Stage stage;
    private final String place;
    private final List<Task> tasks;
    private final double hours;
    private double left;
    private Optional<LocalDate> lastDay = Optional.empty();

    /** @param tasks in the order in which they are begun; each is done as far as the others are */
    Activity(Stage stage, String place, List<Task> tasks) {
        this.stage = stage;
        this.place = place;
        this.tasks = List.copyOf(tasks);
        hours = tasks.stream().mapToDouble(Task::hours).sum();
        left = hours;
    }

    Stage stage() {
        return stage;
    }

    String place() {
        return place;
    }

    boolean isDone() {
        return left <= NOTHING;
    }

    /** The last day on which something of it was done. */
    Optional<LocalDate> lastDay() {
        return lastDay;
    }

    boolean needs(Activity other) {
        return stage.needs(place, other.stage, other.place);
    }

    /**
     * Does as much of it as a day has room for.
     *
     * @param from hours of the day that are gone
     * @param room hours of the day that are left
     * @param crews that share the work
     * @return what was done, one after the other
     */
    List<DayPart> work(LocalDate day, double from, double room, int crews) {
        double take = Math.min(left, room * crews);
        double share = take / hours;
        List<DayPart> parts = new ArrayList<>();
        double at = from;
        for (Task task : tasks) {
            double of = task.hours() * share;
            parts.add(new DayPart(task.stage(), place, task.crew(), task.machine(), at, at + of / crews, of));
            at += of / crews;
        }
        left -= take;
        lastDay = Optional.of(day);
        return parts;
    }
}
