// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Outlet;
import spadework.job.Protection;
import spadework.job.WaterJob;
import spadework.pricebook.Books;
import spadework.pricebook.Measure;
import spadework.samples.Samples;
import spadework.takeoff.Measuring;
import spadework.takeoff.Takeoff;
import spadework.takeoff.TakeoffLine;

/** Which line item carries work that a finding obliges somebody to pay for, and how much of it. */
class PaidWorkTest {

    private static Finding finding(String id) {
        return new Finding(id, Severity.MUST, "A", Map.of(), Found.PRACTICE);
    }

    private static List<PaidWork> asked(String id) {
        return List.copyOf(PaidWork.askedBy(List.of(finding(id))).keySet());
    }

    private static BigDecimal much(String id, Job job, int times) {
        Takeoff takeoff = Measuring.of(job, Books.standard());
        return asked(id).get(0).asked().of(job, takeoff, Collections.nCopies(times, finding(id)));
    }

    /** Work that is asked for once, however often it is said, and work that is asked for at each wall or run. */
    @ParameterizedTest(name = "{0} asks for {1}, {2} of it when said three times")
    @CsvSource({
        "engineer-bow,     ENG-VISIT,  1",
        "engineer-stone,   ENG-VISIT,  1",
        "footing-in-reach, ENG-VISIT,  1",
        "trench-over-20,   ENG-VISIT,  1",
        "lead-paint,       LEAD-SAFE,  3",
        "water-in-trench,  U-PUMP,     1",
        "daily-inspection, SAFE-CHECK, 1",
        "locate-missing,   LOCATE-811, 1",
        "locate-keep,      LOCATE-811, 1",
        "hand-dig-zone,    VAC-LOCATE, 3",
        "way-in-bridge,    WALK-BRIDGE, 1",
        "way-in-bridge-low, WALK-BRIDGE, 1",
        "roots,            TREE-CARE,  3",
        "inspection-holds, PERMIT,     1",
        "outlet-guard,     OUT-GUARD,  3",
        "sump,             SUMP-ELEC,  3",
        "sump-lead,        SUMP-LEAD,  3",
        "sump-riser,       SUMP-RISER, 3"
    })
    void findingsNameTheirItem(String id, String item, BigDecimal much) {
        assertThat(asked(id)).hasSize(1);
        assertThat(asked(id).get(0).items().get(0)).isEqualTo(item);
        assertThat(much(id, Jobs.job(), 3)).isEqualByComparingTo(much);
        assertThat(Books.standard().find(item)).isPresent();
    }

    /** Only an id that ends in a dash stands for all that begin so. */
    @ParameterizedTest
    @CsvSource({"engineer", "lead-paint-old", "sump-basin-small", "shielded", "ladder"})
    void otherFindingsAskForNone(String id) {
        assertThat(asked(id)).isEmpty();
    }

    /** The trench of the sump's own discharge pipe, 1 of the 3 or more that the sample digs for pipes. */
    @Test
    void dischargeCountsItsOwnTrench() {
        List<TakeoffLine> lines = Samples.bid(Path.of("sample-quotes/poured-basement-with-sump"))
                .dossier()
                .takeoff()
                .lines();
        Finding about = new Finding("sump-discharge-trench", Severity.MUST, "S1", Map.of(), Found.PRACTICE);
        PaidWork work = asked("sump-discharge-trench").get(0);
        assertThat(lines)
                .filteredOn(line -> line.from().isPresent() && line.from().get().measure() == Measure.PIPE_TRENCH)
                .hasSizeGreaterThan(2)
                .filteredOn(line -> work.measured().test(about, line))
                .singleElement()
                .satisfies(line -> assertThat(line.from().get().label()).isEqualTo(Outlet.dischargeLabel("S1")));
    }

    /** A shield is as long as the walls that are shielded, 40 ft; a foot where only a main asks for one. */
    @Test
    void shieldIsMeasured() {
        Job shielded = Jobs.job(Jobs.protectedBy(Jobs.deep(6), Protection.SHIELDED));
        assertThat(asked("shield").get(0).items()).containsExactly("SHIELD-FT", "SHIELD-DAY");
        assertThat(much("shield", shielded, 2)).isEqualByComparingTo("40");
        assertThat(much("shield", Jobs.job(), 2)).isEqualByComparingTo("1");
    }

    /** The trench of a discharge pipe is as long as the pipe; an outlet that is no sump has none. */
    @Test
    void dischargeTrenchIsAsLongAsThePipe() {
        Job sump = new WaterJob().sump(18.0, 24.0, 8.0, 37.5, 25.0, 12.0).build();
        assertThat(much("sump-discharge-trench", sump, 1)).isEqualByComparingTo("37.5");
        assertThat(much("sump-discharge-trench", new WaterJob().build(), 1)).isEqualByComparingTo("0");
        Job daylight = new WaterJob()
                .sump(18.0, 24.0, 8.0, 37.5, 25.0, 12.0)
                .outlet(spadework.job.OutletKind.DAYLIGHT, 91.0, 90.5)
                .build();
        assertThat(much("sump-discharge-trench", daylight, 1)).isEqualByComparingTo("0");
    }
}
