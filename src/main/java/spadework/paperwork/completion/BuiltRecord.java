// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.completion;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.closeout.AppliedFilm;
import spadework.closeout.BuiltJob;
import spadework.closeout.BuiltLevels;
import spadework.closeout.OpenEvidence;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.BuiltWall;
import spadework.job.CoatReadings;
import spadework.job.HoldPoint;
import spadework.job.Wall;
import spadework.measure.Figures;
import spadework.measure.FilmThickness;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.Picture;
import spadework.paperwork.work.FinishWork;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
import spadework.pricebook.Measure;
import spadework.takeoff.Quantity;
import spadework.working.Worked;

/** What was built beside what was agreed, row by row. */
public final class BuiltRecord {
    private final Dossier agreed;
    private final Dossier built;
    private final AsBuilt record;

    BuiltRecord(Dossier agreed, AsBuilt record) {
        this.agreed = agreed;
        this.built = agreed.about(BuiltJob.of(agreed.job()));
        this.record = record;
    }

    Dossier built() {
        return built;
    }

    List<BuiltWallRow> walls() {
        List<AppliedFilm> films = AppliedFilm.of(built.job(), built.book(), built.takeoff());
        return agreed.job().walls().stream().map(wall -> wall(wall, films)).toList();
    }

    /** What the scope asks for and the record does not hold. */
    OpenEvidence open() {
        return OpenEvidence.of(agreed.job(), AppliedFilm.of(built.job(), built.book(), built.takeoff()));
    }

    private BuiltWallRow wall(Wall wall, List<AppliedFilm> films) {
        Optional<BuiltWall> row = record.wall(wall.label());
        FinishWork finish = new WallWorks(agreed).finish(wall);
        return new BuiltWallRow(
                wall.label(),
                wall.where(),
                new AgreedAndBuilt(
                        wall.length().text(),
                        row.map(BuiltWall::length).map(Length::text).orElse("")),
                new AgreedAndBuilt(
                        depth(wall.depthStart(), wall.depthEnd()),
                        row.map(one -> depth(one.depthStart(), one.depthEnd())).orElse("")),
                finish.material(),
                row.map(this::coat).orElseGet(() -> unrecorded(wall)),
                film(
                        finish,
                        films.stream()
                                .filter(one -> one.wall().equals(wall.label()))
                                .toList()),
                row.map(BuiltWall::holdPoints).orElse(List.of()).stream()
                        .map(this::hold)
                        .toList());
    }

    private BuiltCoat coat(BuiltWall row) {
        BigDecimal area = total(built, Measure.COAT, row.label());
        return new BuiltCoat(
                area.signum() > 0 ? Figures.withUnit(area, Unit.SQUARE_FOOT) : "",
                area,
                row.gallons().map(g -> Figures.withUnit(g, Unit.GALLON)).orElse(""),
                row.gallons().map(List::of).orElse(List.of()),
                row.batches(),
                row.temperature().orElse(""),
                row.coats().stream().flatMap(this::readings).toList());
    }

    private BuiltCoat unrecorded(Wall wall) {
        BigDecimal area = total(built, Measure.COAT, wall.label());
        return new BuiltCoat("", area, "", List.of(), List.of(), "", List.of());
    }

    private Stream<String> readings(CoatReadings coat) {
        DoubleSummaryStatistics mils =
                coat.wet().stream().mapToDouble(FilmThickness::mils).summaryStatistics();
        return coat.wet().isEmpty()
                ? Stream.of()
                : Stream.of(agreed.terms()
                        .get(
                                "built.readings",
                                "coat",
                                Integer.toString(coat.number()),
                                "least",
                                Long.toString(Math.round(mils.getMin())),
                                "most",
                                Long.toString(Math.round(mils.getMax())),
                                "count",
                                Long.toString(mils.getCount())));
    }

    private BuiltFilm film(FinishWork finish, List<AppliedFilm> films) {
        Optional<AppliedFilm> film = films.stream().findFirst();
        return new BuiltFilm(
                film.flatMap(AppliedFilm::applied).map(this::mils).orElse(""),
                film.flatMap(this::dry).orElse(""),
                film.flatMap(AppliedFilm::applied).map(Worked::line).orElse(""),
                film.isPresent() ? finish.wetFilm() : "",
                finish.dryFilm());
    }

