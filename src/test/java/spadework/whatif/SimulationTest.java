// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spadework.finding.Fault;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.portfolio.WhatIf;
import spadework.office.reply.Reply;
import spadework.pricebook.Books;
import spadework.pricing.PricedLine;
import spadework.pricing.Quote;
import spadework.samples.Samples;

/** Random runs against what is known without them. */
class SimulationTest {
    private static final int RUNS = 20_000;

    /**
     * The sum of independent normals is normal with the sum of the means and of the variances: 100 ± 3, 50 ± 4 and 20 ±
     * 12 give 170 ± 13. The error allowed is four standard errors of a quantile, √(p(1 − p) ÷ n) ÷ density.
     */
    @ParameterizedTest
    @CsvSource({"0.05", "0.1", "0.5", "0.8", "0.9", "0.95"})
    void quantileOfASumOfNormalsIsTheOneOfItsClosedForm(double share) {
        Simulation<Double> simulation =
                Simulation.of(RUNS, 7, draws -> draws.normal(100, 3) + draws.normal(50, 4) + draws.normal(20, 12));
        NormalDistribution sum = new NormalDistribution(170, 13);
        double exact = sum.inverseCumulativeProbability(share);
        double error = Math.sqrt(share * (1 - share) / RUNS) / sum.density(exact);
        assertThat(simulation.quantile(share)).isCloseTo(exact, within(4 * error));
        assertThat(simulation.above(exact)).isCloseTo(1 - share, within(4 * Math.sqrt(share * (1 - share) / RUNS)));
    }

    /**
     * One number of each run falls into each band of 1/40 of the normal distribution, whose limits are its quantiles.
     * A chance of 10% comes to pass in 4 runs of 40, neither more nor less.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void everyBandIsDrawnOnce(long seed) {
        NormalDistribution normal = new NormalDistribution(0, 1);
        Simulation<Double> second = Simulation.of(40, seed, draws -> {
            draws.chance(0.5);
            return draws.normal(0, 1);
        });
        for (int i = 0; i < 40; i++) {
            assertThat(40 * normal.cumulativeProbability(second.outcomes().get(i)))
                    .isBetween((double) i, i + 1.0);
        }
        assertThat(Simulation.of(40, seed, draws -> draws.chance(0.1) ? 1 : 0).above(0))
                .isEqualTo(0.1);
    }

    /**
     * Fifty runs tell a quantile of a sum at least as well as 100 that are drawn blindly, whose standard error is √(p(1
     * − p) ÷ 100) ÷ density: the mean square over 400 seeds.
     */
    @ParameterizedTest
    @CsvSource({"0.1", "0.5", "0.9"})
    void fiftyRunsAreAsGoodAsAHundredDrawnBlindly(double share) {
        NormalDistribution sum = new NormalDistribution(170, 13);
        double exact = sum.inverseCumulativeProbability(share);
        double squares = 0;
        for (int seed = 0; seed < 400; seed++) {
            double found = Simulation.of(
                            50, seed, draws -> draws.normal(100, 3) + draws.normal(50, 4) + draws.normal(20, 12))
                    .quantile(share);
            squares += (found - exact) * (found - exact);
        }
        double blind = share * (1 - share) / 100 / Math.pow(sum.density(exact), 2);
        assertThat(squares / 400).isLessThan(blind);
    }

    @Test
    void chanceComesToPassInItsShareOfTheRuns() {
        Simulation<Double> simulation = Simulation.of(RUNS, 3, draws -> draws.chance(0.1) ? 1.0 : 0.0);
        assertThat(simulation.above(0.5)).isCloseTo(0.1, within(4 * Math.sqrt(0.1 * 0.9 / RUNS)));
    }

    @Test
    void quantileIsAnOutcomeByNearestRank() {
        Simulation<Integer> ten = new Simulation<>(List.of(10, 9, 8, 7, 6, 5, 4, 3, 2, 1));
        assertThat(List.of(
                        ten.quantile(0.1), ten.quantile(0.11), ten.quantile(0.5), ten.quantile(0.8), ten.quantile(1)))
                .containsExactly(1, 2, 5, 8, 10);
        assertThat(ten.above(8)).isEqualTo(0.2);
    }

    @Test
    void sameSeedGivesTheSamePricesAndAnotherOneOthers() {
        Case job = job();
        assertThat(Uncertainty.USUAL.prices(job, 60, 5)).isEqualTo(Uncertainty.USUAL.prices(job, 60, 5));
        assertThat(Uncertainty.USUAL.prices(job, 60, 5)).isNotEqualTo(Uncertainty.USUAL.prices(job, 60, 6));
    }

