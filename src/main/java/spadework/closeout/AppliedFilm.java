// SPDX-License-Identifier: Apache-2.0
package spadework.closeout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.BuiltWall;
import spadework.job.FinishSystem;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.FilmThickness;
import spadework.measure.Unit;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.PriceBook;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;
import spadework.takeoff.wall.Coating;
import spadework.takeoff.wall.WallFace;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/**
 * The mean film that the gallons make on the wall, beside the promise.
 *
 * @param wall label
 * @param applied mean wet film in mils; empty where the gallons were not recorded
 * @param promised wet film that leaves the promised dry film, in mils
 * @param dry the promised dry film
 */
public record AppliedFilm(String wall, Optional<Worked> applied, Worked promised, FilmThickness dry) {
    /** Noise of floating point does not make a film short. */
    private static final double NOISE = 1e-6;

    /** Whether less went on than the promise needs; not known where the gallons are not. */
    public boolean isShort() {
        return applied.isPresent() && applied.get().number() < promised.number() - NOISE;
    }

    /** Whether so many mils of wet film leave less than the promised dry film. */
    public boolean isThin(double mils) {
        return mils < promised.number() - NOISE;
    }

    /**
     * The film of every wall that gets a liquid coating.
     *
     * @param built the job as built
     * @param takeoff of that job: its areas are the built ones
     */
    public static List<AppliedFilm> of(Job built, PriceBook book, Takeoff takeoff) {
        List<AppliedFilm> films = new ArrayList<>();
        for (Wall wall : built.walls()) {
            Optional<Film> film = WallFace.coverItem(wall, book).flatMap(LineItem::film);
            if (wall.finish().system() == FinishSystem.COATING && film.isPresent()) {
                Optional<BuiltWall> record = built.agreement().asBuilt().flatMap(as -> as.wall(wall.label()));
                String source = "price book of " + book.dated();
                films.add(new AppliedFilm(
                        wall.label(),
                        record.flatMap(BuiltWall::gallons)
                                .flatMap(gallons -> applied(wall, gallons.doubleValue(), takeoff)),
                        WallFace.wetFilm(wall, film.get(), source),
                        WallFace.dryFilm(wall, film.get())));
            }
        }
        return films;
    }

    /** Gallons × 1604.17 ÷ sf (C-01); empty for a wall of no area. */
    private static Optional<Worked> applied(Wall wall, double gallons, Takeoff takeoff) {
        return takeoff.quantities().stream()
                .filter(quantity ->
                        quantity.measure() == Measure.COAT && quantity.label().equals(wall.label()))
                .map(Quantity::working)
                .filter(area -> area.value().signum() > 0)
                .findFirst()
                .map(area -> film(wall, gallons, area));
    }

    private static Worked film(Wall wall, double gallons, Working area) {
        Given used = Given.of("g", "gallons on the wall", gallons, Unit.GALLON, "as built, wall " + wall.label());
        return Worked.of(
                "wet",
                "mean wet film",
                Coating.wetFilmOf(gallons, area.value().doubleValue()),
                Unit.MIL,
                new Formula("g × (231 ÷ 144 ÷ 0.001) ÷ " + area.symbol(), "231 cu in in a US gallon"),
                used,
                area);
    }
}
