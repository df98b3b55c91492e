// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.util.Map;
import spadework.drawing.shape.Point;
import spadework.job.Job;

/**
 * Where everything on a plan lies, before a line is drawn.
 *
 * @param outlets the middle of each, by label
 */
record PlanLayout(PipeLayout water, Surroundings around, PlanFrame frame, PlanBands bands, Map<String, Point> outlets) {

    /** Longer words below the figure take their room from it, not from the page. */
    static PlanLayout aboveFoot(Job job, PlanSize usual, PlanWords words) {
        return of(job, usual.lowerBy(PlanFoot.moreRows(job, words, usual.width())), words);
    }

    /** @param room what the plan has on its page */
    static PlanLayout of(Job job, PlanSize room, PlanWords words) {
        PipeLayout water = PipeLayout.of(job);
        Surroundings around = Surroundings.of(job);
        // Room for the trenches follows the scale, which is never larger once there is room for them.
        double scale = PlanFrame.of(job, PlanBands.of(job, water, around, words, 0, room.width()), room)
                .scale();
        PlanBands bands = PlanBands.of(job, water, around, words, scale, room.width());
        PlanFrame frame = PlanFrame.of(job, bands, room);
        return new PlanLayout(water, around, frame, bands, OutletDrawing.places(job, water, frame, bands));
    }

    RunWays ways() {
        return new RunWays(water, outlets, frame, bands);
    }
}
