// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.ground.StoneProfile;
import spadework.ground.StoneStation;
import spadework.job.Footing;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.WallMeasures;
import spadework.trench.Bank;
import spadework.trench.SpoilRoom;
import spadework.trench.TrenchLimits;
import spadework.water.FootingBottom;
import spadework.working.Worked;

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
 * @param beside what stands before the wall within the reach of trench and heap, the nearest first
 * @param noSoilOn what leaves no room for a heap of soil; empty where there is room
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
        Optional<Length> floor,
        List<SiteLimit> beside,
        Optional<SiteLimit> noSoilOn)
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
        beside = List.copyOf(beside);
    }

    /**
     * The section at one wall.
     *
     * @throws IllegalArgumentException if the drain's item has no pipe size; intake has checked that every one does
     */
    public static CrossSection of(Job job, PriceBook book, Wall wall) {
        WallMeasures m = WallMeasures.of(job, wall);
        Optional<FootingDrain> drain = DrainTakeoff.at(job, wall);
        Length reach = m.bank().reach(wall);
        Length far = reach.plus(TrenchLimits.SPOIL_BACK).plus(SpoilRoom.HEAP);
        return new CrossSection(
                List.of(wall.label()),
                wall.deepest(),
                wall.deepestTrench(),
                wall.footing(),
                wall.digging().bottomWidth(),
                m.bank(),
                reach,
                drain.map(run -> bed(job, book, run, wall)),
                drain.flatMap(run -> floor(job, run, DrainTakeoff.pipe(run, book))),
                job.site().limits().stream()
                        .filter(limit -> limit.wall().equals(wall.label()))
                        .filter(limit -> limit.distance().compareTo(far) < 0)
                        .sorted(Comparator.comparing(SiteLimit::distance))
                        .toList(),
                SpoilRoom.inTheWay(job.site(), wall));
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
     * The ground's level where the drain starts or ends ties the floor to the footing: the higher footing counts, for
     * there the floor lies lowest over it. Without it the pipe's higher end does, taken to lie on its bedding at the
     * footing's bottom.
     */
    private static Optional<Length> floor(Job job, FootingDrain drain, Pipe pipe) {
        FootingBottom bottom = FootingBottom.of(job, drain);
        Optional<Double> footing = Stream.of(bottom.start(), bottom.end())
                .flatMap(Optional::stream)
                .map(Worked::number)
                .max(Double::compare)
                .or(() -> underPipe(drain, pipe));
        return job.site().insideFloor().flatMap(floor -> footing.map(level -> Length.ofFeet(floor.feet() - level)));
    }

    private static Optional<Double> underPipe(FootingDrain drain, Pipe pipe) {
        if (drain.startInvert().isEmpty() || drain.endInvert().isEmpty()) {
            return Optional.empty();
        }
        double high = Math.max(
                drain.startInvert().get().feet(), drain.endInvert().get().feet());
        double shell = (pipe.outside().feet() - pipe.inside().feet()) / 2;
        return Optional.of(high - shell - StoneProfile.BEDDING);
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
        beside.forEach(
                limit -> figures.add(limit.kind() + " " + limit.distance().text() + " " + limit.note()));
        return figures;
    }

    /** The same section, for another wall's labels as well. */
    public CrossSection joinedWith(CrossSection other) {
        List<String> all = new ArrayList<>(walls);
        all.addAll(other.walls);
        return withWalls(all);
    }
}