    /** Wet film shrinks to dry in the proportion of the promised films. */
    private Optional<String> dry(AppliedFilm film) {
        double share = film.dry().mils() / film.promised().number();
        return film.applied()
                .map(applied -> agreed.terms()
                        .film(String.format(Locale.ROOT, "%.0f mil", Math.floor(applied.number() * share))));
    }

    private BuiltWallRow.HoldRow hold(HoldPoint point) {
        int photo = point.photo()
                .flatMap(file -> agreed.photos().work().holdPoints().stream()
                        .filter(picture -> picture.file().equals(file))
                        .findFirst())
                .map(Picture::number)
                .orElse(0);
        return new BuiltWallRow.HoldRow(
                point.number(),
                point.what(),
                agreed.terms().day(point.on()),
                point.by(),
                photo,
                photo == 0 ? point.waived().orElse("") : "");
    }

    List<BuiltPipeRow> pipes() {
        List<PipeWork> laid = new PipeWorks(built).all();
        List<BuiltPipeRow> rows = new ArrayList<>();
        for (PipeWork run : new PipeWorks(agreed).all()) {
            Optional<BuiltPipe> pipe = record.pipe(run.label());
            boolean leveled = pipe.filter(one -> BuiltLevels.areRecorded(agreed.job(), one))
                    .isPresent();
            rows.add(new BuiltPipeRow(
                    run.label(),
                    run.kind(),
                    run.length(),
                    pipe.map(BuiltPipe::length).map(Length::text).orElse(""),
                    run.levels(),
                    leveled ? laid.get(rows.size()).levels() : ""));
        }
        return rows;
    }

    /** The lengths, depths, gallons, films, levels and loads that were recorded, beside what was agreed. */
    List<ComparedRow> compared() {
        return new Comparison(agreed.terms()).of(walls(), pipes(), ground(), this::plannedGallons);
    }

    private String plannedGallons(String wall) {
        BigDecimal gallons = total(agreed, Measure.COAT_GALLONS, wall);
        return gallons.signum() == 0 ? "" : Figures.withUnit(gallons, Unit.GALLON);
    }

    List<BuiltWork.Ground> ground() {
        PaperWords terms = agreed.terms();
        return List.of(
                new BuiltWork.Ground(
                        terms.get("built.stone"),
                        amount(total(agreed, Measure.STONE_TONS), Unit.TON),
                        record.stone()
                                .map(stone -> amount(BigDecimal.valueOf(stone.tons()), Unit.TON))
                                .orElse("")),
                new BuiltWork.Ground(
                        terms.get("built.loads"),
                        amount(total(agreed, Measure.HAUL_LOAD), Unit.LOAD),
                        record.loads()
                                .map(loads -> amount(BigDecimal.valueOf(loads), Unit.LOAD))
                                .orElse("")),
                new BuiltWork.Ground(
                        terms.get("built.soil"),
                        terms.of("soiltype", agreed.job().site().soil().type()),
                        record.soilFound()
                                .map(soil -> terms.of("soiltype", soil))
                                .orElse("")));
    }

    private String amount(BigDecimal value, Unit unit) {
        if (value.signum() == 0) {
            return agreed.terms().get("built.none");
        }
        return unit == Unit.LOAD ? Figures.inWorking(value) : Figures.withUnit(value, unit);
    }

    private static BigDecimal total(Dossier dossier, Measure measure, String... label) {
        return dossier.takeoff().quantities().stream()
                .filter(quantity -> quantity.measure() == measure)
                .filter(quantity -> label.length == 0 || quantity.label().equals(label[0]))
                .map(Quantity::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private String depth(Length start, Length end) {
        return start.text().equals(end.text()) ? start.text() : agreed.terms().range(start.text(), end.text());
    }

    private String mils(Worked film) {
        return agreed.terms().film(String.format(Locale.ROOT, "%.1f mil", film.number()));
    }
}
