// SPDX-License-Identifier: Apache-2.0
package spadework.schedule;

import spadework.pricebook.WorkStep;

/**
 * What is done within a step, finer than the step: in this order the work goes on. A wall is dug, cleaned and coated on
 * its own; pipes away from the house need only their own trench; all else waits for what stands before it.
 */
public enum Stage {
    PERMIT(WorkStep.PERMIT, Path.WHOLE_JOB),
    ENGINEER(WorkStep.ENGINEER, Path.WHOLE_JOB),
    SET_UP(WorkStep.SET_UP, Path.WHOLE_JOB),
    /** Concrete over a trench is broken out before anything is dug. */
    BREAK_OUT(WorkStep.DIG, Path.WHOLE_JOB),
    DIG(WorkStep.DIG, Path.WALL),
    /** Done together with the digging: what lies on its heap was dug before. */
    MOVE_SOIL(WorkStep.DIG, Path.WALL),
    DEWATER(WorkStep.DEWATER, Path.WALL),
    STRIP(WorkStep.PREPARE_WALL, Path.WALL),
    WASH(WorkStep.PREPARE_WALL, Path.WALL),
    REPAIR(WorkStep.PREPARE_WALL, Path.WALL),
    COAT(WorkStep.COAT, Path.WALL),
    PROTECT(WorkStep.COAT, Path.WALL),
    PIPE_TRENCH(WorkStep.PIPES, Path.PIPES),
    PIPES(WorkStep.PIPES, Path.PIPES),
    /** Bed, pipe, stone around it and fabric. */
    DRAIN(WorkStep.DRAIN, Path.WHOLE_JOB),
    FLOW_TEST(WorkStep.DRAIN, Path.WHOLE_JOB),
    /** The trenches at the walls. */
    BACKFILL(WorkStep.BACKFILL, Path.WHOLE_JOB),
    /** Roof lines over a dug wall: laid in its fill, tested, and covered. */
    ROOF_OVER(WorkStep.BACKFILL, Path.WHOLE_JOB),
    /** The trenches away from the walls. */
    FILL_PIPES(WorkStep.BACKFILL, Path.WHOLE_JOB),
    IMPORT(WorkStep.RESTORE, Path.WHOLE_JOB),
    GRADE(WorkStep.RESTORE, Path.WHOLE_JOB),
    HAUL(WorkStep.RESTORE, Path.WHOLE_JOB),
    POUR(WorkStep.RESTORE, Path.WHOLE_JOB),
    TOPSOIL(WorkStep.RESTORE, Path.WHOLE_JOB),
    PLANT(WorkStep.RESTORE, Path.WHOLE_JOB),
    CLEAN_UP(WorkStep.CLEAN_UP, Path.WHOLE_JOB);

    private enum Path {
        WALL,
        PIPES,
        WHOLE_JOB
    }

    private final WorkStep step;
    private final Path path;

    Stage(WorkStep step, Path path) {
        this.step = step;
        this.path = path;
    }

    /** The step of the scope of work that it belongs to. */
    public WorkStep step() {
        return step;
    }

    /** Whether it is done wall by wall. */
    boolean isAtWall() {
        return path == Path.WALL;
    }

    /**
     * Whether it cannot begin before the other is done.
     *
     * @param place label of the wall; empty for the whole job
     * @param otherPlace the same of the other
     */
    public boolean needs(String place, Stage other, String otherPlace) {
        if (compareTo(other) <= 0) {
            return false;
        }
        return switch (path) {
            case WALL -> !other.isAtWall() || place.isEmpty() || otherPlace.isEmpty() || place.equals(otherPlace);
            case PIPES -> !other.isAtWall();
            case WHOLE_JOB -> true;
        };
    }
}
