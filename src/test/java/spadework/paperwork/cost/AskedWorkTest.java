// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.paperwork.Dossier;
import spadework.paperwork.DossierFindings;
import spadework.pricing.ItemPrice;
import spadework.pricing.Selling;
import spadework.samples.Samples;

/** Work that findings ask for: told once for the whole job, and taken from what the job leaves where no line pays. */
class AskedWorkTest {
    private static final Bid BASEMENT = Samples.bid(Path.of("sample-quotes/block-basement-to-swale"));
    private static final Bid THREE_WALLS = Samples.bid(Path.of("sample-quotes/added-wall-then-closed"));

    private static CostSheet sheet(Bid bid) {
        return CostSheetPaper.of(bid.dossier(), bid.quote());
    }

    private static Dollars cost(Bid bid, String code, int quantity) {
        Dossier d = bid.dossier();
        return ItemPrice.direct(d.book().get(code), BigDecimal.valueOf(quantity), d.company(), d.book());
    }

    /** Two painted walls of 1968 and a day of pumping: the book asks $1,175.00 and $397.00, which is $1,572.00. */
    @Test
    void whatNoLinePaysForIsTakenFromWhatTheJobLeaves() {
        CostSheet sheet = sheet(BASEMENT);
        UnpricedWork unpriced = sheet.unpriced().orElseThrow();
        assertThat(unpriced.price()).isEqualTo(Dollars.of("1572.00"));
        Dollars direct = cost(BASEMENT, "LEAD-SAFE", 2).plus(cost(BASEMENT, "U-PUMP", 1));
        assertThat(unpriced.cost())
                .as("with contingency and overhead, as every other cost")
                .isEqualTo(Selling.withOverhead(BASEMENT.dossier().company().priceRules(), direct.exact())
                        .toCents(RoundingMode.HALF_UP));
        assertThat(unpriced.left()).isEqualTo(sheet.price().left().minus(unpriced.cost()));
        assertThat(unpriced.items())
                .containsExactlyInAnyOrder(
                        "LEAD-SAFE, Lead-safe work at a painted wall, 2 ea", "U-PUMP, Pumping groundwater, 1.0 day");
        assertThat(unpriced.unknown()).isEmpty();
    }

    /** Once a price is agreed, it is the agreed price that pays for it. */
    @Test
    void itIsTakenFromTheAgreedPriceOnceThereIsOne() {
        CostSheet sheet = sheet(THREE_WALLS);
        UnpricedWork unpriced = sheet.unpriced().orElseThrow();
        assertThat(unpriced.left())
                .isEqualTo(sheet.agreed().orElseThrow().left().minus(unpriced.cost()));
    }

    @Test
    void jobWhoseFindingsAskForNothingLeavesWhatItLeaves() {
        Dossier d = BASEMENT.dossier();
        Dossier nothing = new Dossier(
                d.job(),
                d.company(),
                d.book(),
                d.takeoff(),
                d.contract(),
                d.law(),
                d.revision(),
                new DossierFindings(List.of(), List.of()),
                d.phrases(),
                d.terms(),
                d.homeowner(),
                d.photos());
        assertThat(CostSheetPaper.of(nothing, BASEMENT.quote()).unpriced()).isEmpty();
    }

    /** Three walls and two outlets: each sum is that of the job, so its words name all of them. */
    @Test
    void eachSumNamesEverythingThatItIsFor() {
        assertThat(new AskedWork(THREE_WALLS.dossier(), THREE_WALLS.quote()).most())
                .extracting(CostRisk::what, CostRisk::item, CostRisk::amount)
                .contains(
                        tuple(
                                "Walls A, B, and C: the face is coated or painted, and the house is built 1968.",
                                "LEAD-SAFE, Lead-safe work at a painted wall, 3 ea",
                                Dollars.of("1763.00")),
                        tuple(
                                "Outlet O1 comes to daylight. Outlet O2 comes to daylight.",
                                "OUT-GUARD, Outlet guard, 2 ea",
                                Dollars.of("247.84")))
                .hasSize(5);
    }
}
