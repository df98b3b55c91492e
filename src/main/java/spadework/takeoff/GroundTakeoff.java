// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.ArrayList;
import java.util.List;
import spadework.job.Job;
import spadework.job.Restoration;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.pricebook.EarthFactor;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** The balance of soil over the whole job, and what is put back on top. */
public final class GroundTakeoff {
    /** The ground falls so much (IRC R401.3, F-22). */
    public static final Length FALL = Length.ofInches(6);

    /** Over the first so many feet from the wall. */
    public static final Length FALL_OVER = Length.ofFeet(10);

    private static final double WEDGE_SQUARE_FEET = FALL.feet() * FALL_OVER.feet() / 2;

    private GroundTakeoff() {}

    static List<Driven> of(
            Job job, PriceBook book, List<Driven> measured, TopsoilShare topsoil, TakeoffSection section) {
        QuantityCollector collector = new QuantityCollector(section, "whole job", Conditions.in(job, section));
        Restoration put = job.restoration();
        Given regrade = Given.of("r", "wall to grade along", put.regrade().feet(), Unit.FOOT, "/restoration/regrade");
        collector.add(
                Measure.REGRADE,
                QuantityCollector.counted(Measure.REGRADE, regrade.number(), "r", "as agreed", regrade));
        balance(job, book, measured, regrade, topsoil, collector);
        planting(put, collector);
        return collector.found();
    }

    private static void balance(
            Job job,
            PriceBook book,
            List<Driven> measured,
            Given regrade,
            TopsoilShare topsoil,
            QuantityCollector collector) {
        EarthFactor earth = book.earthFor(job.site().soil().texture());
        String source = earth.source().text() + ", " + earth.group();
        Listed shrink =
                new Listed("k", "shrink, bank to compacted", earth.shrink().fraction(), Unit.NONE, source);
        Listed swell = new Listed("w", "swell, bank to loose", earth.swell().fraction(), Unit.NONE, source);
        Worked dug = sum("U", "dug at walls and in pipe trenches, bank", measured, Measure.DUG, Measure.PIPE_TRENCH);
        Worked filled = sum("F", "backfill, compacted", measured, Measure.BACKFILL);
        Worked wedge = Worked.of(
                "G",
                "fill to shape the ground, compacted",
                WEDGE_SQUARE_FEET * regrade.number() / 27,
                Unit.CUBIC_YARD,
                new Formula("6 ÷ 12 × 10 ÷ 2 × r ÷ 27", "IRC R401.3"),
                regrade);
        Worked graded = graded(topsoil, measured);
        double fill = filled.number() + wedge.number() - graded.number();
        double surplus = dug.number() - EarthVolumes.bankFor(fill, shrink.number());
        Worked bank = Worked.of(
                "X",
                surplus < 0 ? "soil that is missing, bank (negative)" : "surplus soil, bank",
                surplus,
                Unit.CUBIC_YARD,
                new Formula("U − (F + G − Tg) ÷ (1 − k)", "bank needed for a compacted fill: fill ÷ (1 − shrink)"),
                dug,
                filled,
                wedge,
                graded,
                shrink);
        if (dug.number() > 0 || wedge.number() > 0) {
            collector.keep(Measure.SURPLUS, bank, List.of());
        }
        if (surplus > 0) {
            haul(book, bank, swell, collector);
        } else {
            collector.add(
                    Measure.IMPORT,
                    Worked.of(
                            "I",
                            "soil brought in, bank",
                            -surplus,
                            Unit.CUBIC_YARD,
                            new Formula("−X", "what is missing"),
                            bank));
        }
    }

    /** Topsoil that lies on ground which is graded but was not dug, so that the fill stops below it there too. */
    private static Worked graded(TopsoilShare topsoil, List<Driven> measured) {
        Worked all = topsoil.inAll("Ta");
        Worked over = Worked.of(
                "Tb",
                "topsoil over what was dug",
                over(measured),
                Unit.CUBIC_YARD,
                new Formula("Tc", "sum over the job"),
                Listed.of("Tc", "topsoil over each trench", over(measured), Unit.CUBIC_YARD, "To of each backfill"));
        return Worked.of(
                "Tg",
                "topsoil over ground that is only graded",
                Math.max(0, all.number() - over.number()),
                Unit.CUBIC_YARD,
                new Formula("max(Ta − Tb, 0)", "the fill stops below the topsoil"),
                all,
                over);
    }

