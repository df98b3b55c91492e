// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.working.Given;

/** What a section keeps of what is measured in it. */
class QuantityCollectorTest {
    /** What comes to nothing is left out; a share of a group is kept even where it takes away. */
    @Test
    void collector() {
        TakeoffSection wall = new TakeoffSection(spadework.pricebook.Section.WALL, "A", "Wall A");
        QuantityCollector collector = new QuantityCollector(wall, "A", List.of());
        collector.add(Measure.CRACK, number(0));
        collector.share(Measure.STONE, number(0));
        collector.add(Measure.CRACK, number(-1));
        assertThat(collector.found()).isEmpty();
        collector.share(Measure.DUG, number(-1));
        collector.add(Measure.STONE_TONS, number(2), "STONE-MACH");
        collector.keep(Measure.SURPLUS, number(0), List.of());
        assertThat(collector.found())
                .extracting(driven -> driven.quantity().id())
                .containsExactly("A.soil-dug-bank", "A.drain-stone-net", "A.surplus-soil-bank");
        assertThat(collector.found().get(1).codes()).containsExactly("STONE-MACH");
        assertThat(collector.found().get(0).quantity().description()).isEqualTo("Soil dug, bank, A");
    }

    private static Given number(double value) {
        return Given.of("x", "test", value, Unit.CUBIC_YARD, "test");
    }
}
