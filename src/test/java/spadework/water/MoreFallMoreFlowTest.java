// SPDX-License-Identifier: Apache-2.0
package spadework.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spadework.water.FormulaInputs.pipe;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.job.Texture;
import spadework.job.WaterJob;
import spadework.pricebook.Books;

/** What holds for every pipe and every network, tried on seeded ones. */
class MoreFallMoreFlowTest {

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neitherMoreSlopeNorALargerPipeCarriesLess(long seed) {
        Random random = new Random(seed);
        double inside = 0.1 + random.nextDouble() * 2;
        double slope = 0.0005 + random.nextDouble() * 0.2;
        double n = 0.008 + random.nextDouble() * 0.02;
        double more = 1 + random.nextDouble();
        double capacity = pipe(inside, slope, n).gpm().number();
        assertThat(pipe(inside, slope * more, n).gpm().number()).isGreaterThanOrEqualTo(capacity);
        assertThat(pipe(inside * more, slope, n).gpm().number()).isGreaterThanOrEqualTo(capacity);
        assertThat(pipe(inside, slope, n * more).gpm().number()).isLessThanOrEqualTo(capacity);
    }

    /** What leaves is what came in: seepage of the wall, each downspout, runoff, by the functions alone. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatLeavesIsWhatCameIn(long seed) {
        Random random = new Random(seed);
        double rain = 1 + random.nextDouble() * 8;
        Texture texture = Texture.values()[random.nextInt(Texture.values().length)];
        WaterJob job = new WaterJob().rain(rain).soil(texture);
        double roofs = 0;
        int lines = random.nextInt(4);
        for (int line = 0; line < lines; line++) {
            job.roofLine("R" + line, 30 + random.nextInt(100), 96.0, 93.0, 98.0);
            int spouts = random.nextInt(4);
            for (int spout = 0; spout < spouts; spout++) {
                double roof = 100 + random.nextInt(1000);
                roofs += roof;
                job.downspout("DS" + line + spout, roof, "R" + line);
            }
        }
        if (random.nextBoolean()) {
            job.teeInMiddle(92.1);
        }
        var built = job.build();
        Range seepage = SeepageInflow.intoDrain(built, built.walls().get(0));
        Network network = Network.of(built, Books.standard());
        Range leaving = network.arriving("O1").orElseThrow();
        double roofWater = 0.0104 * roofs * rain;
        assertThat(leaving.low().number()).isCloseTo(roofWater + seepage.low().number(), within(1e-6));
        assertThat(leaving.high().number()).isCloseTo(roofWater + seepage.high().number(), within(1e-6));
        for (Reach reach : network.reaches()) {
            double above = network.into(reach.run()).stream()
                    .mapToDouble(r -> r.flow().inflow().orElseThrow().high().number())
                    .sum();
            assertThat(reach.flow().inflow().orElseThrow().high().number()).isGreaterThanOrEqualTo(above - 1e-9);
        }
    }

    static List<Long> seeds() {
        return LongStream.range(0, 60).boxed().toList();
    }
}