    private static double over(List<Driven> measured) {
        return measured.stream()
                .map(Driven::quantity)
                .filter(quantity -> quantity.measure() == Measure.BACKFILL)
                .flatMap(quantity -> quantity.working().inputs().stream())
                .filter(input -> input.symbol().equals("To"))
                .mapToDouble(Working::number)
                .sum();
    }

    private static void haul(PriceBook book, Worked bank, Listed swell, QuantityCollector collector) {
        Worked loose = Worked.of(
                "Y",
                "surplus soil, loose",
                EarthVolumes.loose(bank.number(), swell.number()),
                Unit.CUBIC_YARD,
                new Formula("X × (1 + w)", "loose = bank × (1 + swell)"),
                bank,
                swell);
        Listed truck =
                Listed.of("t", "what a truck takes, loose", book.truckCubicYards(), Unit.CUBIC_YARD, Sources.of(book));
        collector.add(Measure.HAUL, loose);
        collector.add(
                Measure.HAUL_LOAD,
                QuantityCollector.counted(
                        Measure.HAUL_LOAD,
                        EarthVolumes.loads(loose.number(), truck.number()),
                        "ceil(Y ÷ t)",
                        "whole loads",
                        loose,
                        truck));
    }

    private static Worked sum(String symbol, String name, List<Driven> measured, Measure... measures) {
        List<Working> inputs = new ArrayList<>();
        StringBuilder formula = new StringBuilder();
        double sum = 0;
        for (Driven driven : measured) {
            Quantity quantity = driven.quantity();
            if (List.of(measures).contains(quantity.measure())) {
                String each = symbol + (inputs.size() + 1);
                inputs.add(new Listed(each, quantity.description(), quantity.value(), quantity.unit(), quantity.id()));
                formula.append(formula.isEmpty() ? "" : " + ").append(each);
                sum += quantity.value().doubleValue();
            }
        }
        return Worked.of(
                symbol,
                name,
                sum,
                Unit.CUBIC_YARD,
                new Formula(formula.isEmpty() ? "0" : formula.toString(), "sum over the job"),
                inputs.toArray(Working[]::new));
    }

    private static void planting(Restoration put, QuantityCollector collector) {
        Given topsoil = area("a", "area that gets topsoil", put.topsoil(), "topsoil");
        Given depth =
                Given.of("h", "depth of topsoil", put.topsoilDepth().feet(), Unit.FOOT, "/restoration/topsoilDepth");
        collector.add(
                Measure.TOPSOIL,
                Worked.of(
                        "Ts",
                        "topsoil",
                        topsoil.number() * depth.number() / 27,
                        Unit.CUBIC_YARD,
                        new Formula("a × h ÷ 27", "area times depth"),
                        topsoil,
                        depth));
        squareYards(collector, Measure.SEED, put.seed(), "seed");
        squareYards(collector, Measure.SOD, put.sod(), "sod");
        squareYards(collector, Measure.CONCRETE, put.concrete(), "concrete");
        collector.add(Measure.PLANTS, RunTakeoff.count(Measure.PLANTS, put.plants(), "/restoration/plants"));
    }

    private static void squareYards(QuantityCollector collector, Measure measure, Area area, String key) {
        Given given = area("a", measure.trade(), area, key);
        collector.add(
                measure,
                QuantityCollector.counted(measure, given.number() / 9, "a ÷ 9", "9 sf in a square yard", given));
    }

    private static Given area(String symbol, String name, Area area, String key) {
        return Given.of(symbol, name, area.squareFeet(), Unit.SQUARE_FOOT, "/restoration/" + key);
    }
}
