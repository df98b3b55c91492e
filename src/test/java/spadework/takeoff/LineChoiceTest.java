// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.ExtraItem;
import spadework.job.Job;
import spadework.job.JobPricing;
import spadework.job.Jobs;
import spadework.job.Wall;
import spadework.job.Water;
import spadework.measure.Length;
import spadework.pricebook.Books;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.working.Given;

/** Which line items a quantity brings, under which conditions, and what is ordered for them. */
class LineChoiceTest {
    private static final PriceBook BOOK = Books.standard();

    private static List<String> codes(Job job, PriceBook book, Measure measure, String section) {
        return Measuring.of(job, book).lines().stream()
                .filter(line -> line.section().label().equals(section))
                .filter(line -> line.from()
                        .filter(quantity -> quantity.measure() == measure)
                        .isPresent())
                .map(TakeoffLine::code)
                .toList();
    }

    private static Job by(Access access) {
        Digging d = Jobs.wall().digging();
        return Jobs.job(Jobs.with(Jobs.wall(), new Digging(access, d.handShare(), d.bottomWidth(), d.protection())));
    }

    private static PriceBook without(String... codes) {
        Map<String, LineItem> items = new HashMap<>(BOOK.items());
        List.of(codes).forEach(items::remove);
        return new PriceBook(
                BOOK.title(),
                BOOK.dated(),
                items,
                BOOK.assemblies(),
                BOOK.earth(),
                BOOK.stoneTonsPerCubicYard(),
                BOOK.truckCubicYards());
    }

    /** Where only hand tools reach a wall its stone and fill are moved by the book's items that need no machine. */
    @Test
    void handItemsTakeTheMachinesPlace() {
        assertThat(codes(by(Access.MACHINE), BOOK, Measure.STONE, "A")).containsExactly("STONE-MACH");
        assertThat(codes(by(Access.MACHINE), BOOK, Measure.BACKFILL, "A")).containsExactly("BACK-LIFT");
        assertThat(codes(by(Access.HAND), BOOK, Measure.STONE, "A")).containsExactly("STONE-HAND");
        assertThat(codes(by(Access.HAND), BOOK, Measure.BACKFILL, "A")).containsExactly("BACK-HAND");
        assertThat(codes(by(Access.HAND), BOOK, Measure.BACKFILL, "drain"))
                .as("the main lies where a machine gets to")
                .containsExactly("BACK-LIFT");
        assertThat(codes(by(Access.HAND), BOOK, Measure.FABRIC, "A"))
                .isEqualTo(codes(by(Access.MACHINE), BOOK, Measure.FABRIC, "A"));
    }

    /** A book that has none keeps its machine and is said to lack them. */
    @Test
    void bookWithoutHandItems() {
        PriceBook none = without("STONE-HAND", "BACK-HAND");
        assertThat(codes(by(Access.HAND), none, Measure.STONE, "A")).containsExactly("STONE-MACH");
        assertThat(HandItems.missing(none)).containsExactlyInAnyOrder(Measure.STONE, Measure.BACKFILL);
        assertThat(HandItems.missing(without("BACK-HAND"))).containsExactly(Measure.BACKFILL);
        assertThat(HandItems.missing(BOOK)).isEmpty();
        assertThat(HandItems.of(Measure.STONE, BOOK)).extracting(LineItem::code).containsExactly("STONE-HAND");
        assertThat(HandItems.of(Measure.STONE, none)).isEmpty();
    }

    /** A book that moves nothing by machine lacks nothing. */
    @Test
    void bookThatMovesByHandAlone() {
        PriceBook byHand = without("STONE-MACH", "BACK-LIFT", "BACK-GRAN");
        assertThat(HandItems.missing(byHand)).isEmpty();
        assertThat(codes(by(Access.HAND), byHand, Measure.STONE, "A"))
                .as("none of it is standard")
                .isEmpty();
    }

    private static Job with(Job j, ExtraItem... extras) {
        return new Job(
                j.head(),
                j.customer(),
                j.site(),
                j.survey(),
                j.work(),
                new JobPricing(List.of(extras), j.priceChanges(), j.taxClass()),
                j.contractTerms(),
                j.acceptedStops(),
                j.agreement(),
                j.notes());
    }

