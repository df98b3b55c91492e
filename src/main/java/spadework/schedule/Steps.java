// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.pricebook.WorkStep;

/** When a line item is done: as it says itself, else by its measure, else by the section it is priced in. */
public final class Steps {
    private Steps() {}

    public static WorkStep of(LineItem item, Section section) {
        return item.step()
                .orElseGet(
                        () -> item.follows().map(measure -> of(item, measure)).orElseGet(() -> of(section)));
    }

    /** Concrete is broken out where the trench is dug and poured when the ground is put back. */
    private static WorkStep of(LineItem item, Measure measure) {
        return measure == Measure.CONCRETE && item.material().isPresent() ? WorkStep.RESTORE : of(measure);
    }

    private static WorkStep of(Measure measure) {
        return switch (measure) {
            case DUG, DIG_MACHINE, DIG_WALL_SIDE, DIG_BULK, SPOIL, DIG_HAND, SHIELD, CONCRETE -> WorkStep.DIG;
            case STRIP, CLEAN, FOOTING_CLEAN, CRACK, COVE, PARGE, WINDOW_WELL, WALL_FOOT -> WorkStep.PREPARE_WALL;
            case COAT, COAT_GALLONS, SHEET, PROTECT -> WorkStep.COAT;
            case STONE,
                    STONE_TONS,
                    FABRIC,
                    DRAIN_PIPE,
                    DRAIN_BEND,
                    DRAIN_TEE,
                    DRAIN_COUPLING,
                    DRAIN_ADAPTER,
                    CLEANOUT,
                    FLOW_TEST -> WorkStep.DRAIN;
            case MAIN_PIPE,
                    MAIN_BEND,
                    ROOF_PIPE,
                    ROOF_BEND,
                    DOWNSPOUT,
                    PIPE_TRENCH,
                    DAYLIGHT_OUTLET,
                    STORM_OUTLET,
                    SUMP,
                    SUMP_DISCHARGE -> WorkStep.PIPES;
            case BACKFILL -> WorkStep.BACKFILL;
            case SURPLUS, HAUL, HAUL_LOAD, IMPORT, REGRADE, TOPSOIL, SEED, SOD, PLANTS -> WorkStep.RESTORE;
            case JOB,
                    WORKING_DAY,
                    TRENCH_INSPECTION,
                    SHIELD_DAY,
                    EXCAVATOR_DAY,
                    STANDING_DAY,
                    PUMP_DAY,
                    MOBILIZATION_TRIP,
                    OVERTIME -> WorkStep.SET_UP;
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
}
