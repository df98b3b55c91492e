// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.draft.Assumptions;
import spadework.draft.Draft;
import spadework.draft.Pointer;
import spadework.form.kit.Messages;
import spadework.form.page.HousePlan.Spot;
import spadework.form.page.HousePlan.Stretch;
import spadework.form.session.JobSession;
import spadework.measure.Length;
import spadework.office.Bid;

/**
 * What is put into the plan of a job: the tool that is taken up, the mark along the outline, the length that is typed,
 * and what a click or Enter does with them.
 */
final class PlanInput {
    private final JobSession session;
    private final Consumer<Integer> chosen;
    private final Runnable changed;
    private PlanTool tool = PlanTool.WALL;
    private HousePlan plan = HousePlan.of(Draft.empty());
    private int selected = -1;
    private double mark;
    private String typed = "";
    private Consumer<PlanTool> toolWatcher = now -> {};

    /**
     * @param chosen told which wall is chosen, by its row
     * @param changed run whenever something looks otherwise than before
     */
    PlanInput(JobSession session, Consumer<Integer> chosen, Runnable changed) {
        this.session = session;
        this.chosen = chosen;
        this.changed = changed;
    }

    /** Tells which tool is taken up. */
    void onTool(Consumer<PlanTool> watcher) {
        toolWatcher = watcher;
    }

    void use(PlanTool now) {
        tool = now;
        toolWatcher.accept(now);
        changed.run();
    }

    /** The wall that is chosen, by its row. */
    int selected() {
        return selected;
    }

    void choose(int row) {
        selected = row;
        chosen.accept(row);
        showDraft();
    }

    void showDraft() {
        Draft job = session.assumed().map(Assumptions::filled).orElse(session.draft());
        // What is typed counts before the office has answered to it.
        plan = HousePlan.of(session.assumed().isPresent() ? seen(job, session.draft()) : session.draft());
        if (selected >= session.draft().rows("/walls")) {
            selected = -1;
        }
        changed.run();
    }

    /** The walls and the mark in words. */
    String description() {
        StringBuilder says = new StringBuilder();
        for (Stretch wall : plan.walls()) {
            says.append(Messages.of(
                    "plan.wall",
                    wall.label(),
                    HousePlan.SIDES.get(wall.side()),
                    Length.ofFeet(plan.inFile(wall)).text(),
                    Length.ofFeet(wall.length()).text()));
        }
        int side = plan.side(mark);
        says.append(Messages.of(
                "plan.mark",
                HousePlan.SIDES.get(side),
                Length.ofFeet(plan.wrapped(mark) - plan.start(side)).text()));
        return says.toString();
    }

    private static Draft seen(Draft assumed, Draft written) {
        Draft made = assumed;
        for (String place : new String[] {"/walls", "/site/house/eastWest", "/site/house/northSouth"}) {
            if (!place.equals("/walls")) {
                made = written.shown(place).isEmpty() ? made : made.typed(place, written.shown(place));
            }
        }
        for (int i = 0; i < written.rows("/walls"); i++) {
            for (String key : new String[] {"/label", "/faces", "/from", "/length"}) {
                String place = Pointer.of("/walls", i) + key;
                String says = written.shown(place);
                made = i < made.rows("/walls") && !says.isEmpty() ? made.typed(place, says) : made;
            }
        }
        return made;
    }

    /** Moves the mark along the outline. */
    void move(int feet) {
        int side = plan.side(mark);
        double next = plan.wrapped(mark) + feet;
        mark = plan.wrapped(Math.round(next * 2) / 2.0);
        if (plan.side(mark) != side) {
            mark = plan.start(feet > 0 ? plan.side(mark) : side);
        }
        plan.at(mark).ifPresent(wall -> choose(wall.row()));
        showDraft();
    }

    /** To the next corner of the house or end of a wall. */
    void jump(int way) {
        double best = way > 0 ? plan.around() : -1;
        double at = plan.wrapped(mark);
        for (int side = 0; side < HousePlan.SIDES.size(); side++) {
            best = nearer(best, plan.start(side), at, way);
        }
        for (Stretch wall : plan.walls()) {
            best = nearer(best, plan.start(wall.side()) + wall.from(), at, way);
            best = nearer(best, plan.start(wall.side()) + wall.from() + wall.length(), at, way);
        }
        mark = plan.wrapped(best < 0 ? plan.start(HousePlan.SIDES.size() - 1) : best);
        showDraft();
    }

