// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.contract.PricedChange;
import spadework.job.Agreement;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.Change;
import spadework.job.ChangeState;
import spadework.job.UnitCount;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.office.AgreedBids;
import spadework.office.Bid;
import spadework.pricing.PricedLine;

/** What an agreed price leaves: nothing that is charged is profit alone, for somebody does the work. */
class AgreedMarginsTest {
    private static final Bid CHANGED = AgreedBids.of(AgreedBids.changed());

    private static AgreedMargin of(Bid bid) {
        return AgreedMargins.of(bid.dossier(), bid.quote()).orElseThrow();
    }

    private static Bid charging(String code, Alteration alteration) {
        Change change = Agreements.change(
                1,
                alteration,
                List.of(new UnitCount(code, BigDecimal.TEN, Unit.FOOT)),
                1,
                ChangeState.ACCEPTED,
                Optional.of(Agreements.signed("900.00")));
        return AgreedBids.of(new Agreement(
                Optional.empty(),
                List.of(),
                Optional.of(Agreements.accepted(List.of(), List.of())),
                List.of(change),
                List.of(),
                Optional.empty(),
                Optional.empty()));
    }

    @Test
    void rockChargedByTheYardCostsWhatBreakingItOutTakes() {
        PricedLine rock = CHANGED.quote().lines().stream()
                .filter(line -> line.code().equals("U-ROCK"))
                .findFirst()
                .orElseThrow();
        assertThat(rock.quantity()).isEqualByComparingTo("1.25");
        assertThat(rock.crewHours()).as("hours of the crew that breaks it out").isPositive();
        assertThat(rock.cost().direct()).isGreaterThan(Dollars.ZERO);

        Dollars charged =
                CHANGED.dossier().contract().accepted().get(1).agreed().price();
        Dollars cost = rock.cost().direct();
        assertThat(charged).as("the unit price covers its cost").isGreaterThan(cost);
        assertThat(of(CHANGED).cost()).as("and that cost is in the sum").isGreaterThan(costWithoutRock());
    }

    /** Contingency and overhead only add to the direct cost of the other lines. */
    private static Dollars costWithoutRock() {
        return Dollars.total(CHANGED.quote().lines().stream()
                .filter(line -> !line.code().equals("U-ROCK"))
                .map(line -> line.cost().direct())
                .toList());
    }

    @Test
    void whatThePartsComeToApartIsAFigureOfItsOwn() {
        Dollars apart = CHANGED.dossier().contract().accepted().stream()
                .map(PricedChange::figured)
                .map(sum -> sum.price())
                .reduce(CHANGED.dossier().contract().contracted().price(), Dollars::plus);
        assertThat(of(CHANGED).figured()).isEqualTo(apart);
    }

    @Test
    void wallChargedByTheFootHasNoCostUntilTheChangeHasThatWall() {
        assertThat(of(charging("WALL-FOOT-A", Alteration.NONE)).withoutCost())
                .hasSize(1)
                .allMatch(name -> name.contains("1"));
        assertThat(of(charging("WALL-FOOT-A", Agreements.wall("C", 10))).withoutCost())
                .isEmpty();
    }
}
