// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import java.util.EnumSet;
import java.util.Set;
import spadework.job.Job;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.pricebook.WorkStep;
import spadework.takeoff.TakeoffLine;

/** When a line item is done: as it says itself, else by its measure, else by the section it is priced in. */
public final class Steps {
    /** What is laid, joined, and tested at a roof line; its own trench is dug with the others. */
    private static final Set<Measure> LAID =
            EnumSet.of(Measure.ROOF_PIPE, Measure.ROOF_BEND, Measure.DOWNSPOUT, Measure.FLOW_TEST);

    private Steps() {}

    /** When a line of a job's price is done: a roof line over a dug wall once that wall's trench is filled. */
    public static Stage stage(Job job, LineItem item, TakeoffLine line) {
        boolean over = item.follows().filter(LAID::contains).isPresent() && RoofOverWall.isAt(job, line);
        return over ? Stage.ROOF_OVER : stage(item, line.section().kind());
    }

    public static WorkStep of(LineItem item, Section section) {
        return item.step().orElseGet(() -> byMeasure(item, section).step());
    }

    /** The stage within that step; where the item names another step than its measure has, the usual one there. */
    private static Stage stage(LineItem item, Section section) {
        Stage usual = byMeasure(item, section);
        return item.step().filter(step -> step != usual.step()).map(Steps::of).orElse(usual);
    }

    /** What digs is done with the digging, whatever it is put in for. */
    private static Stage byMeasure(LineItem item, Section section) {
        boolean digs = item.labor().flatMap(Labor::digs).isPresent();
        return item.follows()
                .map(measure -> of(item, measure, section))
                .orElseGet(() -> digs ? Stage.DIG : of(of(section)));
    }

    /** Concrete is broken out where the trench is dug and poured when the ground is put back; pipes are filled last. */
    private static Stage of(LineItem item, Measure measure, Section section) {
        if (measure == Measure.BACKFILL && section != Section.WALL) {
            return Stage.FILL_PIPES;
        }
        return measure == Measure.CONCRETE && item.material().isPresent() ? Stage.POUR : of(measure);
    }

    private static Stage of(Measure measure) {
        return switch (measure) {
            case CONCRETE -> Stage.BREAK_OUT;
            case DUG, DIG_MACHINE, DIG_WALL_SIDE, DIG_BULK, DIG_HAND, SHIELD -> Stage.DIG;
            case SPOIL -> Stage.MOVE_SOIL;
            case STRIP -> Stage.STRIP;
            case CLEAN, FOOTING_CLEAN -> Stage.WASH;
            case CRACK, COVE, PARGE, WINDOW_WELL, WALL_FOOT -> Stage.REPAIR;
            case COAT, COAT_GALLONS, SHEET -> Stage.COAT;
            case PROTECT -> Stage.PROTECT;
            case STONE,
                    STONE_TONS,
                    FABRIC,
                    DRAIN_PIPE,
                    DRAIN_BEND,
                    DRAIN_TEE,
                    DRAIN_COUPLING,
                    DRAIN_ADAPTER,
                    CLEANOUT -> Stage.DRAIN;
            case FLOW_TEST -> Stage.FLOW_TEST;
            case PIPE_TRENCH -> Stage.PIPE_TRENCH;
            case MAIN_PIPE,
                    MAIN_BEND,
                    ROOF_PIPE,
                    ROOF_BEND,
                    DOWNSPOUT,
                    DAYLIGHT_OUTLET,
                    STORM_OUTLET,
                    SUMP,
                    SUMP_DISCHARGE -> Stage.PIPES;
            case BACKFILL -> Stage.BACKFILL;
            case IMPORT -> Stage.IMPORT;
            case REGRADE -> Stage.GRADE;
            case SURPLUS, HAUL, HAUL_LOAD -> Stage.HAUL;
            case TOPSOIL -> Stage.TOPSOIL;
            case SEED, SOD, PLANTS -> Stage.PLANT;
            case JOB,
                    WORKING_DAY,
                    TRENCH_INSPECTION,
                    SHIELD_DAY,
                    EXCAVATOR_DAY,
                    STANDING_DAY,
                    PUMP_DAY,
                    MOBILIZATION_TRIP,
                    OVERTIME -> Stage.SET_UP;
        };
    }

    private static WorkStep of(Section section) {
        return switch (section) {
            case WALL -> WorkStep.PREPARE_WALL;
            case DRAIN -> WorkStep.DRAIN;
            case ROOF_WATER -> WorkStep.PIPES;
            case GROUND -> WorkStep.RESTORE;
            case SETUP -> WorkStep.SET_UP;
        };
    }

    /** Where work stands of which only the step is known. */
    private static Stage of(WorkStep step) {
        return switch (step) {
            case PERMIT -> Stage.PERMIT;
            case ENGINEER -> Stage.ENGINEER;
            case SET_UP -> Stage.SET_UP;
            case DIG -> Stage.DIG;
            case DEWATER -> Stage.DEWATER;
            case PREPARE_WALL -> Stage.REPAIR;
            case COAT -> Stage.COAT;
            case PIPES -> Stage.PIPES;
            case DRAIN -> Stage.DRAIN;
            case BACKFILL -> Stage.BACKFILL;
            case RESTORE -> Stage.GRADE;
            case CLEAN_UP -> Stage.CLEAN_UP;
        };
    }
}