    private static double nearer(double best, double hold, double at, int way) {
        boolean ahead = way > 0 ? hold > at + 0.01 && hold < best : hold < at - 0.01 && hold > best;
        return ahead ? hold : best;
    }

    /** Takes a key: a digit of a length, or the letter of a tool. */
    void type(char key) {
        boolean measure = Character.isDigit(key) || (!typed.isEmpty() && " '\"./".indexOf(key) >= 0);
        if (measure) {
            typed += key;
            changed.run();
        } else if (key == KeyEvent.VK_BACK_SPACE && !typed.isEmpty()) {
            typed = typed.substring(0, typed.length() - 1);
            changed.run();
        } else {
            PlanTool.of(key).ifPresent(this::use);
        }
    }

    /** Digs as far from the mark as was typed; with nothing typed, does at the mark what a click would. */
    void take() {
        Optional<Double> feet = HousePlan.typed(typed);
        int side = plan.side(mark);
        double from = plan.wrapped(mark) - plan.start(side);
        if (feet.isPresent() && tool == PlanTool.WALL) {
            dig(side, from, Math.min(plan.length(side), from + feet.get()));
            mark = plan.wrapped(mark + feet.get());
        } else if (feet.isPresent()) {
            act(plan.spot(side, from, feet.get()));
        } else {
            act(plan.spot(mark));
        }
        typed = "";
        showDraft();
    }

    /** Forgets what was typed. */
    void cancel() {
        typed = "";
        showDraft();
    }

    /** Takes the chosen wall out of the job. */
    void remove() {
        if (selected >= 0) {
            session.edit(session.draft().without(Pointer.of("/walls", selected)));
            choose(-1);
        }
    }

    /** Digs along a side, if it is worth a wall. */
    void dig(int side, double from, double to) {
        if (Math.abs(to - from) >= 0.5) {
            Draft before = session.draft();
            Draft dug = plan.dug(before, side, from, to);
            session.edit(dug);
            plan = HousePlan.of(dug);
            plan.walls().stream()
                    .filter(wall -> wall.side() == side && Math.abs(wall.from() - Math.min(from, to)) < 0.05)
                    .findFirst()
                    .ifPresent(wall -> choose(wall.row()));
        }
    }

    /** Moves the end of a wall that is there. */
    void place(Stretch wall) {
        session.edit(plan.placed(session.draft(), wall));
        choose(wall.row());
    }

    /** Puts the mark somewhere along the outline. */
    void markAt(double along) {
        mark = along;
    }

    /** What a click does at a point of the plan. */
    void act(Spot point) {
        double along = plan.nearest(point);
        Optional<Stretch> wall = plan.at(along);
        Draft draft = session.draft();
        switch (tool) {
            case WALL -> {
                int side = plan.side(along);
                if (wall.isPresent()) {
                    choose(wall.get().row());
                } else {
                    double on = plan.wrapped(along) - plan.start(side);
                    dig(side, free(side, on, -1), free(side, on, 1));
                }
            }
            case DRAIN -> wall.ifPresent(one -> session.edit(HousePlan.drained(draft, one.label())));
            case DOWNSPOUT -> session.edit(plan.downspout(draft, along));
            case TREE -> session.edit(plan.beside(draft, "tree", point));
            case LOT_LINE -> session.edit(plan.beside(draft, "property line", point));
            case OUTLET -> session.edit(plan.outlet(draft, point));
        }
        showDraft();
    }

    /** How far a side is free of walls from a place on. */
    private double free(int side, double on, int way) {
        double end = way > 0 ? plan.length(side) : 0;
        for (Stretch wall : plan.walls()) {
            double edge = way > 0 ? wall.from() : wall.from() + wall.length();
            boolean between = wall.side() == side && (way > 0 ? edge >= on && edge < end : edge <= on && edge > end);
            end = between ? edge : end;
        }
        return end;
    }

    HousePlan plan() {
        return plan;
    }

    /** The job as the office last understood it; none before its first answer. */
    Optional<Bid> bid() {
        return session.bid();
    }

    Draft draft() {
        return session.draft();
    }

    PlanTool tool() {
        return tool;
    }

    String typed() {
        return typed;
    }

    double mark() {
        return mark;
    }
}
