// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spadework.company.Company;
import spadework.company.Tax;
import spadework.company.TaxMode;
import spadework.job.Agreements;
import spadework.job.Alteration;
import spadework.job.ChangeState;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.ExtraItem;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Jobs;
import spadework.job.Restoration;
import spadework.job.Side;
import spadework.job.TakenAway;
import spadework.job.UnitCount;
import spadework.job.Wall;
import spadework.job.WallDepth;
import spadework.job.WallEnd;
import spadework.job.WallKind;
import spadework.job.WallPlace;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Books;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.takeoff.Measuring;

/** A change order that the contract's unit prices fit is priced by them; the rest by the path of the job. */
class FittingPricesTest {
    private static final Company COMPANY = Books.company();
    private static final PriceBook BOOK = Books.standard();
    private static final Job JOB = Jobs.job();
    private static final Quote QUOTE = Pricing.of(JOB, COMPANY, BOOK, Measuring.of(JOB, BOOK));

    private static Dollars price(String code) {
        return QUOTE.unitPrices().stream()
                .filter(p -> p.code().equals(code))
                .findFirst()
                .orElseThrow()
                .price();
    }

    private static PricedChange change(Alteration alteration, Company company, UnitCount... counts) {
        Job job = Agreements.with(
                JOB,
                Agreements.agreement(
                        List.of(),
                        Optional.of(Agreements.accepted(List.of(), List.of())),
                        List.of(Agreements.change(
                                1, alteration, List.of(counts), 1, ChangeState.PENDING, Optional.empty()))));
        return Contracting.of(job, company, BOOK, QUOTE).changes().get(0);
    }

    private static PricedChange change(Alteration alteration) {
        return change(alteration, COMPANY);
    }

    private static Alteration of(
            List<Wall> walls,
            List<FootingDrain> drains,
            List<ExtraItem> items,
            Optional<Restoration> restoration,
            TakenAway taken) {
        Alteration none = Alteration.NONE;
        return new Alteration(
                walls,
                none.finishes(),
                none.corners(),
                drains,
                none.mains(),
                none.roofLines(),
                none.downspouts(),
                none.outlets(),
                items,
                restoration,
                taken);
    }

    private static Alteration walls(Wall... walls) {
        return of(List.of(walls), List.of(), List.of(), Optional.empty(), TakenAway.NOTHING);
    }

    private static ExtraItem item(String code, String quantity) {
        return new ExtraItem(code, Optional.of(new BigDecimal(quantity)), "A", "found");
    }

    private static Wall other(Wall w, String label, double length, double start, double end) {
        return new Wall(
                label,
                "front wall",
                new WallPlace(Side.SOUTH, w.from(), Length.ofFeet(length)),
                new WallDepth(Length.ofFeet(start), Length.ofFeet(end)),
                w.footing(),
                w.surface(),
                w.openings(),
                w.windowWells(),
                w.digging());
    }

