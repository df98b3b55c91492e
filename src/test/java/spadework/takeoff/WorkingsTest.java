// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.office.Bid;
import spadework.samples.Samples;
import spadework.working.Recomputed;
import spadework.working.Worked;

/** What is printed as a formula is what was computed: an independent evaluator works every one of them out again. */
class WorkingsTest {

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void everyFormulaOfEverySampleGivesItsValue(Path sample) {
        Bid bid = Samples.bid(sample);
        List<Worked> worked = new ArrayList<>();
        bid.dossier().takeoff().quantities().forEach(quantity -> worked.addAll(Recomputed.under(quantity.working())));
        bid.dossier().takeoff().purchases().forEach(purchase -> worked.addAll(Recomputed.under(purchase.working())));
        bid.quote().buildUp().forEach(step -> worked.addAll(Recomputed.under(step)));
        assertThat(worked).hasSizeGreaterThan(100);
        for (Worked each : worked) {
            double again = Recomputed.evaluate(each);
            assertThat(again)
                    .as(each.name() + ": " + each.line())
                    .isCloseTo(each.number(), within(1e-9 * Math.max(1, Math.abs(each.number()))));
        }
    }

    static List<Path> samples() {
        return Samples.papered();
    }
}
