// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.FinishSystem;
import spadework.job.Opening;
import spadework.job.Wall;
import spadework.job.WallKind;
import spadework.measure.FilmThickness;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.pricebook.CodeFilm;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Listed;
import spadework.working.Worked;
import spadework.working.Working;

/** Areas of the wall's face and what it takes to coat it. */
public final class WallFace {
    private static final double COVE_LAP_FEET = 4.0 / 12;

    private WallFace() {}

    /** Area to strip and clean: face below grade and top of the footing, less openings; square feet. */
    public static Worked clean(WallMeasures m) {
        return area("Aw", "face and footing top to clean", m, m.projection().number(), "p", m.projection());
    }

    /** Area to cover: face from grade to the footing with a lap of 4 in over the cove, less openings; square feet. */
    public static Worked cover(WallMeasures m) {
        Listed lap =
                Listed.of("c", "cove and lap on the footing", COVE_LAP_FEET, Unit.FOOT, "common practice, no source");
        return area("Ac", "face to cover, grade to footing", m, COVE_LAP_FEET, "c", lap);
    }

    private static Worked area(
            String symbol, String name, WallMeasures m, double strip, String stripSymbol, Working stripInput) {
        double openings =
                m.wall().openings().stream().mapToDouble(Opening::squareFeet).sum();
        List<Working> inputs = new ArrayList<>(List.of(m.length(), m.start(), m.end(), stripInput));
        String formula = "L × ((dt0 + dt1) ÷ 2 + " + stripSymbol + ")";
        if (openings > 0) {
            inputs.add(Given.of("o", "openings below grade", openings, Unit.SQUARE_FOOT, "openings of the wall"));
            formula += " − o";
        }
        return Worked.of(
                symbol,
                name,
                Math.max(0, m.length().number() * (m.meanDepth() + strip) - openings),
                Unit.SQUARE_FOOT,
                new Formula(formula, "length times mean height"),
                inputs.toArray(Working[]::new));
    }

    /**
     * Whether the wall gets a parge coat: where that is its finish, and under a sheet on block, which wants a smooth
     * face.
     */
    public static boolean isParged(Wall wall) {
        FinishSystem system = wall.finish().system();
        return system == FinishSystem.PARGE || (system == FinishSystem.SHEET && wall.kind() == WallKind.BLOCK);
    }

    /** Whether that parge coat lies under another coat, and is not the finish itself. */
    public static boolean isEvened(Wall wall, PriceBook book) {
        return isParged(wall)
                && (wall.finish().system() != FinishSystem.PARGE
                        || coverItem(wall, book).flatMap(LineItem::film).isPresent());
    }

    /** The line item that covers this wall: the job's own choice, or the book's standard one for the system. */
    public static Optional<LineItem> coverItem(Wall wall, PriceBook book) {
        Measure measure = wall.finish().system() == FinishSystem.SHEET ? Measure.SHEET : Measure.COAT;
        return wall.finish()
                .item()
                .flatMap(book::find)
                .or(() -> book.standardFor(measure).stream().findFirst());
    }

    /** The dry film that is promised for a wall: the job's, or the item's own. */
    public static FilmThickness dryFilm(Wall wall, Film film) {
        return wall.finish().dryFilm().orElse(film.dryFilm());
    }

    /**
     * Whether the papers may say that the wall is waterproofed: the word follows the film that is promised for it. A
     * wall without a film is dampproofed.
     */
    public static boolean isWaterproofed(Wall wall, PriceBook book) {
        return coverItem(wall, book)
                .flatMap(LineItem::film)
                .filter(film -> CodeFilm.isWaterproofing(film.generic(), dryFilm(wall, film)))
                .isPresent();
    }

    /** Wet film for the promised dry film: dry ÷ solids by volume (UFC 3-190-06, C-02); mils. */
    public static Worked wetFilm(Wall wall, Film film, String bookSource) {
        Given dry = Given.of("dry", "dry film", dryFilm(wall, film).mils(), Unit.MIL, "finish of wall " + wall.label());
        Listed solids = new Listed("vs", "solids by volume", film.volumeSolids().fraction(), Unit.NONE, bookSource);
        return Worked.of(
                "wet",
                "wet film of all coats together",
                Coating.wetFilm(dry.number(), solids.number()),
                Unit.MIL,
                new Formula("dry ÷ vs", "UFC 3-190-06"),
                dry,
                solids);
    }

    /** Net gallons for the area: sf × wet mils ÷ 1604.17 (C-01). */
    public static Worked gallons(Worked area, Worked wet) {
        return Worked.of(
                "g",
                "coating, net",
                Coating.gallons(area.number(), wet.number()),
                Unit.GALLON,
                new Formula(area.symbol() + " × wet ÷ (231 ÷ 144 ÷ 0.001)", "231 cu in in a US gallon"),
                area,
                wet);
    }

    /**
     * Coating bought on top of the net: 10% on smooth poured wall, 25% on masonry. A published applicator sheet
     * allows 25 sf a gallon on smooth poured wall and 20 on block for the same film, a quarter more.
     */
    public static Percent waste(WallKind kind) {
        return Percent.of(kind == WallKind.POURED ? "10" : "25");
    }
}
