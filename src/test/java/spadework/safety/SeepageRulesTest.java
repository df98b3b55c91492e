// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Seepage;
import spadework.job.Texture;
import spadework.job.WaterJob;
import spadework.water.Permeability;

/** Water that was seen to run is not forecast away by the table of a slow soil. */
class SeepageRulesTest {
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(textBlock = """
            CLAY,       FREE,    true
            SILTY_CLAY, FREE,    true
            LOAM,       FREE,    true
            SANDY_LOAM, FREE,    false
            SAND,       FREE,    false
            UNKNOWN,    FREE,    false
            CLAY,       DAMP,    false
            CLAY,       NONE,    false
            CLAY,       UNKNOWN, false
            """)
    void freeWaterInSlowSoil(Texture texture, Seepage seepage, boolean expected) {
        assertThat(Checked.ids(new WaterJob().soil(texture).seeping(seepage)).contains("seepage-beyond-tables"))
                .isEqualTo(expected);
    }

    /** ROSETTA sand, 26.779 cm/h, is the fastest of the textures (H-27); silty clay, 0.06 in/h, the slowest (H-26). */
    @Test
    void rangeReachesUpToEveryTexture() {
        Permeability free = Permeability.of(Texture.CLAY, Seepage.FREE);
        assertThat(free.low()).isCloseTo(0.06, within(1e-9));
        assertThat(free.high()).isCloseTo(26.779 / 2.54, within(1e-9));
        assertThat(free.source()).contains("runs freely");
        assertThat(Permeability.of(Texture.CLAY, Seepage.DAMP)).isEqualTo(Permeability.of(Texture.CLAY));
        assertThat(Permeability.of(Texture.SANDY_LOAM, Seepage.FREE)).isEqualTo(Permeability.of(Texture.SANDY_LOAM));
    }

    /** The flows follow: 40 ft of clay in which water runs bring as much at the high end as 40 ft of sand. */
    @Test
    void flowsFollow() {
        String free = Checked.only(new WaterJob().soil(Texture.CLAY).seeping(Seepage.FREE), "seepage-share")
                .values()
                .get("high");
        String sand = Checked.only(new WaterJob().soil(Texture.SAND), "seepage-share")
                .values()
                .get("high");
        String damp = Checked.only(new WaterJob().soil(Texture.CLAY).seeping(Seepage.DAMP), "seepage-share")
                .values()
                .get("high");
        assertThat(free).isEqualTo(sand).isNotEqualTo(damp);
    }
}
