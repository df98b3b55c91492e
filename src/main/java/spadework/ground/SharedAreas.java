// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;

/** Level areas that two bodies share, as slices between two heights. */
final class SharedAreas {
    private SharedAreas() {}

    /**
     * Slices from one height to another, cut at faces between them and where one of these lines passes zero. Between
     * two cuts the area is at most a quadratic in the height.
     *
     * @param lines straight between two faces; the area may have a kink where one of them is zero
     */
    static List<Slice> slices(
            double from, double to, List<Double> faces, List<DoubleUnaryOperator> lines, DoubleUnaryOperator area) {
        TreeSet<Double> cuts = new TreeSet<>();
        faces.stream().filter(face -> face > from && face < to).forEach(cuts::add);
        cuts.add(to);
        List<Slice> slices = new ArrayList<>();
        double low = from;
        for (double high : cuts) {
            TreeSet<Double> kinks = new TreeSet<>();
            for (DoubleUnaryOperator line : lines) {
                kink(low, high, line, kinks);
            }
            kinks.add(high);
            for (double kink : kinks) {
                slice(low, kink, area, slices);
                low = kink;
            }
        }
        return slices;
    }

    /** Where a line passes zero between two heights; it may jump at either of them. */
    private static void kink(double low, double high, DoubleUnaryOperator line, TreeSet<Double> kinks) {
        double third = (high - low) / 3;
        double a = line.applyAsDouble(low + third);
        double b = line.applyAsDouble(high - third);
        if (Math.abs(b - a) > 1e-12) {
            double at = low + third - a * third / (b - a);
            if (at > low + 1e-9 && at < high - 1e-9) {
                kinks.add(at);
            }
        }
    }

    private static void slice(double from, double to, DoubleUnaryOperator area, List<Slice> slices) {
        Slice slice = new Slice(
                from,
                to,
                area.applyAsDouble(from + (to - from) * Slice.PLACE),
                area.applyAsDouble(to - (to - from) * Slice.PLACE));
        if (slice.low() != 0 || slice.high() != 0) {
            slices.add(slice);
        }
    }
}
