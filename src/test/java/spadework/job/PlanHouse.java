// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Length;
import spadework.measure.Percent;

/**
 * A house from its plan: walls all round, or along a part, each with its length in feet and the turn after it, R for an
 * outside corner and L for an inside one. The first wall runs along the x axis with the house below it.
 *
 * @param feet lengths of the walls
 * @param outside whether the corner after each wall points outward; one less than walls where the plan is open
 */
public record PlanHouse(List<Double> feet, List<Boolean> outside) {

    /** As {@code 30 R 20 R 30 R 20 R}; open where no turn follows the last length. */
    public static PlanHouse of(String plan) {
        List<Double> feet = new ArrayList<>();
        List<Boolean> outside = new ArrayList<>();
        for (String word : plan.trim().split(" +")) {
            if (word.equals("R") || word.equals("L")) {
                outside.add(word.equals("R"));
            } else {
                feet.add(Double.parseDouble(word));
            }
        }
        return new PlanHouse(feet, outside);
    }

    public boolean closed() {
        return outside.size() == feet.size();
    }

    /** The walls, all alike but for their length: 8 × 6 in footing, 24 in bottom. */
    public List<Wall> walls(double depth) {
        List<Wall> walls = new ArrayList<>();
        for (int i = 0; i < feet.size(); i++) {
            walls.add(wall("W" + i, feet.get(i), depth, depth, 24, Protection.SLOPED));
        }
        return walls;
    }

    /** A wall with its depths to the footing's top in feet and its bottom width in inches. */
    public static Wall wall(String label, double feet, double start, double end, double bottom, Protection kind) {
        Wall w = Jobs.wall();
        return new Wall(
                label,
                "wall " + label,
                new WallPlace(
                        Side.NORTH, Length.ofFeet(Integer.parseInt(label.substring(1)) * 500.0), Length.ofFeet(feet)),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                new Digging(Access.MACHINE, Percent.ZERO, Length.ofInches(bottom), kind));
    }

    public List<Corner> corners() {
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < outside.size(); i++) {
            corners.add(new Corner(
                    new WallEnd("W" + i, true),
                    new WallEnd("W" + (i + 1) % feet.size(), false),
                    outside.get(i) ? CornerKind.OUTSIDE : CornerKind.INSIDE));
        }
        return corners;
    }

    /** The job with these walls, in soil of that type; a drain runs along all of them to a tee at its end. */
    public Job job(
            SoilType soil,
            List<Wall> walls,
            Optional<Length> startInvert,
            Optional<Length> endInvert,
            Optional<Length> startGrade,
            Optional<Length> endGrade) {
        FootingDrain drain = new FootingDrain(
                "D1",
                walls.stream().map(Wall::label).toList(),
                Optional.empty(),
                TeeAt.END,
                "M1",
                startInvert,
                endInvert,
                Optional.empty(),
                startGrade,
                endGrade);
        Water w = Jobs.water();
        Water water = new Water(List.of(drain), w.mains(), List.of(), List.of(), w.outlets(), List.of());
        Site site = Jobs.with(Jobs.site(), new Soil(Texture.LOAM, Seepage.NONE, soil));
        return Jobs.withCorners(Jobs.job(site, water, walls.toArray(Wall[]::new)), corners());
    }

    /** The same where no level is known. */
    public Job job(SoilType soil, List<Wall> walls) {
        return job(soil, walls, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
