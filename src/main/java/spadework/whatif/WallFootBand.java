// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Wall;
import spadework.money.Dollars;

/**
 * What a foot of wall may plausibly sell for, by the kind of job: typical amounts for a foot times the published first
 * and third quartiles of the pay items that they are bid as. A fence for plausibility, no local price.
 *
 * @param kind of job, as the file names it
 * @param low dollars a foot
 * @param high dollars a foot
 */
public record WallFootBand(String kind, BigDecimal low, BigDecimal high) {
    /** What the quartiles are. */
    public static final String SOURCE =
            "amounts for a foot: common practice, no source; how far prices spread: INDOT unit bid tabulations,"
                    + " Jan 2025 to May 2026";

    private static final String FILE = "wall-foot-bands.txt";
    private static final double SHALLOW = 4;
    private static final double DEEP = 6;

    /** The bands by kind, in the order of the file. */
    public static Map<String, WallFootBand> all() {
        return Loaded.BANDS;
    }

    /**
     * The band of a job: by its deepest wall, grade to footing top, and by where the water goes; none
     * without walls.
     */
    public static Optional<WallFootBand> of(Job job) {
        return job.walls().stream()
                .mapToDouble(wall ->
                        Math.max(wall.depthStart().feet(), wall.depthEnd().feet()))
                .boxed()
                .max(Double::compare)
                .map(depth -> Loaded.BANDS.get(depth(depth) + ", " + outlet(job)));
    }

    /** The price of a foot of wall, to a cent; none without walls. */
    public static Optional<BigDecimal> perFoot(Job job, Dollars price) {
        double feet = job.walls().stream()
                .map(Wall::length)
                .mapToDouble(length -> length.feet())
                .sum();
        return feet > 0
                ? Optional.of(price.amount()
                        .divide(BigDecimal.valueOf(feet), MathContext.DECIMAL64)
                        .setScale(2, RoundingMode.HALF_UP))
                : Optional.empty();
    }

    /** Below, inside or above. */
    public int compare(BigDecimal perFoot) {
        return perFoot.compareTo(low) < 0 ? -1 : perFoot.compareTo(high) > 0 ? 1 : 0;
    }

    private static String depth(double feet) {
        return feet < SHALLOW ? "under 4 ft" : feet <= DEEP ? "4 ft to 6 ft" : "over 6 ft";
    }

    private static String outlet(Job job) {
        return job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP) ? "sump" : "gravity";
    }

    /** The file, read once. */
    private static final class Loaded {
        private static final Map<String, WallFootBand> BANDS = bands(lines());

        private static Map<String, WallFootBand> bands(List<String[]> rows) {
            Map<String, BigDecimal[]> quartiles = new LinkedHashMap<>();
            Map<String, BigDecimal[]> sums = new LinkedHashMap<>();
            for (String[] row : rows) {
                if (row[0].equals("item")) {
                    quartiles.put(row[1], new BigDecimal[] {new BigDecimal(row[3]), new BigDecimal(row[4])});
                } else {
                    BigDecimal[] sum =
                            sums.computeIfAbsent(row[1], kind -> new BigDecimal[] {BigDecimal.ZERO, BigDecimal.ZERO});
                    for (int i = 0; i < 2; i++) {
                        sum[i] = sum[i].add(
                                new BigDecimal(row[3]).multiply(quartiles.get(row[2])[i]));
                    }
                }
            }
            Map<String, WallFootBand> bands = new LinkedHashMap<>();
            sums.forEach((kind, sum) -> bands.put(
                    kind,
                    new WallFootBand(
                            kind, sum[0].setScale(0, RoundingMode.HALF_UP), sum[1].setScale(0, RoundingMode.HALF_UP))));
            return bands;
        }

        private static List<String[]> lines() {
            try (BufferedReader file = new BufferedReader(
                    new InputStreamReader(WallFootBand.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
                List<String[]> rows = new ArrayList<>();
                file.lines()
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .forEach(line -> rows.add(line.strip().split("\\s*\\|\\s*")));
                return rows;
            } catch (IOException e) {
                throw new IllegalStateException(FILE, e);
            }
        }
    }
}
