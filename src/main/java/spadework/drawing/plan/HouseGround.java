// SPDX-License-Identifier: Apache-2.0
package spadework.drawing.plan;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spadework.drawing.shape.BreakMark;
import spadework.drawing.shape.Point;
import spadework.drawing.shape.Rect;
import spadework.job.Job;
import spadework.job.Side;

/**
 * The ground that a job digs and the way of its water, laid round a house that is drawn elsewhere: the same bodies and
 * the same places as on the plan of the papers.
 *
 * @param dug as it lies open at grade, the hole of a sump indoors included
 * @param outlets the middle of each, by label
 * @param pipes the solid pipes and roof lines, each from its start to its outlet
 * @param broken the pipes that are not as long as they were measured
 */
public record HouseGround(Area dug, Map<String, Point> outlets, List<List<Point>> pipes, List<BrokenPipe> broken) {

    /**
     * A pipe of which only the figure holds.
     *
     * @param text its label, if it has one, and its length
     */
    public record BrokenPipe(BreakMark mark, String text) {}

    /**
     * Lays them out.
     *
     * @param house the outline of the house
     * @param sheet what there is to draw on; ground that lies further out is cut off
     */
    public static HouseGround of(Job job, Rect house, Rect sheet) {
        PipeLayout water = PipeLayout.of(job);
        double scale = house.width() / job.site().house().eastWest().feet();
        PlanFrame frame = new PlanFrame(job.site().house(), house, scale, sheet);
        PlanBands bands = PlanBands.of(job, water, Surroundings.of(job), PlanWords.ENGLISH, scale, sheet.width())
                .within(frame);
        Map<String, Point> outlets = OutletDrawing.places(job, water, frame, bands);
        DugGround dug = DugGround.of(job, water, AddedParts.NONE, outlets, frame, bands);
        RunWays lying = new RunWays(water, outlets, frame, bands);
        List<List<Point>> pipes = new ArrayList<>();
        List<BrokenPipe> broken = new ArrayList<>();
        water.runs().forEach(run -> {
            pipes.addAll(lying.all(run));
            lying.mark(run).ifPresent(mark -> broken.add(new BrokenPipe(mark, run.text())));
        });
        job.water().outlets().stream().filter(OutletDrawing::hasDischarge).forEach(outlet -> {
            Point from = outlets.get(outlet.label());
            Side side = water.sides().get(outlet.label());
            pipes.add(List.of(from, DischargeDrawing.end(outlet, from, side, scale)));
            DischargeDrawing.mark(outlet, from, side, scale)
                    .ifPresent(mark -> broken.add(new BrokenPipe(
                            mark, outlet.discharge().orElseThrow().text())));
        });
        return new HouseGround(dug.agreed(), outlets, pipes, broken);
    }
}