    /** Intake holds a job to its sections and quantities; whoever comes past intake is told. */
    @Test
    void itemWithoutSectionOrQuantityIsSaidToLackIt() {
        Optional<BigDecimal> one = Optional.of(BigDecimal.ONE);
        Job nowhere = with(Jobs.job(), new ExtraItem("PIPE-SEAL", one, "attic", "test"));
        assertThatThrownBy(() -> Measuring.of(nowhere, BOOK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no section attic");
        Job nothing = with(Jobs.job(), new ExtraItem("PIPE-SEAL", Optional.empty(), "A", "test"));
        assertThatThrownBy(() -> Measuring.of(nothing, BOOK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no quantity of PIPE-SEAL");
    }

    /** What is put in by hand carries its own reason and is bought with the rest of its item. */
    @Test
    void extraIsBoughtWithTheRest() {
        Job job = with(Jobs.job(), new ExtraItem("PIPE-PERF4", Optional.of(new BigDecimal("18")), "A", "spare"));
        Takeoff takeoff = Measuring.of(job, BOOK);
        TakeoffLine extra = takeoff.lines().stream()
                .filter(line -> line.reason().equals("spare"))
                .findFirst()
                .orElseThrow();
        assertThat(extra.quantity()).isEqualByComparingTo("18");
        assertThat(extra.section().label()).isEqualTo("A");
        assertThat(extra.from()).isEmpty();
        Purchase pipe = takeoff.purchases().stream()
                .filter(purchase -> purchase.code().equals("PIPE-PERF4"))
                .findFirst()
                .orElseThrow();
        // 40 + 18 ft with 5% are 60.9 ft, 7 sticks of 10 ft
        assertThat(pipe.net()).isEqualByComparingTo("58");
        assertThat(pipe.needed()).isEqualByComparingTo("6.09");
        assertThat(pipe.packages()).isEqualByComparingTo("7");
    }

    /** Waste is bought by the wall: 213.33 sf on block at 25% and on poured wall at 10%, in one order. */
    @Test
    void oneOrderOfTwoWastes() {
        Wall poured = Jobs.with(Jobs.wall(), spadework.job.WallKind.POURED);
        Wall second = new Wall(
                "B",
                "side",
                poured.place(),
                poured.depth(),
                poured.footing(),
                poured.surface(),
                poured.openings(),
                poured.windowWells(),
                poured.digging());
        Takeoff takeoff = Measuring.of(Jobs.job(Jobs.wall(), second), BOOK);
        Purchase coat = takeoff.purchases().stream()
                .filter(purchase -> purchase.code().equals("COAT-RUB"))
                .findFirst()
                .orElseThrow();
        double each = takeoff.quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.COAT_GALLONS)
                .findFirst()
                .orElseThrow()
                .value()
                .doubleValue();
        double holds = BOOK.get("COAT-RUB").material().orElseThrow().holds().doubleValue();
        assertThat(coat.net().doubleValue()).isCloseTo(2 * each, within(1e-9));
        assertThat(coat.needed().doubleValue()).isCloseTo(each * (1.25 + 1.10) / holds, within(1e-9));
        assertThat(coat.working().formula()).isEqualTo("ceil((N1 × (1 + w1) + N2 × (1 + w2)) ÷ h)");
    }

    private static Quantity later(Measure measure, double value) {
        TakeoffSection setup = Measuring.of(Jobs.job(), BOOK).sections().stream()
                .filter(section -> section.label().equals("setup"))
                .findFirst()
                .orElseThrow();
        return new Quantity(
                "later", measure, setup, "whole job", "Later", Given.of("x", "later", value, measure.unit(), "test"));
    }

    /** What is counted later brings its standard items behind the rest, and its material into the order. */
    @Test
    void laterQuantities() {
        Job job = Jobs.job();
        Takeoff before = Measuring.of(job, BOOK);
        Takeoff trips = DerivedQuantities.added(job, BOOK, before, List.of(later(Measure.MOBILIZATION_TRIP, 2)));
        assertThat(trips.quantities()).hasSize(before.quantities().size() + 1);
        assertThat(trips.lines().subList(before.lines().size(), trips.lines().size()))
                .extracting(TakeoffLine::code)
                .containsExactly("MOB-MACH");
        assertThat(trips.lines().get(before.lines().size()).quantity()).isEqualByComparingTo("2");
        assertThat(trips.purchases()).isEqualTo(before.purchases());
        assertThat(trips.sections()).isEqualTo(before.sections());
        Takeoff pipe = DerivedQuantities.added(job, BOOK, before, List.of(later(Measure.DRAIN_PIPE, 60)));
        assertThat(pipe.purchases().stream()
                        .filter(purchase -> purchase.code().equals("PIPE-PERF4"))
                        .map(Purchase::net))
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("100"));
        Takeoff none =
                DerivedQuantities.added(job, without("MOB-MACH"), before, List.of(later(Measure.MOBILIZATION_TRIP, 2)));
        assertThat(none.lines()).isEqualTo(before.lines());
    }

    /** Each wall's stone is bought by its own tons. */
    @Test
    void stoneIsBoughtByTheTonsOfItsWall() {
        Wall a = Jobs.wall();
        Wall b = new Wall(
                "B",
                "side",
                new spadework.job.WallPlace(spadework.job.Side.EAST, Length.ZERO, Length.ofFeet(10)),
                a.depth(),
                a.footing(),
                a.surface(),
                a.openings(),
                a.windowWells(),
                a.digging());
        Water w = Jobs.water();
        spadework.job.FootingDrain d = w.drains().get(0);
        spadework.job.FootingDrain both = new spadework.job.FootingDrain(
                d.label(),
                List.of("A", "B"),
                d.item(),
                d.teeAt(),
                d.into(),
                d.startInvert(),
                d.endInvert(),
                d.teeInvert(),
                d.startGrade(),
                d.endGrade());
        Takeoff takeoff = Measuring.of(
                Jobs.job(
                        Jobs.site(),
                        new Water(List.of(both), w.mains(), List.of(), List.of(), w.outlets(), List.of()),
                        a,
                        b),
                BOOK);
        for (String label : List.of("A", "B")) {
            BigDecimal tons = takeoff.quantities().stream()
                    .filter(quantity -> quantity.measure() == Measure.STONE_TONS
                            && quantity.label().equals(label))
                    .findFirst()
                    .orElseThrow()
                    .value();
            assertThat(takeoff.lines().stream()
                            .filter(line -> line.code().equals("STONE-MACH")
                                    && line.section().label().equals(label))
                            .map(line -> line.bought().orElseThrow()))
                    .containsExactly(tons);
        }
    }
}
