// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.finding.Severity;
import spadework.job.OutletKind;
import spadework.job.WaterJob;

/** Whether the water gets out where it is led. */
class OutletRulesTest {

    /** The main ends at 91.50. */
    @ParameterizedTest(name = "{0}, outlet {1}, highest water {2}: {3} {4}")
    @CsvSource(textBlock = """
            DAYLIGHT,       91.0,  91.50, outlet-below-water,      false
            DAYLIGHT,       91.0,  91.51, outlet-below-water,      true
            APPROVED_STORM, 91.0,  91.51, outlet-below-water,      true
            DAYLIGHT,       91.50, 90.0,  outlet-below-level,      false
            DAYLIGHT,       91.51, 90.0,  outlet-below-level,      true
            DAYLIGHT,       91.0,  ,      outlet-water-unmeasured, true
            DAYLIGHT,       91.0,  90.0,  outlet-water-unmeasured, false
            DAYLIGHT,       91.0,  90.0,  outlet-guard,            true
            APPROVED_STORM, 91.0,  90.0,  outlet-guard,            false
            DAYLIGHT,       91.0,  90.0,  outlet-freezing,         true
            APPROVED_STORM, 91.0,  90.0,  outlet-freezing,         false
            DAYLIGHT,       91.0,  90.0,  never-sanitary,          true
            """)
    void outletIsFree(OutletKind kind, Double level, Double water, String id, boolean expected) {
        assertThat(Checked.ids(new WaterJob().outlet(kind, level, water)).contains(id))
                .isEqualTo(expected);
    }

    @Test
    void drownedOutletIsAStopWithItsCure() {
        var found = Checked.only(new WaterJob().outlet(OutletKind.DAYLIGHT, 91.0, 92.0), "outlet-below-water");
        assertThat(found.severity()).isEqualTo(Severity.STOP);
        assertThat(Checked.told(found)).contains("91.50 ft", "92.00 ft", "6 in", "sump");
    }

    @ParameterizedTest(name = "downspout into {0}: stop {1}")
    @CsvSource({"D1, true", "M1, true", "R1, false"})
    void roofWaterHasALineOfItsOwn(String run, boolean expected) {
        WaterJob job = new WaterJob().roofLine("R1", 40, 95.0, 94.0, 98.0).downspout("DS1", 300, run);
        assertThat(Checked.ids(job).contains("roof-into-drain")).isEqualTo(expected);
    }
}
