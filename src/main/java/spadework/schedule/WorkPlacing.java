// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.Company;
import spadework.company.WorkCalendar;
import spadework.job.Job;
import spadework.job.WaitFor;
import spadework.job.Waits;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.pricebook.Section;
import spadework.pricebook.WorkStep;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/** From the lines of a takeoff to the days on which they are done. */
final class WorkPlacing {
    /** Steps for which nobody is on site. */
    private static final Set<WorkStep> ELSEWHERE = Set.of(WorkStep.PERMIT, WorkStep.ENGINEER);

    /** What a machine digs; the one that moves the heaps aside, as a skid steer, is none. */
    private static final Set<Measure> MACHINE_DUG =
            EnumSet.of(Measure.DIG_MACHINE, Measure.DIG_WALL_SIDE, Measure.DIG_BULK, Measure.PIPE_TRENCH);

    private final Job job;
    private final WorkCalendar calendar;
    private final Waits waits;
    private final Map<Key, Double> hours = new LinkedHashMap<>();
    private final Set<String> diggers = new LinkedHashSet<>();
    private boolean engineer;
    private boolean permit;
    private BigDecimal shielded = BigDecimal.ZERO;
    private final Set<String> shieldedPlaces = new LinkedHashSet<>();
    private boolean pumped;

    private record Key(Stage stage, String place, String crew, Optional<String> machine) {}

    WorkPlacing(Job job, Company company, PriceBook book, Takeoff takeoff) {
        this.job = job;
        calendar = company.calendar().orElse(WorkCalendar.USUAL);
        waits = job.schedule().waits().orElse(calendar.waits());
        for (TakeoffLine line : takeoff.lines()) {
            LineItem item = book.get(line.code());
            if (line.quantity().signum() != 0
                    && item.follows().filter(Measure::isByDays).isEmpty()) {
                take(company, item, line);
            }
        }
    }

    private void take(Company company, LineItem item, TakeoffLine line) {
        WorkStep step = Steps.of(item, line.section().kind());
        engineer |= step == WorkStep.ENGINEER;
        permit |= step == WorkStep.PERMIT;
        if (item.follows().equals(Optional.of(Measure.SHIELD))) {
            shielded = shielded.add(line.quantity());
            shieldedPlaces.add(place(Stage.DIG, line));
        }
        pumped |= step == WorkStep.DEWATER;
        if (item.labor().isEmpty() || ELSEWHERE.contains(step)) {
            return;
        }
        Labor labor = item.labor().get();
        boolean digs = item.follows().filter(MACHINE_DUG::contains).isPresent()
                || labor.digs().isPresent();
        labor.machine()
                .filter(machine -> digs || company.diggers().containsKey(machine))
                .ifPresent(diggers::add);
        double of = CrewHours.number(company, labor, line.quantity(), line.stretches());
        Stage stage = Steps.stage(job, item, line);
        hours.merge(new Key(stage, place(stage, line), labor.crew(), labor.machine()), of, Double::sum);
    }

    private static String place(Stage stage, TakeoffLine line) {
        return stage.isAtWall() && line.section().kind() == Section.WALL
                ? line.section().label()
                : "";
    }

    CrewCalendar calendar() {
        int crews = job.schedule().crews().orElse(calendar.crews());
        double overtime = job.schedule().overtime().doubleValue();
        double day = calendar.hoursPerDay().doubleValue() + overtime;
        DayRun run = new DayRun(calendar, LocalDate.EPOCH, day, crews);
        LocalDate start = run.working(start(run));
        run = new DayRun(calendar, start, day, crews);
        List<Activity> activities = activities();
        List<WorkDay> days = run.work(activities, new WaitsOf(run, waits, permit, activities)::of);
        int worked = (int) days.stream().filter(one -> !one.isIdle()).count();
        int weather = (int) Math.ceil(calendar.weather().fraction().doubleValue() * worked - 1e-9);
        LocalDate last = days.isEmpty() ? start : days.get(days.size() - 1).date();
        return new CrewCalendar(
                calendar,
                crews,
                day,
                overtime,
                waits,
                days,
                weather,
                start,
                run.after(last, weather),
                diggers,
                new Shields(shields(crews), shieldedPlaces),
                pumped);
    }

    /** Not before the job says, nor before lines are marked and, where one is due, the engineer has written. */
    private LocalDate start(DayRun run) {
        LocalDate ready = engineer ? run.after(job.issued(), waits.days(WaitFor.ENGINEER)) : job.issued();
        LocalDate marked = run.after(ready, waits.days(WaitFor.LOCATE));
        LocalDate asked = job.schedule().earliestStart();
        return asked.isBefore(marked) ? marked : asked;
    }

    /** One for each crew that works at a time, as far as there is trench for it. */
    private int shields(int crews) {
        double feet = shielded.doubleValue();
        return feet > 0 ? (int) Math.min(crews, Math.ceil(feet / CrewCalendar.SHIELD_FEET)) : 0;
    }

    /** In the order of the work; at each stage the walls as the takeoff has them, and last what is of no wall. */
    private List<Activity> activities() {
        Map<Stage, Map<String, List<Task>>> tasks = tasks();
        Set<String> places = new LinkedHashSet<>();
        hours.keySet().stream()
                .map(Key::place)
                .filter(place -> !place.isEmpty())
                .forEach(places::add);
        places.add("");
        List<Activity> activities = new ArrayList<>();
        tasks.forEach((stage, byPlace) -> places.stream()
                .filter(byPlace::containsKey)
                .forEach(place -> activities.add(new Activity(stage, place, byPlace.get(place)))));
        return activities;
    }

    /** By stage in the order of the work, and place. Soil is moved as it is dug, so the two go on together. */
    private Map<Stage, Map<String, List<Task>>> tasks() {
        Map<Stage, Map<String, List<Task>>> tasks = new EnumMap<>(Stage.class);
        hours.forEach((key, sum) -> {
            if (sum > 0) {
                tasks.computeIfAbsent(key.stage, stage -> new HashMap<>())
                        .computeIfAbsent(key.place, place -> new ArrayList<>())
                        .add(new Task(key.stage, key.place, key.crew, key.machine, sum));
            }
        });
        Map<String, List<Task>> moved = tasks.getOrDefault(Stage.MOVE_SOIL, new HashMap<>());
        tasks.getOrDefault(Stage.DIG, Map.of()).forEach((place, dug) -> {
            List<Task> along = moved.remove(place);
            dug.addAll(along == null ? List.of() : along);
        });
        return tasks;
    }
}
