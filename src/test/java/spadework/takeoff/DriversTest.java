// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.job.Downspout;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.SoilType;
import spadework.job.Water;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.pricebook.Driver;

/** What assemblies follow, counted. */
class DriversTest {
    /** What assemblies follow that is no length: downspouts and the job itself, however many walls there are. */
    @Test
    void countedDrivers() {
        Water w = Jobs.water();
        List<Downspout> spouts = List.of(
                new Downspout("DS1", Area.ofSquareFeet(300), "R1"), new Downspout("DS2", Area.ofSquareFeet(300), "R1"));
        Job job = Jobs.job(
                Jobs.site(),
                new Water(w.drains(), w.mains(), List.of(), spouts, w.outlets(), List.of()),
                Jobs.wall().withLength(Length.ofFeet(33)));
        assertThat(Drivers.count(Driver.DOWNSPOUT, job, job.walls()).number()).isEqualTo(2);
        assertThat(Drivers.count(Driver.JOB, job, List.of()).number()).isEqualTo(1);
        assertThat(Drivers.count(Driver.FOOT_OF_WALL, job, job.walls()).number())
                .isEqualTo(33);
        assertThat(Drivers.count(Driver.FOOT_OF_WALL, job, List.of()).formula()).isEqualTo("0");
        assertThat(Drivers.count(Driver.CORNER, job, job.walls()).number()).isZero();
        assertThat(List.of(Driver.values()))
                .extracting(Drivers::name)
                .containsExactlyInAnyOrder("foot of wall", "foot of trench", "corner", "downspout", "job");
    }

    /** 1.5 ft of center line from the wall: an outside corner adds it to each wall's trench, an inside one takes it. */
    @ParameterizedTest(name = "{0}: {1} and {2} ft")
    @CsvSource({"40 R 20, 41.5, 21.5", "40 L 20, 38.5, 18.5", "40 L 20 R 30, 38.5, 20"})
    void footOfTrench(String plan, double first, double second) {
        spadework.job.PlanHouse house = spadework.job.PlanHouse.of(plan);
        Job job = house.job(SoilType.B, house.walls(5));
        for (int i = 0; i < 2; i++) {
            assertThat(Drivers.count(
                                    Driver.FOOT_OF_TRENCH,
                                    job,
                                    List.of(job.walls().get(i)))
                            .number())
                    .isCloseTo(i == 0 ? first : second, within(1e-9));
        }
        assertThat(Drivers.count(Driver.CORNER, job, job.walls()).number())
                .isEqualTo(house.corners().size());
    }
}
