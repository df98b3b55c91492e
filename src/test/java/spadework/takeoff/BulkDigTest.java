// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.EndKind;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.PlanHouse;
import spadework.job.Protection;
import spadework.job.SoilType;
import spadework.job.TrenchEnds;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;

/** What a machine digs with care straight before the wall, and what it digs in bulk behind that. */
class BulkDigTest {
    private static final String AS_BEFORE = """
            {"code": "DIG-MACH", "section": "wall", "name": "Excavate at the wall by machine", "unit": "cy",
             "homeowner": "We dig the soil away from the wall.", "follows": "dig by machine", "standard": true,
             "labor": {"crew": "dig crew", "perHour": "6 cy", "machine": "mini-excavator", "slowedBy": []},
             "source": {"text": "own jobs", "on": "2026-06-01"}}
            """;

    private static Wall dug(Protection protection, EndKind ends, Access access, String handShare) {
        return Jobs.wall()
                .withDigging(new Digging(
                        access,
                        Percent.of(handShare),
                        Length.ofInches(24),
                        protection,
                        new TrenchEnds(ends, ends, Optional.empty())));
    }

    /** 40 ft, 5 ft to the footing's top, p 6 in, tf 8 in, B 24 in: (0.5 × 5 + 2 × 5.667) × 40 ÷ 27 = 20.494 cy. */
    @ParameterizedTest(name = "{0}, ends {1}: {2} cy in bulk")
    @CsvSource({
        "SHIELDED, AGAINST_SOMETHING, 0",
        "UPRIGHT, OPEN, 0",
        "SLOPED, AGAINST_SOMETHING, 23.786",
        "SLOPED, OPEN, 31.244"
    })
    void bankIsDugInBulk(Protection protection, EndKind ends, double bulk) {
        Job job = Jobs.job(dug(protection, ends, Access.MACHINE, "0"));
        assertThat(of(job, Measure.DIG_WALL_SIDE)).isCloseTo(20.494, within(0.0005));
        assertThat(of(job, Measure.DIG_BULK)).isCloseTo(bulk, within(0.0005));
        assertThat(of(job, Measure.DIG_MACHINE)).isCloseTo(20.494 + bulk, within(0.001));
    }

    @Test
    void handShareComesOffBoth() {
        Job job = Jobs.job(dug(Protection.SLOPED, EndKind.OPEN, Access.MACHINE, "25"));
        assertThat(of(job, Measure.DIG_WALL_SIDE)).isCloseTo(0.75 * 20.494, within(0.0005));
        assertThat(of(job, Measure.DIG_BULK)).isCloseTo(0.75 * 31.244, within(0.0005));
        Job byHand = Jobs.job(dug(Protection.SLOPED, EndKind.OPEN, Access.HAND, "0"));
        assertThat(of(byHand, Measure.DIG_WALL_SIDE) + of(byHand, Measure.DIG_BULK))
                .isZero();
    }

    /** Corners, returns and courts: the two are always all that the machine digs. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"30 R 20 R 30 R 20 R", "13 L 3 R 4 R 3 L 13 R 20 R 30 R 20 R", "12 R 6 L 5 L 6 R 12 R 20 R 29 R 20 R"})
    void bothAreAllThatIsDug(String plan) {
        PlanHouse house = PlanHouse.of(plan);
        Job job = house.job(SoilType.C, house.walls(6));
        assertThat(of(job, Measure.DIG_WALL_SIDE) + of(job, Measure.DIG_BULK))
                .isCloseTo(of(job, Measure.DIG_MACHINE), within(1e-9));
        Job upright = house.job(
                SoilType.C,
                house.walls(6).stream()
                        .map(wall -> PlanHouse.wall(wall.label(), wall.length().feet(), 6, 6, 24, Protection.SHIELDED))
                        .toList());
        assertThat(of(job, Measure.DIG_WALL_SIDE)).isCloseTo(of(upright, Measure.DUG), within(1e-6));
    }

    @Test
    void eachPartHasItsPace() {
        assertThat(lines(Books.standard())).contains("DIG-MACH", "DIG-BULK", "SPOIL-MOVE");
        assertThat(Books.standard().leftOut()).isEmpty();
    }

    /** As books did before: their own item follows all that the machine digs, and nothing is paid twice. */
    @Test
    void oneItemMayFollowAllOfIt(@TempDir Path folder) throws IOException {
        PriceBook book = Books.withOwn(folder, AS_BEFORE);
        assertThat(lines(book)).contains("DIG-MACH", "SPOIL-MOVE").doesNotContain("DIG-BULK");
        assertThat(book.leftOut().stream().map(LineItem::code)).containsExactly("DIG-BULK");
    }

    private static List<String> lines(PriceBook book) {
        Job job = Jobs.job(dug(Protection.SLOPED, EndKind.OPEN, Access.MACHINE, "0"));
        return Measuring.of(job, book).lines().stream().map(TakeoffLine::code).toList();
    }

    private static double of(Job job, Measure measure) {
        return Measuring.of(job, Books.standard()).quantities().stream()
                .filter(quantity -> quantity.measure() == measure)
                .mapToDouble(quantity -> quantity.value().doubleValue())
                .sum();
    }
}
