// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import java.util.List;
import java.util.Optional;
import spadework.job.Access;
import spadework.job.FinishSystem;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.Wall;
import spadework.measure.Unit;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.DugWall;
import spadework.takeoff.wall.Trenches;
import spadework.takeoff.wall.WallFace;
import spadework.takeoff.wall.WallMeasures;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Everything that is measured at one wall. */
final class WallTakeoff {
    private final PriceBook book;
    private final Wall wall;
    private final Trenches trenches;
    private final WallMeasures m;
    private final TopsoilShare topsoil;
    private final QuantityCollector collector;

    private WallTakeoff(
            Job job, PriceBook book, Trenches trenches, TopsoilShare topsoil, Wall wall, TakeoffSection section) {
        this.topsoil = topsoil;
        this.trenches = trenches;
        this.book = book;
        this.wall = wall;
        this.m = trenches.at(wall);
        this.collector = new QuantityCollector(section, wall.label(), Stretch.whole(Conditions.at(job, wall)));
    }

    static List<Driven> of(
            Job job, PriceBook book, Trenches trenches, TopsoilShare topsoil, Wall wall, TakeoffSection section) {
        WallTakeoff takeoff = new WallTakeoff(job, book, trenches, topsoil, wall, section);
        Worked dug = takeoff.dig();
        takeoff.face();
        takeoff.cover();
        takeoff.stoneAndBackfill(dug);
        return takeoff.collector.found();
    }

    private Worked dig() {
        Worked dug = DugWall.bank(trenches, wall);
        collector.share(Measure.DUG, dug);
        boolean hand = wall.digging().access() == Access.HAND;
        double share = hand ? 1 : wall.digging().handShare().fraction().doubleValue();
        Given q = Given.of("q", "share dug by hand", share, Unit.NONE, "digging of wall " + wall.label());
        collector.share(
                Measure.DIG_MACHINE,
                Worked.of(
                        "Dm",
                        "dug by machine, bank",
                        dug.number() * (1 - share),
                        Unit.CUBIC_YARD,
                        new Formula("D × (1 − q)", "share of the whole"),
                        dug,
                        q));
        collector.share(
                Measure.DIG_HAND,
                Worked.of(
                        "Dh",
                        "dug by hand, bank",
                        dug.number() * share,
                        Unit.CUBIC_YARD,
                        new Formula("D × q", "share of the whole"),
                        dug,
                        q));
        collector.share(Measure.SPOIL, part("Dm", "dug by machine, bank", "D × (1 − q)", share, dug, q));
        bulk(dug, share, q);
        if (m.bank().protection() == Protection.SHIELDED) {
            collector.add(Measure.SHIELD, length(Measure.SHIELD));
        }
        return dug;
    }

    /** What the machine digs with care beside the wall, and what it digs in the open behind that. */
    private void bulk(Worked dug, double share, Given q) {
        Worked beside = DugWall.beside(trenches, wall);
        double open = dug.number() - beside.number();
        if (Math.abs(open) < 1e-9) {
            collector.share(
                    Measure.DIG_WALL_SIDE, part("Dw", "dug by machine beside the wall", "D × (1 − q)", share, dug, q));
            return;
        }
        collector.share(
                Measure.DIG_WALL_SIDE, part("Dw", "dug by machine beside the wall", "W × (1 − q)", share, beside, q));
        collector.share(
                Measure.DIG_BULK,
                Worked.of(
                        "Db",
                        "dug by machine in bulk",
                        open * (1 - share),
                        Unit.CUBIC_YARD,
                        new Formula("(D − W) × (1 − q)", "what lies behind the upright trench"),
                        dug,
                        beside,
                        q));
    }

    private static Worked part(String symbol, String name, String formula, double share, Worked whole, Given q) {
        return Worked.of(
                symbol,
                name,
                whole.number() * (1 - share),
                Unit.CUBIC_YARD,
                new Formula(formula, "share of the whole"),
                whole,
                q);
    }