    @Test
    void whatIsSureHasNoRange() {
        Uncertainty sure = Uncertainty.read("depth=0 in,production=0%,soil=0%").uncertainty();
        assertThat(sure.prices(job(), 10, 1).outcomes())
                .containsOnly(job().quote().total());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # direct cost of sample 1 is $16,780.47: × 1.10 × 1.20 ÷ 0.80 = 27,687.78, by sections to whole dollars
            margin=20%                              | 27684.00
            # the margin that the company has already
            margin=12%                              | 25172.00
            # ÷ (1 − 12%) is × (1 + 13.6364%)
            markup=13.6363636%                      | 25172.00
            depth=0 in                              | 25172.00
            production=100%,soil=B                  | 25172.00
            """)
    void knownSettingGivesItsKnownPrice(String typed, String total) {
        Settings settings = Settings.read(typed, Books.company());
        assertThat(settings.faults()).isEmpty();
        assertThat(settings.change().apply(job()).quote().total()).isEqualTo(Dollars.of(total));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            soil=C                                  | dearer
            depth=1 ft                              | dearer
            depth=-6 in                             | cheaper
            production=80%                          | dearer
            overhead=25%                            | dearer
            contingency=0%                          | cheaper
            """)
    void harderWorkCostsMore(String typed, String way) {
        Dollars now = job().quote().total();
        Dollars other = Settings.read(typed, Books.company())
                .change()
                .apply(job())
                .quote()
                .total();
        assertThat(other.compareTo(now) > 0 ? "dearer" : "cheaper").isEqualTo(way);
    }

    /**
     * By hand: the dig crew is an operator and a laborer, (32.00 + 22.00) × 1.45 = $78.30 an hour; the hand crew two
     * laborers, 2 × 22.00 × 1.45 = $63.80; the difference is $14.50 for each hour of the dig crew, a cent a line
     * aside.
     */
    @Test
    void anotherCrewTakesAsManyHoursAtItsOwnWages() {
        Quote now = job().quote();
        Quote other = Settings.read("crew=dig crew:hand crew", Books.company())
                .change()
                .apply(job())
                .quote();
        double saved = 0;
        double hours = 0;
        for (int i = 0; i < now.lines().size(); i++) {
            PricedLine was = now.lines().get(i);
            PricedLine is = other.lines().get(i);
            boolean swapped = was.crew().equals("dig crew");
            assertThat(is.crew()).isEqualTo(swapped ? "hand crew" : was.crew());
            assertThat(is.crewHours()).isEqualTo(was.crewHours());
            assertThat(swapped || is.cost().equals(was.cost())).as(was.code()).isTrue();
            assertThat(is.cost().machine()).isEqualTo(was.cost().machine());
            saved += was.cost().labor().minus(is.cost().labor()).amount().doubleValue();
            hours += swapped ? was.crewHours().doubleValue() : 0;
        }
        assertThat(hours).isGreaterThan(30);
        assertThat(saved).isCloseTo(14.5 * hours, within(0.01 * now.lines().size()));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            crew=dig crew:dig crew                          | margin=12%
            crew=dig crew:hand crew,crew=hand crew:dig crew | crew=hand crew:dig crew
            crew=hand crew                                  | crew=wall crew,crew=hand crew
            """)
    void crewsAreSwappedOneAfterTheOther(String one, String other) {
        assertThat(Settings.read(one, Books.company())
                        .change()
                        .apply(job())
                        .quote()
                        .lines())
                .isEqualTo(Settings.read(other, Books.company())
                        .change()
                        .apply(job())
                        .quote()
                        .lines());
    }

    @Test
    void columnsStandSideBySideWithTheJobAsItIs() {
        Reply answered = WhatIf.sideBySide(
                Samples.bid(Path.of("sample-quotes/block-basement-to-swale")),
                List.of("margin=20%", "crew=dig crew:hand crew", "soil=C", "protection=shielded"));
        assertThat(answered.out().get(0).strip().split(" {2,}"))
                .containsExactly("as it is", "margin=20%", "crew=dig crew:hand crew", "soil=C", "protection=shielded");
        assertThat(answered.out())
                .filteredOn(line -> line.startsWith("Total"))
                .singleElement()
                .asString()
                .contains("$25,172.00  $27,684.00  $24,418.00");
        assertThat(answered.out())
                .allMatch(line -> line.equals(answered.out().get(0)) || line.split(" {2,}").length == 6);
    }

    @Test
    void everyWrongSettingIsTold() {
        assertThat(Settings.read("margn=2,soil=D,margin=99%,depth=3,crew=dig crew:night crew,crew=", Books.company())
                        .faults())
                .hasSize(6)
                .last()
                .extracting(Fault::allowed)
                .asString()
                .contains("dig crew, hand crew");
        assertThat(Uncertainty.read("depth=3,rain=2").faults()).hasSize(2);
    }

    private static Case job() {
        Bid bid = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
        return new Case(bid.dossier().job(), Books.company(), bid.dossier().book());
    }
}
