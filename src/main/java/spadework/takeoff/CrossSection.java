// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Footing;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.WallMeasures;
import spadework.trench.Bank;

/**
 * The trench cut across at a wall's deeper end, in the very numbers from which its quantities are worked out.
 *
 * @param walls labels of the walls that are cut like this
 * @param depth grade to the top of the footing
 * @param trenchDepth grade to the bottom of the footing
 * @param bottomWidth from the footing's edge outward
 * @param reach from the wall's face to the trench's top edge
 * @param bed what lies around the pipe; empty where no drain runs along the wall
 * @param floor how high the floor inside lies over the footing's bottom; empty where levels are missing
 */
@RecordBuilder
public record CrossSection(
        List<String> walls,
        Length depth,
        Length trenchDepth,
        Footing footing,
        Length bottomWidth,
        Bank bank,
        Length reach,
        Optional<Bed> bed,
        Optional<Length> floor)
        implements CrossSectionBuilder.With {

    /**
     * The stone with its pipe.
     *
     * @param stone height above the trench's bottom
     * @param bedding stone under the pipe
     * @param pipeOutside outside diameter of the pipe
     */
    public record Bed(Length stone, Length bedding, Length pipeOutside) {}

    public CrossSection {
        walls = List.copyOf(walls);
    }

    /**
     * The section at one wall.
     *
     * @throws IllegalArgumentException if the drain's item has no pipe size; intake has checked that every one does
     */
    public static CrossSection of(Job job, PriceBook book, Wall wall) {
        WallMeasures m = WallMeasures.of(job, wall);
        Optional<FootingDrain> drain = DrainTakeoff.at(job, wall);
        return new CrossSection(
                List.of(wall.label()),
                wall.deepest(),
                wall.deepestTrench(),
                wall.footing(),
                wall.digging().bottomWidth(),
                m.bank(),
                m.bank().reach(wall),
                drain.map(run -> bed(job, book, run, wall)),
                drain.flatMap(run -> floor(job, run, DrainTakeoff.pipe(run, book))));
    }

    /** The stone at the deeper end, where the section is cut. */
    private static Bed bed(Job job, PriceBook book, FootingDrain drain, Wall wall) {
        boolean atEnd = wall.depthEnd().compareTo(wall.depthStart()) > 0;
        StoneStation station = StoneProfile.of(job, book, drain)
                .get(wall.label())
                .at(atEnd ? wall.length().feet() : 0);
        return new Bed(
                Length.ofFeet(station.height()),
                Length.ofFeet(station.under()),
                DrainTakeoff.pipe(drain, book).outside());
    }

    /**
     * Only the pipe's levels tie the floor's level to the footing: the pipe lies on its bedding at the footing's
     * bottom. The higher end of the pipe counts, for there it protects the floor least.
     */
    private static Optional<Length> floor(Job job, FootingDrain drain, Pipe pipe) {
        if (job.site().insideFloor().isEmpty()
                || drain.startInvert().isEmpty()
                || drain.endInvert().isEmpty()) {
            return Optional.empty();
        }
        double high = Math.max(
                drain.startInvert().get().feet(), drain.endInvert().get().feet());
        double wall = (pipe.outside().feet() - pipe.inside().feet()) / 2;
        return Optional.of(Length.ofFeet(job.site().insideFloor().get().feet() - high + wall + StoneProfile.BEDDING));
    }

    /** True if both print the same figures; what is drawn then differs by less than half an inch. */
    public boolean printsLike(CrossSection other) {
        return bank.equals(other.bank) && figures().equals(other.figures());
    }

    private List<String> figures() {
        List<Length> lengths = new ArrayList<>(
                List.of(depth, trenchDepth, footing.thickness(), footing.projection(), bottomWidth, reach));
        bed.ifPresent(around -> lengths.addAll(List.of(around.stone(), around.bedding(), around.pipeOutside())));
        List<String> figures =
                new ArrayList<>(lengths.stream().map(Length::text).toList());
        figures.add(bed.isPresent() ? "bed" : "");
        figures.add(floor.map(Length::text).orElse(""));
        figures.add(footing.measured() ? "measured" : "");
        return figures;
    }

    /** The same section, for another wall's labels as well. */
    public CrossSection joinedWith(CrossSection other) {
        List<String> all = new ArrayList<>(walls);
        all.addAll(other.walls);
        return withWalls(all);
    }
}
