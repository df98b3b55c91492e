// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.company.Company;
import spadework.job.Agreed;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.Decision;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.TakenAway;
import spadework.job.UnitCount;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricing.Due;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;
import spadework.schedule.DayQuantities;
import spadework.schedule.MeasuredStages;
import spadework.takeoff.Measuring;

/** What options and change orders do to the contract price, and what they never do. */
class ContractingTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();
    private static final Job JOB = Jobs.job();
    private static final Quote QUOTE = quote(JOB);

    private static Quote quote(Job job) {
        return Pricing.of(job, COMPANY, BOOK, DayQuantities.takeoff(job, COMPANY, BOOK));
    }

    private static Contract contract(Job job) {
        return Contracting.of(job, COMPANY, BOOK, QUOTE);
    }

    private static Job with(List<Change> changes) {
        return Agreements.with(
                JOB, Agreements.agreement(List.of(), Optional.of(Agreements.accepted(List.of(), List.of())), changes));
    }

    /** A later program may figure otherwise: what the register has sealed is the price, down to each payment. */
    @Test
    void sealedFiguresStandWhateverIsFiguredToday() {
        Job job = with(List.of(Agreements.change(
                1,
                Agreements.wall("C", 20),
                List.of(),
                1,
                ChangeState.ACCEPTED,
                Optional.of(Agreements.signed("5.00")))));
        Contract today = contract(job);
        Map<String, Dollars> figures = new HashMap<>(SealedFigures.of(today));
        Dollars more = Dollars.of("1000.00");
        figures.computeIfPresent("total", (name, was) -> was.plus(more));
        figures.computeIfPresent("proposed.price", (name, was) -> was.plus(more));
        figures.computeIfPresent("payment.1", (name, was) -> was.plus(more));
        Sum change = new Sum(Dollars.of("777.00"), Dollars.ZERO);
        Contract signed = Contracting.of(
                job, new MeasuredStages(COMPANY, BOOK), QUOTE, new SealedFigures(figures, Map.of(1, change)));

        assertThat(signed.contracted().total())
                .isEqualTo(today.contracted().total().plus(more));
        assertThat(signed.payments().get(0).amount())
                .isEqualTo(today.payments().get(0).amount().plus(more));
        assertThat(signed.changes().get(0).agreed()).isEqualTo(change);
        assertThat(signed.total())
                .isEqualTo(today.contracted().total().plus(more).plus(Dollars.of("777.00")));
        Contract old = Contracting.of(
                job, new MeasuredStages(COMPANY, BOOK), QUOTE, new SealedFigures(Map.of("total", more), Map.of()));
        assertThat(old.contracted().total())
                .as("a line that has its total alone")
                .isEqualTo(more);
    }

    @Test
    void optionIsOutsideTheTotalUntilItIsTaken() {
        var options = List.of(Agreements.option("OP1", Agreements.wall("C", 20)));
        Contract open = contract(Agreements.with(JOB, Agreements.agreement(options, Optional.empty(), List.of())));
        assertThat(open.total()).isEqualTo(QUOTE.total());
        assertThat(open.options().get(0).sum().price()).isGreaterThan(Dollars.ZERO);

        var yes = Optional.of(Agreements.accepted(List.of("OP1"), List.of()));
        Contract taken = contract(Agreements.with(JOB, Agreements.agreement(options, yes, List.of())));
        assertThat(taken.total())
                .isEqualTo(QUOTE.total().plus(open.options().get(0).sum().total()));

        var no = Optional.of(Agreements.accepted(List.of(), List.of("OP1")));
        assertThat(contract(Agreements.with(JOB, Agreements.agreement(options, no, List.of())))
                        .total())
                .isEqualTo(QUOTE.total());
    }

    @Test
    void optionCostsWhatTheJobWithItCostsMore() {
        Alteration more = Agreements.wall("C", 20);
        var options = List.of(Agreements.option("OP1", more));
        Contract contract = contract(Agreements.with(JOB, Agreements.agreement(options, Optional.empty(), List.of())));
        assertThat(contract.options().get(0).sum().price())
                .isEqualTo(quote(Altered.of(JOB, more)).price().minus(QUOTE.price()));
    }

    @Test
    void addingAWallAndTakingItAwayAgainIsTheSameJob() {
        Job more = Altered.of(JOB, Agreements.wall("C", 20));
        TakenAway gone = new TakenAway(List.of("C"), List.of(), List.of(), List.of(), List.of(), Optional.empty());
        assertThat(more).isNotEqualTo(JOB);
        assertThat(Altered.of(more, Alteration.NONE.taking(gone))).isEqualTo(JOB);
    }

    @Test
    void takeoffDifferenceIsComputedFromBothJobs() {
        Job more = Altered.of(JOB, Agreements.wall("C", 20));
        List<QuantityChange> changes = QuantityChanges.between(Measuring.of(JOB, BOOK), Measuring.of(more, BOOK));
        assertThat(changes).anySatisfy(change -> {
            assertThat(change.id()).startsWith("C.");
            assertThat(change.before()).isEqualByComparingTo("0");
        });
        assertThat(QuantityChanges.between(Measuring.of(JOB, BOOK), Measuring.of(JOB, BOOK)))
                .isEmpty();
        List<QuantityChange> back = QuantityChanges.between(Measuring.of(more, BOOK), Measuring.of(JOB, BOOK));
        assertThat(back.stream().map(QuantityChange::difference).reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo(changes.stream()
                        .map(QuantityChange::difference)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .negate());
    }

    @Test
    void unitPricedChangeIsQuantityTimesTheAgreedPrice() {
        UnitPrice foot = QUOTE.unitPrices().stream()
                .filter(price -> price.code().equals("WALL-FOOT-A"))
                .findFirst()
                .orElseThrow();
        UnitCount twelve = new UnitCount(foot.code(), new BigDecimal("12.5"), Unit.FOOT);
        Contract contract = contract(with(List.of(
                Agreements.change(1, Alteration.NONE, List.of(twelve), 1, ChangeState.PENDING, Optional.empty()))));
        assertThat(contract.changes().get(0).figured().price().amount())
                .isEqualByComparingTo(foot.price().amount().multiply(new BigDecimal("12.5")));
    }

    @Test
    void unitPriceThatTheContractLacksIsNamed() {
        UnitCount strange = new UnitCount("NO-SUCH", BigDecimal.ONE, Unit.FOOT);
        Job job = with(List.of(
                Agreements.change(1, Alteration.NONE, List.of(strange), 0, ChangeState.PENDING, Optional.empty())));
        assertThat(Contracting.unknownPrices(job, QUOTE)).containsExactly(strange);
        assertThatThrownBy(() -> contract(job))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no unit price NO-SUCH");
    }

    /** A price that the contract has counts in its own unit alone. */
    @Test
    void unitPriceInAnotherUnitIsNamed() {
        UnitCount foot = new UnitCount("WALL-FOOT-A", BigDecimal.ONE, Unit.FOOT);
        UnitCount yard = new UnitCount("WALL-FOOT-A", BigDecimal.ONE, Unit.CUBIC_YARD);
        Job job = with(List.of(
                Agreements.change(1, Alteration.NONE, List.of(foot, yard), 0, ChangeState.PENDING, Optional.empty())));
        assertThat(Contracting.unknownPrices(job, QUOTE)).containsExactly(yard);
    }

    /** What was signed stands, whatever the calculation says later. */
    @Test
    void signedPriceOfAChangeIsWhatCounts() {
        Contract contract = contract(with(List.of(Agreements.change(
                1,
                Agreements.wall("C", 20),
                List.of(),
                2,
                ChangeState.ACCEPTED,
                Optional.of(Agreements.signed("777.77"))))));
        assertThat(contract.total()).isEqualTo(QUOTE.total().plus(Dollars.of("777.77")));
        assertThat(contract.changes().get(0).figured().total()).isNotEqualTo(Dollars.of("777.77"));
    }

    @Test
    void wallOfAnAcceptedChangeIsInTheAgreedWork() {
        Job job = with(List.of(
                Agreements.change(
                        1,
                        Agreements.wall("C", 20),
                        List.of(),
                        2,
                        ChangeState.ACCEPTED,
                        Optional.of(Agreements.signed("100.00"))),
                Agreements.change(2, Agreements.wall("D", 10), List.of(), 2, ChangeState.PENDING, Optional.empty())));
        assertThat(Agreed.of(job).walls()).extracting(Wall::label).containsExactly("A", "C");
        assertThat(Agreed.contracted(job).walls()).extracting(Wall::label).containsExactly("A");
    }

    /** Rock that is charged by the yard is broken out by somebody; a foot of wall is in the walls, a credit nowhere. */
    @Test
    void workChargedByAUnitPriceIsInTheAgreedWorkOnce() {
        UnitCount rock = new UnitCount("U-ROCK", new BigDecimal("1.2"), Unit.CUBIC_YARD);
        UnitCount credit = new UnitCount("U-CRACK", new BigDecimal("-5"), Unit.FOOT);
        UnitCount foot = new UnitCount("WALL-FOOT-A", BigDecimal.ONE, Unit.FOOT);
        Alteration listed = Alteration.NONE.withItems(
                List.of(new ExtraItem("U-ROCK", Optional.of(new BigDecimal("1.2")), "A", "Ledge")));
        UnitCount there = new UnitCount("U-HAND", BigDecimal.ONE, Unit.CUBIC_YARD, Optional.of("A"));
        Job job = with(List.of(accepted(1, Alteration.NONE, rock, credit, foot, there), accepted(2, listed, rock)));
        assertThat(Agreed.contracted(job).items()).isEqualTo(JOB.items());
        assertThat(Agreed.of(job).items())
                .filteredOn(item -> !JOB.items().contains(item))
                .extracting(ExtraItem::code, ExtraItem::section)
                .as("work at a wall stands with that wall, other work with none")
                .containsExactly(tuple("U-ROCK", "setup"), tuple("U-HAND", "A"), tuple("U-ROCK", "A"));
    }

    private static Change accepted(int number, Alteration alteration, UnitCount... counts) {
        return Agreements.change(
                number, alteration, List.of(counts), 1, ChangeState.ACCEPTED, Optional.of(Agreements.signed("237.60")));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void totalAfterAnyMixOfChangesIsTheContractPlusTheAcceptedOnes(long seed) {
        Random random = new Random(seed);
        List<Change> changes = new ArrayList<>();
        Dollars accepted = Dollars.ZERO;
        for (int number = 1; number <= 1 + random.nextInt(6); number++) {
            ChangeState state = ChangeState.values()[random.nextInt(3)];
            Dollars price = Dollars.of(BigDecimal.valueOf(random.nextInt(900_000) - 300_000, 2));
            boolean yes = state == ChangeState.ACCEPTED;
            Optional<Decision> decision = yes ? Optional.of(Agreements.signed(price.plain())) : Optional.empty();
            int more = random.nextInt(5) - 1;
            changes.add(Agreements.change(
                    number, Agreements.wall("W" + number, 4 + random.nextInt(30)), List.of(), more, state, decision));
            accepted = yes ? accepted.plus(price) : accepted;
        }
        Contract contract = contract(with(changes));
        assertThat(contract.total()).isEqualTo(QUOTE.total().plus(accepted));
        Dollars price = contract.contracted().total();
        for (PricedChange change : contract.changes()) {
            assertThat(change.before()).isEqualTo(price);
            price = change.change().state() == ChangeState.ACCEPTED ? change.after() : price;
        }
        assertThat(price).isEqualTo(contract.total());
        assertThat(Dollars.total(contract.payments().stream().map(Due::amount).toList()))
                .isEqualTo(contract.contracted().total());
    }

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }
}