    private void face() {
        Worked clean = WallFace.clean(m);
        if (!wall.strip().isEmpty()) {
            collector.add(Measure.STRIP, clean, wall.strip().toArray(String[]::new));
        }
        collector.add(Measure.CLEAN, clean);
        collector.add(Measure.FOOTING_CLEAN, length(Measure.FOOTING_CLEAN));
        collector.add(
                Measure.CRACK, taken(Measure.CRACK, wall.condition().cracks().feet(), "condition"));
        collector.add(Measure.WINDOW_WELL, taken(Measure.WINDOW_WELL, wall.windowWells(), "windowWells"));
        collector.add(Measure.WALL_FOOT, length(Measure.WALL_FOOT));
    }

    private void cover() {
        Worked area = WallFace.cover(m);
        FinishSystem system = wall.finish().system();
        if (WallFace.isParged(wall)) {
            collector.add(Measure.PARGE, area);
        }
        String[] chosen = wall.finish().item().stream().toArray(String[]::new);
        if (system == FinishSystem.SHEET) {
            collector.add(Measure.SHEET, area, chosen);
        } else {
            collector.add(Measure.COVE, length(Measure.COVE));
            collector.add(Measure.COAT, area, chosen);
            WallFace.coverItem(wall, book)
                    .flatMap(LineItem::film)
                    .ifPresent(film -> collector.add(
                            Measure.COAT_GALLONS,
                            WallFace.gallons(area, WallFace.wetFilm(wall, film, Sources.of(book)))));
        }
        collector.add(Measure.PROTECT, area);
    }

    private void stoneAndBackfill(Worked dug) {
        Optional<FootingDrain> drain = trenches.drainAt(wall);
        Worked top = topsoil.over("To", trenches.areaAtGrade(wall));
        if (drain.isEmpty()) {
            collector.share(
                    Measure.BACKFILL,
                    Worked.of(
                            "F",
                            "backfill, compacted",
                            dug.number() - top.number(),
                            Unit.CUBIC_YARD,
                            new Formula("D − To", "what is dug is filled, up to the topsoil"),
                            dug,
                            top));
            return;
        }
        Pipe pipe = DrainTakeoff.pipe(drain.get(), book);
        Worked stone = StoneEnvelope.volume(trenches, drain.get(), m, pipe);
        collector.share(Measure.STONE, stone);
        collector.share(Measure.STONE_TONS, tons(stone));
        collector.add(Measure.FABRIC, StoneEnvelope.fabric(m, trenches.stoneAt(wall.label()), pipe));
        Worked pipeVolume = DrainTakeoff.pipeVolume("P", m.length(), pipe);
        collector.share(
                Measure.BACKFILL,
                Worked.of(
                        "F",
                        "backfill, compacted",
                        dug.number() - stone.number() - pipeVolume.number() - top.number(),
                        Unit.CUBIC_YARD,
                        new Formula("D − S − P − To", "what is dug less what takes its place"),
                        dug,
                        stone,
                        pipeVolume,
                        top));
    }

    private Worked tons(Worked stone) {
        Listed density = Listed.of(
                "w", "weight of the stone", book.stoneTonsPerCubicYard(), Unit.TON_PER_CUBIC_YARD, Sources.of(book));
        return Worked.of(
                "T",
                "drain stone, net",
                EarthVolumes.tons(stone.number(), density.number()),
                Unit.TON,
                new Formula("S × w", "volume times weight"),
                stone,
                density);
    }

    private Worked length(Measure measure) {
        return QuantityCollector.counted(measure, m.length().number(), "L", "length of the wall", m.length());
    }

    private Worked taken(Measure measure, double value, String key) {
        Working given = Given.of("x", measure.trade(), value, measure.unit(), key + " of wall " + wall.label());
        return QuantityCollector.counted(measure, value, "x", "as measured at the visit", given);
    }
}
