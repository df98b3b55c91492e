// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import spadework.job.Corner;
import spadework.trench.Bank;

/**
 * Where the signed sum of strips and corners is not what is dug. For equal level trenches round a house the sum is
 * exact, however short a wall may be, until trenches of walls that face each other meet, as in a narrow court; then the
 * ground of those walls is cut level and each place counted once.
 */
public final class Overlaps {
    private Overlaps() {}

    /** All overlaps among these strips, where each wall has one. */
    public static List<Overlap> of(List<Strip> strips, List<Corner> corners) {
        List<Overlap> found = new ArrayList<>();
        for (WallChain chain : WallChain.of(strips, corners)) {
            for (WallChain part : Neighbors.parts(chain)) {
                List<Slice> slices = slices(part);
                if (!slices.isEmpty()) {
                    found.add(new Overlap(
                            part.walls().stream()
                                    .map(wall -> wall.strip().wall())
                                    .toList(),
                            first(strips, part),
                            slices));
                }
            }
        }
        return found;
    }

    private static String first(List<Strip> strips, WallChain part) {
        return strips.stream()
                .map(Strip::wall)
                .filter(label -> part.walls().stream()
                        .anyMatch(wall -> wall.strip().wall().equals(label)))
                .findFirst()
                .orElseThrow();
    }

    private static List<Slice> slices(WallChain part) {
        TreeSet<Double> faces = new TreeSet<>();
        faces.add(0.0);
        for (PlacedStrip wall : part.walls()) {
            faces.add(wall.strip().footing());
            wall.strip().tops().forEach(top -> faces.add(top.height()));
            faces.addAll(wall.strip().line().steps());
        }
        part.turns().forEach(turn -> faces.add(turn.footing()));
        double highest = part.walls().stream()
                .mapToDouble(wall -> wall.strip().highest())
                .max()
                .orElse(0);
        List<Slice> slices = new ArrayList<>();
        double from = 0;
        for (double to : faces) {
            if (to > from + 1e-9 && to <= highest) {
                between(part, from, to, slices);
                from = to;
            }
        }
        return slices;
    }

    /** Slices between two heights at which tops or footings end: one for each stretch in which no edges pass. */
    private static void between(WallChain part, double from, double to, List<Slice> slices) {
        double hair = Math.min((to - from) / 4, Math.max(2 * Bank.HAIR, (to - from) * 1e-6));
        LevelCut low = new LevelCut(part, from + hair);
        LevelCut high = new LevelCut(part, to - hair);
        TreeSet<Double> faces = new TreeSet<>();
        for (boolean alongX : new boolean[] {true, false}) {
            crossings(low.edges(alongX), high.edges(alongX), from + hair, to - hair, faces);
        }
        faces.add(to);
        double face = from;
        for (double next : faces) {
            if (next > face + 1e-9) {
                Slice slice = slice(part, face, next);
                if (Math.abs(slice.low()) > 1e-7 || Math.abs(slice.high()) > 1e-7) {
                    slices.add(slice);
                }
                face = next;
            }
        }
    }

    private static void crossings(double[] low, double[] high, double from, double to, TreeSet<Double> faces) {
        double[][] lines = new double[low.length][];
        for (int i = 0; i < low.length; i++) {
            lines[i] = new double[] {low[i], high[i]};
        }
        double[][] distinct = Arrays.stream(lines)
                .sorted((a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]))
                .toArray(double[][]::new);
        int kept = 0;
        for (double[] line : distinct) {
            boolean again = kept > 0
                    && Math.abs(distinct[kept - 1][0] - line[0]) < 1e-9
                    && Math.abs(distinct[kept - 1][1] - line[1]) < 1e-9;
            if (!again) {
                distinct[kept++] = line;
            }
        }
        for (int i = 0; i < kept; i++) {
            for (int k = i + 1; k < kept; k++) {
                double before = distinct[k][0] - distinct[i][0];
                double after = distinct[k][1] - distinct[i][1];
                if (before > 1e-9 && after < -1e-9) {
                    faces.add(from + (to - from) * before / (before - after));
                }
            }
        }
    }

    private static Slice slice(WallChain part, double from, double to) {
        return new Slice(
                from,
                to,
                difference(part, from + (to - from) * Slice.PLACE),
                difference(part, to - (to - from) * Slice.PLACE));
    }

    private static double difference(WallChain part, double height) {
        LevelCut cut = new LevelCut(part, height);
        return cut.union() - cut.signed();
    }
}
