// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spadework.job.Access;
import spadework.job.Site;
import spadework.job.SiteLimit;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.measure.FilmThickness;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricebook.CodeFilm;
import spadework.pricebook.Film;
import spadework.pricebook.LineItem;
import spadework.takeoff.wall.WallFace;
import spadework.trench.Bank;

/** The walls as the papers describe them. */
public final class WallWorks {
    private final Dossier dossier;
    private final PaperWords terms;

    public WallWorks(Dossier dossier) {
        this.dossier = dossier;
        this.terms = dossier.terms();
    }

    public List<WallWork> all() {
        return of(dossier.job().walls());
    }

    /** The same for walls that the job need not have, as those of an option. */
    public List<WallWork> of(List<Wall> walls) {
        return walls.stream().map(this::work).toList();
    }

    private WallWork work(Wall wall) {
        return new WallWork(
                wall.label(),
                wall.where(),
                terms.of("faces", wall.faces()),
                terms.of("kind", wall.kind()),
                wall.length().text(),
                depth(wall),
                trench(wall),
                new FootingWork(
                        wall.footing().thickness().text(),
                        wall.footing().projection().text()),
                surface(wall),
                new OpeningWork(wall.windowWells(), openings(wall)),
                finish(wall),
                MeasuredRows.of(
                        dossier.takeoff().quantities().stream()
                                .filter(quantity -> quantity.section().label().equals(wall.label()))
                                .toList(),
                        terms));
    }

    private TrenchWork trench(Wall wall) {
        Site site = dossier.job().site();
        Bank bank = Bank.of(site, wall);
        boolean hand = wall.digging().access() == Access.HAND;
        return new TrenchWork(
                wall.deepestTrench().text(),
                wall.digging().bottomWidth().text(),
                bank.protection().name().toLowerCase(Locale.ROOT),
                Figures.inWorking(bank.slope().value()),
                hand,
                hand || wall.digging().handShare().isZero()
                        ? ""
                        : wall.digging().handShare().text(),
                site.limits().stream()
                        .filter(limit -> limit.wall().equals(wall.label()))
                        .map(this::limit)
                        .toList());
    }

    private SurfaceWork surface(Wall wall) {
        return new SurfaceWork(
                wall.strip().stream()
                        .map(code -> terms.own(dossier.book().get(code).name()))
                        .toList(),
                wall.condition().cracks().isPositive()
                        ? wall.condition().cracks().text()
                        : "",
                WallFace.isEvened(wall, dossier.book()));
    }

    private String depth(Wall wall) {
        Length start = wall.depthStart();
        Length end = wall.depthEnd();
        return start.text().equals(end.text()) ? start.text() : terms.range(start.text(), end.text());
    }

    private List<String> openings(Wall wall) {
        return wall.openings().stream()
                .map(opening -> terms.get(
                        "opening",
                        "count",
                        Integer.toString(opening.count()),
                        "what",
                        opening.what(),
                        "width",
                        opening.width().text(),
                        "height",
                        opening.height().text()))
                .toList();
    }

    private String limit(SiteLimit limit) {
        String text = terms.get(
                "limit." + PaperWords.key(limit.kind().name()),
                "distance",
                limit.distance().text());
        String trunk = limit.trunk()
                .map(t -> terms.get("limit.trunk", "trunk", t.text()))
                .orElse("");
        return text + trunk + (limit.note().isEmpty() ? "" : " (" + limit.note() + ")");
    }

    /** What the wall gets, in words the code allows. */
    public FinishWork finish(Wall wall) {
        String system = wall.finish().system().name().toLowerCase(Locale.ROOT);
        Optional<LineItem> item = WallFace.coverItem(wall, dossier.book());
        Optional<Film> film = item.flatMap(LineItem::film);
        if (film.isEmpty()) {
            String name = terms.own(item.map(LineItem::name).orElse(system)).toLowerCase(Locale.ROOT);
            return new FinishWork(system, name, terms.get("word.dampproofing"), "", "", 1, "", false);
        }
        FilmThickness dry = WallFace.dryFilm(wall, film.get());
        boolean proof = WallFace.isWaterproofed(wall, dossier.book());
        return new FinishWork(
                system,
                terms.of("generic", film.get().generic()),
                terms.get(proof ? "word.waterproofing" : "word.dampproofing"),
                terms.film(dry.text()),
                mils(WallFace.wetFilm(wall, film.get(), "").number()),
                film.get().coats(),
                CodeFilm.printed(film.get().generic()).map(terms::film).orElse(""),
                proof);
    }

    /** What a gauge reads at least on each of its coats while they are wet; empty where there is no film. */
    public String wetFilmOfACoat(Wall wall) {
        return WallFace.coverItem(wall, dossier.book())
                .flatMap(LineItem::film)
                .map(film -> mils(WallFace.wetFilm(wall, film, "").number() / film.coats()))
                .orElse("");
    }

    private String mils(double mils) {
        return terms.film(String.format(Locale.ROOT, "%.0f mil", Math.ceil(mils - 1e-9)));
    }
}
