// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Condition;
import spadework.job.Jobs;
import spadework.job.Wall;

/** IRC R404.1.7: a wall that holds back 4 ft or more is filled against once the floor above holds it, or braced. */
class BackfillBracingTest {
    @ParameterizedTest(name = "{0} ft deep, tied to the floor above: {1}: braced {2}")
    @CsvSource({
        "3.99, false, false",
        "4, false, true",
        "4, , true",
        "7, , true",
        "3.99, , false",
        "4, true, false",
        "7, true, false",
    })
    void dueWhereNobodyKnowsThatItIsHeld(double deep, Boolean tied, boolean due) {
        assertThat(BackfillBracing.isDue(wall(deep, tied))).isEqualTo(due);
    }

    private static Wall wall(double deep, Boolean tied) {
        Condition sound = Jobs.sound();
        return Jobs.with(
                Jobs.deep(deep),
                new Condition(
                        sound.surface(),
                        sound.cracks(),
                        sound.horizontalCrack(),
                        sound.displaced(),
                        sound.bow(),
                        sound.footingUndermined(),
                        Optional.ofNullable(tied),
                        sound.unseen()));
    }
}
