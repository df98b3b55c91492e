// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.contract.QuantityChange;
import spadework.paperwork.PaperWords;
import spadework.pricebook.Measure;

/** Soil that is dug at a place is told once, not once for each machine that moves it. */
class QuantityChangeRowsTest {
    private static final PaperWords WORDS = new PaperWords(Map.of(
            "moved.soil-dug-bank", "Dirt that comes out",
            "moved.dig-by-machine", "Dug by machine",
            "moved.dig-by-hand", "Dug by hand",
            "moved.topsoil", "Topsoil"));

    private static QuantityChange change(Measure measure, String label, String before, String after) {
        return new QuantityChange(
                label + measure,
                measure,
                label,
                measure.trade(),
                measure.unit(),
                new BigDecimal(before),
                new BigDecimal(after));
    }

    private static List<QuantityChange> deeper(String label) {
        return List.of(
                change(Measure.DUG, label, "10.0", "12.5"),
                change(Measure.DIG_MACHINE, label, "9.0", "11.3"),
                change(Measure.DIG_WALL_SIDE, label, "4.0", "5.0"),
                change(Measure.DIG_BULK, label, "5.0", "6.3"),
                change(Measure.DIG_HAND, label, "1.0", "1.2"),
                change(Measure.SPOIL, label, "9.0", "11.3"));
    }

    @Test
    void soilDugAtAWallIsOneRow() {
        assertThat(QuantityChangeRows.all(deeper("A"), WORDS))
                .extracting(QuantityChangeRow::what, QuantityChangeRow::label, QuantityChangeRow::difference)
                .containsExactly(tuple("Dirt that comes out", "A", "+2.5 cy"));
    }

    /** A change order says how many days it adds; what the calendar of the price counts would be a second answer. */
    @ParameterizedTest
    @EnumSource(
            value = Measure.class,
            names = {"WORKING_DAY", "TRENCH_INSPECTION", "EXCAVATOR_DAY", "STANDING_DAY", "MOBILIZATION_TRIP"})
    void daysOfTheCalendarAreNoQuantity(Measure days) {
        List<QuantityChange> changes = List.of(change(days, "", "12", "13"), change(Measure.TOPSOIL, "", "1.0", "2.0"));
        assertThat(QuantityChangeRows.all(changes, WORDS))
                .extracting(QuantityChangeRow::what)
                .containsExactly("Topsoil");
    }

    /** 10.0 + 10.0 before and 12.5 + 12.5 after, over two walls; other things stay where they are. */
    @Test
    void homeownerReadsOneQuantityForAllWalls() {
        List<QuantityChange> both = new ArrayList<>(deeper("A"));
        both.addAll(deeper("B"));
        both.add(change(Measure.TOPSOIL, "", "1.0", "2.0"));
        assertThat(QuantityChangeRows.plain(both, WORDS))
                .extracting(
                        QuantityChangeRow::what,
                        QuantityChangeRow::label,
                        QuantityChangeRow::beforeText,
                        QuantityChangeRow::afterText,
                        QuantityChangeRow::difference)
                .containsExactly(
                        tuple("Dirt that comes out", "", "20.0 cy", "25.0 cy", "+5.0 cy"),
                        tuple("Topsoil", "", "1.0 cy", "2.0 cy", "+1.0 cy"));
        assertThat(QuantityChangeRows.all(both, WORDS))
                .extracting(QuantityChangeRow::label)
                .containsExactly("A", "B", "");
    }

    /** By hand instead of by machine: as much comes out, so who digs is told. */
    @Test
    void whoDigsIsToldWhereAsMuchIsDug() {
        List<QuantityChange> byHand = List.of(
                change(Measure.DIG_MACHINE, "A", "9.0", "0"),
                change(Measure.DIG_WALL_SIDE, "A", "4.0", "0"),
                change(Measure.DIG_BULK, "A", "5.0", "0"),
                change(Measure.DIG_HAND, "A", "1.0", "10.0"),
                change(Measure.SPOIL, "A", "9.0", "0"),
                change(Measure.DUG, "B", "1.0", "2.0"));
        assertThat(QuantityChangeRows.plain(byHand, WORDS))
                .extracting(QuantityChangeRow::what, QuantityChangeRow::label)
                .containsExactly(
                        tuple("Dug by machine", "A"), tuple("Dug by hand", "A"), tuple("Dirt that comes out", "B"));
    }

    /** What has no words for a homeowner stays off his list and on the full one. */
    @ParameterizedTest
    @EnumSource(names = {"DRAIN_PIPE", "CLEAN", "BACKFILL"})
    void otherMeasuresAreNotTouched(Measure measure) {
        List<QuantityChange> one = List.of(change(measure, "A", "1", "2"));
        assertThat(QuantityChangeRows.all(one, WORDS)).hasSize(1);
        assertThat(QuantityChangeRows.plain(one, WORDS)).isEmpty();
    }
}