    /** A drain that goes on along the new wall. */
    private static FootingDrain drain(String... along) {
        FootingDrain d = JOB.water().drains().get(0);
        return new FootingDrain(
                d.label(),
                List.of(along),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
    }

    @ParameterizedTest(name = "{0} ft in place of 40 ft: {1} ft")
    @CsvSource({"52.5, 12.5", "41, 1", "30, -10"})
    void longerAndShorterWallIsChargedByTheFoot(double length, String feet) {
        PricedChange change = change(walls(Jobs.wall().withLength(Length.ofFeet(length))));
        assertThat(change.lines()).extracting(line -> line.price().code()).containsExactly("WALL-FOOT-A");
        assertThat(change.figured().price().amount())
                .isEqualByComparingTo(price("WALL-FOOT-A").amount().multiply(new BigDecimal(feet)));
        assertThat(change.rest()).isEqualTo(Dollars.ZERO);
        assertThat(change.isOtherwiseByPath()).isTrue();
    }

    /** Each 6 in deeper, for a foot of wall; what is no whole step is priced by the path. */
    @ParameterizedTest(name = "{0} in deeper: {1} steps")
    @CsvSource({"6, 1", "12, 2", "5.9, 0", "9, 0", "-6, 0"})
    void deeperWallIsChargedByTheStep(double inches, int steps) {
        PricedChange change = change(walls(Jobs.wall().deeperBy(Length.ofInches(inches))));
        if (steps == 0) {
            assertThat(change.lines()).isEmpty();
            assertThat(change.figured()).isEqualTo(change.byPath());
        } else {
            assertThat(change.lines()).extracting(line -> line.price().code()).containsExactly("WALL-DEEPER-A");
            assertThat(change.figured().price().amount())
                    .isEqualByComparingTo(price("WALL-DEEPER-A").amount().multiply(BigDecimal.valueOf(40L * steps)));
        }
    }

    @Test
    void deeperAtOneEndAloneIsPricedByThePath() {
        assertThat(change(walls(Jobs.wall().asBuilt(Length.ofFeet(40), Length.ofFeet(5), Length.ofFeet(5.5))))
                        .lines())
                .isEmpty();
        assertThat(change(walls(Jobs.wall().asBuilt(Length.ofFeet(41), Length.ofFeet(5.5), Length.ofFeet(5.5))))
                        .lines())
                .isEmpty();
    }

    /** One more foot of wall like wall A: built, dug and drained alike, its depth within 6 in. */
    @ParameterizedTest(name = "{0} to {1} ft deep, {2}, drained {3}: differs in {4}")
    @CsvSource(textBlock = """
            5,   5,   BLOCK,  true,
            5.5, 5.5, BLOCK,  true,
            4.5, 4.5, BLOCK,  true,
            5.6, 5.6, BLOCK,  true,  DEEPER
            4.4, 4.4, BLOCK,  true,  SHALLOWER
            4.3, 5.6, BLOCK,  true,  DEEPER
            5,   5,   POURED, true,  KIND
            5,   5,   BLOCK,  false, DRAIN
            """)
    void wallLikeIt(double start, double end, WallKind kind, boolean drained, UnfitWall.Difference difference) {
        boolean fits = difference == null;
        Wall wall = Jobs.with(other(Jobs.wall(), "C", 20, start, end), kind);
        PricedChange change = change(of(
                List.of(wall),
                drained ? List.of(drain("A", "C")) : List.of(),
                List.of(),
                Optional.empty(),
                TakenAway.NOTHING));
        assertThat(change.lines()).hasSize(fits ? 1 : 0);
        assertThat(change.unfit())
                .isEqualTo(
                        fits
                                ? List.of()
                                : List.of(new UnfitWall(
                                        "C",
                                        "A",
                                        Set.of(difference),
                                        Length.ofFeet(20),
                                        Dollars.of(price("WALL-FOOT-A").amount().multiply(BigDecimal.valueOf(20))))));
        assertThat(Dollars.total(change.sections().stream()
                        .map(IssueDifference.SectionMove::difference)
                        .toList()))
                .as("the parts come to the whole")
                .isEqualTo(change.byPath().price());
        if (fits) {
            assertThat(change.figured().price().amount())
                    .isEqualByComparingTo(price("WALL-FOOT-A").amount().multiply(BigDecimal.valueOf(20)));
        }
    }

    /**
     * Wall B is like A and drained as A is: lengthening it is charged by A's foot. Window wells are no
     * foot of wall.
     */
    @Test
    void anotherAgreedWallLikeIt() {
        Wall b = other(Jobs.wall(), "B", 20, 5, 5);
        Job two = Jobs.job(Jobs.wall(), b);
        Wall longer = b.withLength(Length.ofFeet(26));
        assertThat(FittingPrices.of(two, walls(longer), QUOTE.unitPrices()).counts())
                .containsExactly(new UnitCount("WALL-FOOT-A", new BigDecimal("6.0"), Unit.FOOT));
        Wall unlike = Jobs.with(b, WallKind.POURED);
        assertThat(FittingPrices.of(
                                Jobs.job(Jobs.wall(), unlike),
                                walls(unlike.withLength(Length.ofFeet(26))),
                                QUOTE.unitPrices())
                        .counts())
                .isEmpty();
    }

    /** What else the alteration brings stays to be priced: its corners and drains go with walls that fit, no others. */
    @Test
    void restKeepsWhatNoPriceCovers() {
        Wall deep = other(Jobs.wall(), "D", 20, 8, 8);
        Alteration alteration = of(
                List.of(deep),
                List.of(drain("A", "D")),
                List.of(item("U-ROCK", "1")),
                Optional.empty(),
                TakenAway.NOTHING);
        FittingPrices fitting = FittingPrices.of(JOB, alteration, QUOTE.unitPrices());
        assertThat(fitting.counts()).extracting(UnitCount::price).containsExactly("U-ROCK");
        assertThat(fitting.rest().walls()).containsExactly(deep);
        assertThat(fitting.rest().drains()).hasSize(1);
        assertThat(fitting.rest().items()).isEmpty();
    }

    /** Corners of walls that fit are in the price of their foot; corners of walls that do not are not. */
    @ParameterizedTest(name = "wall of {0} ft of depth: corners left to price {1}")
    @CsvSource({"5, 0", "8, 1"})
    void cornersGoWithTheirWalls(double depth, int left) {
        Alteration none = Alteration.NONE;
        Corner corner = new Corner(new WallEnd("A", true), new WallEnd("C", false), CornerKind.OUTSIDE);
        Alteration alteration = new Alteration(
                List.of(other(Jobs.wall(), "C", 20, depth, depth)),
                none.finishes(),
                List.of(corner),
                List.of(drain("A", "C")),
                none.mains(),
                none.roofLines(),
                none.downspouts(),
                none.outlets(),
                none.items(),
                none.restoration(),
                none.takenAway());
        Alteration rest = FittingPrices.of(JOB, alteration, QUOTE.unitPrices()).rest();
        assertThat(rest.corners()).hasSize(left);
        assertThat(rest.walls()).hasSize(left);
        assertThat(rest.drains()).hasSize(left);
    }

    /** A drain along a wall that nobody knows leaves the path to say so. */
    @Test
    void strangeDrainIsNoFootOfWall() {
        Alteration strange = of(
                List.of(Jobs.wall().withLength(Length.ofFeet(50))),
                List.of(drain("A", "X")),
                List.of(),
                Optional.empty(),
                TakenAway.NOTHING);
        assertThat(FittingPrices.of(JOB, strange, QUOTE.unitPrices()).counts()).isEmpty();
    }

    @Test
    void sameWallAgainChangesNothing() {
        assertThat(FittingPrices.of(JOB, walls(Jobs.wall()), QUOTE.unitPrices()).counts())
                .isEmpty();
    }

    /** One wall that fits and one that does not are both priced by the path: the trench is one. */
    @Test
    void allWallsOrNone() {
        Wall like = other(Jobs.wall(), "C", 20, 5, 5);
        Wall deep = other(Jobs.wall(), "D", 20, 8, 8);
        assertThat(change(of(
                                List.of(like, deep),
                                List.of(drain("A", "C", "D")),
                                List.of(),
                                Optional.empty(),
                                TakenAway.NOTHING))
                        .lines())
                .isEmpty();
    }

    @Test
    void unknownItemsAreChargedByTheirUnitPrice() {
        PricedChange change =
                change(of(List.of(), List.of(), List.of(item("U-ROCK", "1.2")), Optional.empty(), TakenAway.NOTHING));
        assertThat(change.lines()).extracting(line -> line.price().code()).containsExactly("U-ROCK");
        assertThat(change.figured().price().amount())
                .isEqualByComparingTo(price("U-ROCK").amount().multiply(new BigDecimal("1.2")));
    }

    /** Seed beside the rock is no unit price's: it is priced as the job was, and both add. */
    @Test
    void restIsPricedByThePath() {
        Area none = Area.ofSquareFeet(0);
        Restoration seed =
                new Restoration(Length.ofFeet(0), none, Length.ofInches(4), Area.ofSquareFeet(900), none, none, 0);
        PricedChange alone = change(of(List.of(), List.of(), List.of(), Optional.of(seed), TakenAway.NOTHING));
        PricedChange both = change(of(
                List.of(),
                List.of(),
                List.of(item("U-ROCK", "1"), item("PLY-PATH", "1")),
                Optional.of(seed),
                TakenAway.NOTHING));
        PricedChange path =
                change(of(List.of(), List.of(), List.of(item("PLY-PATH", "1")), Optional.of(seed), TakenAway.NOTHING));
        assertThat(alone.lines()).isEmpty();
        assertThat(both.lines()).hasSize(1);
        assertThat(both.rest()).isEqualTo(path.byPath().price());
        assertThat(both.figured().price())
                .isEqualTo(price("U-ROCK").plus(path.byPath().price()));
    }

    @Test
    void whatTakesAWallOrAPipeAwayIsPricedByThePath() {
        for (TakenAway taken : List.of(
                new TakenAway(List.of("A"), List.of(), List.of(), List.of(), List.of(), Optional.empty()),
                new TakenAway(List.of(), List.of("D1"), List.of(), List.of(), List.of(), Optional.empty()))) {
            List<Wall> longer = List.of(Jobs.wall().withLength(Length.ofFeet(50)));
            assertThat(FittingPrices.of(
                                    JOB, of(longer, List.of(), List.of(), Optional.empty(), taken), QUOTE.unitPrices())
                            .counts())
                    .isEmpty();
        }
    }

    /** Named unit prices count as before, and stand beside no other figure where nothing is altered. */
    @Test
    void namedUnitPricesCount() {
        PricedChange change =
                change(Alteration.NONE, COMPANY, new UnitCount("U-ROCK", new BigDecimal("2"), Unit.CUBIC_YARD));
        assertThat(change.figured().price().amount())
                .isEqualByComparingTo(price("U-ROCK").amount().multiply(BigDecimal.valueOf(2)));
        assertThat(change.isOtherwiseByPath()).isFalse();
    }

    /** Sales tax is charged on a change where the company collects it on the price, and nowhere else. */
    @ParameterizedTest(name = "{0}: tax {1} on 200.00")
    @CsvSource({"ON_PRICE, 14.50", "ON_PURCHASES, 0.00", "NONE, 0.00"})
    void workIsTaxed(TaxMode mode, String tax) {
        Company c = COMPANY;
        Company taxing = new Company(
                c.name(),
                c.credentials(),
                c.contact(),
                c.letterhead(),
                c.rates(),
                c.production(),
                c.priceRules(),
                new Tax(mode, Percent.of("7.25"), java.util.Map.of()),
                c.usualTerms());
        Sum sum = WorkPrice.taxed(Dollars.of("200.00"), taxing);
        assertThat(sum.price()).isEqualTo(Dollars.of("200.00"));
        assertThat(sum.tax()).isEqualTo(Dollars.of(tax));
        List<Sum> changed = new ArrayList<>();
        changed.add(change(
                        of(List.of(), List.of(), List.of(item("U-ROCK", "1")), Optional.empty(), TakenAway.NOTHING),
                        taxing)
                .figured());
        assertThat(changed.get(0).tax().isZero()).isEqualTo(mode != TaxMode.ON_PRICE);
    }
}
