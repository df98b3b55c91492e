// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.measure.Area;
import spadework.measure.FilmThickness;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.measure.Volume;
import spadework.takeoff.wall.Coating;
import spadework.working.Formula;
import spadework.working.Given;
import spadework.working.Worked;
import spadework.working.Working;

/** How far a coating goes (C-01, C-02). */
public final class CoatingFigure {
    private static final String C01 = "231 cu in in a US gallon";
    private static final String PER_MIL = "231 ÷ 144 ÷ 0.001";

    private CoatingFigure() {}

    /**
     * What is known of a coat.
     *
     * @param area to coat, above 0
     * @param solids by volume, above 0, at most 100%
     * @param gallons on the area, above 0
     */
    public record Known(
            Optional<Area> area,
            Optional<FilmThickness> wet,
            Optional<FilmThickness> dry,
            Optional<Percent> solids,
            Optional<Volume> gallons) {}

    /**
     * Coverage and films from whatever fixes the wet film: the wet film itself, the dry one with the solids, or the
     * gallons on an area. Nothing is added for waste.
     *
     * @throws WrongInputs if none of them fixes the wet film, or more than one does
     */
    public static Answer of(Known known) throws WrongInputs {
        Optional<Given> a = known.area().map(v -> Inputs.given("a", "area", v.squareFeet(), Unit.SQUARE_FOOT));
        Optional<Given> g = known.gallons().map(v -> Inputs.given("g", "coating", v.gallons(), Unit.GALLON));
        Optional<Given> d = known.dry().map(v -> Inputs.given("dry", "dry film", v.mils(), Unit.MIL));
        Optional<Given> vs = known.solids()
                .map(v -> Inputs.given("vs", "solids by volume", v.fraction().doubleValue(), Unit.NONE));
        List<Working> ways = new ArrayList<>();
        known.wet().ifPresent(v -> ways.add(Inputs.given("wet", "wet film", v.mils(), Unit.MIL)));
        if (d.isPresent() && vs.isPresent()) {
            ways.add(Worked.of(
                    "wet",
                    "wet film",
                    Coating.wetFilm(d.get().number(), vs.get().number()),
                    Unit.MIL,
                    new Formula("dry ÷ vs", "UFC 3-190-06 (C-02)"),
                    d.get(),
                    vs.get()));
        }
        if (a.isPresent() && g.isPresent()) {
            ways.add(Worked.of(
                    "wet",
                    "wet film",
                    Coating.coverage(a.get().number() / g.get().number()),
                    Unit.MIL,
                    new Formula(PER_MIL + " ÷ (a ÷ g)", C01),
                    a.get(),
                    g.get()));
        }
        if (ways.size() != 1) {
            throw wrong(ways.isEmpty());
        }
        Working film = ways.get(0);
        List<Working> found = new ArrayList<>();
        found.add(coverage(film));
        found.add(film);
        if (d.isPresent() && vs.isEmpty()) {
            found.add(solids(d.get(), film));
        } else if (d.isEmpty() && vs.isPresent()) {
            found.add(Worked.of(
                    "dry",
                    "dry film",
                    Coating.dryFilm(film.number(), vs.get().number()),
                    Unit.MIL,
                    new Formula("wet × vs", "UFC 3-190-06 (C-02)"),
                    film,
                    vs.get()));
        }
        if (a.isPresent() && g.isEmpty()) {
            found.add(Worked.of(
                    "g",
                    "coating, net",
                    Coating.gallons(a.get().number(), film.number()),
                    Unit.GALLON,
                    new Formula("a × wet ÷ (" + PER_MIL + ")", C01),
                    a.get(),
                    film));
        } else if (a.isEmpty() && g.isPresent()) {
            found.add(Worked.of(
                    "a",
                    "area that it covers",
                    g.get().number() * Coating.coverage(film.number()),
                    Unit.SQUARE_FOOT,
                    new Formula("g × (" + PER_MIL + ") ÷ wet", C01),
                    g.get(),
                    film));
        }
        return Answer.of(found);
    }

    private static Worked coverage(Working film) {
        return Worked.of(
                "cov",
                "coverage",
                Coating.coverage(film.number()),
                Unit.SQUARE_FOOT_PER_GALLON,
                new Formula(PER_MIL + " ÷ wet", C01),
                film);
    }

    private static Worked solids(Working dry, Working film) throws WrongInputs {
        if (dry.number() > film.number()) {
            throw new WrongInputs(
                    "a dry film thicker than the wet one",
                    "a dry film at most as thick as the wet one",
                    "check --dry and --wet");
        }
        return Worked.of(
                "vsp",
                "solids by volume",
                dry.number() / film.number() * 100,
                Unit.PERCENT,
                new Formula("dry ÷ wet × 100", "UFC 3-190-06 (C-02)"),
                dry,
                film);
    }

    private static WrongInputs wrong(boolean none) {
        return new WrongInputs(
                none ? "nothing that fixes the wet film" : "the wet film fixed twice",
                "one of: --wet; --dry with --solids; --area with --gallons",
                none ? "give --wet \"60 mil\", or --dry \"40 mil\" with --solids 60%" : "leave one of them out");
    }
}
