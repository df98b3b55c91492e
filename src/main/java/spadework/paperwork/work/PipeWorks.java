// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import spadework.job.Downspout;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.measure.Length;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.takeoff.Quantity;

/** Pipes and outlets as the papers describe them. */
public final class PipeWorks {
    private final Dossier dossier;
    private final Job job;
    private final PaperWords terms;

    public PipeWorks(Dossier dossier) {
        this.dossier = dossier;
        this.job = dossier.job();
        this.terms = dossier.terms();
    }

    public List<PipeWork> all() {
        List<PipeWork> runs = new ArrayList<>();
        job.water().drains().forEach(drain -> runs.add(drain(drain)));
        job.water().mains().forEach(main -> runs.add(solid(main, "main", Measure.MAIN_PIPE, takesDrains(main))));
        job.water().roofLines().forEach(line -> runs.add(solid(line, "roof line", Measure.ROOF_PIPE, takesRoof(line))));
        return runs;
    }

    public List<OutletWork> outlets() {
        return job.water().outlets().stream().map(this::outlet).toList();
    }

    private PipeWork drain(FootingDrain drain) {
        Length length = dossier.takeoff().quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.DRAIN_PIPE
                        && quantity.label().equals(drain.label()))
                .map(Quantity::value)
                .map(feet -> Length.ofFeet(feet.doubleValue()))
                .findFirst()
                .orElse(Length.ZERO);
        boolean inTheMiddle = drain.teeAt() == TeeAt.MIDDLE;
        List<PipeEnd> ends = PipeEnd.of(drain);
        Length reach = inTheMiddle ? Length.ofFeet(length.feet() / 2) : length;
        return new PipeWork(
                drain.label(),
                "drain",
                drain.item().map(this::named).orElseGet(() -> standard(Measure.DRAIN_PIPE)),
                length.text(),
                inTheMiddle ? bothWays(ends, reach) : levels(ends, reach),
                drain.into(),
                terms.get("takes.drain", "walls", terms.walls(drain.along())));
    }

    private PipeWork solid(SolidRun run, String kind, Measure measure, String takes) {
        return new PipeWork(
                run.label(),
                kind,
                run.item().map(this::named).orElseGet(() -> standard(measure)),
                run.length().text(),
                levels(PipeEnd.of(run), run.length()),
                run.into(),
                takes);
    }

    private String takesDrains(SolidRun main) {
        String drains = joined(job.water().drains(), d -> d.into().equals(main.label()) ? d.label() : "");
        return drains.isEmpty() ? terms.get("takes.nothing") : terms.get("takes.main", "drains", drains);
    }

    private String takesRoof(SolidRun line) {
        String spouts =
                joined(job.water().downspouts(), (Downspout d) -> d.into().equals(line.label()) ? d.label() : "");
        return spouts.isEmpty() ? terms.get("takes.nothing") : terms.get("takes.roof", "downspouts", spouts);
    }

    private <T> String joined(List<T> things, Function<T, String> label) {
        return terms.row(
                things.stream().map(label).filter(text -> !text.isEmpty()).toList());
    }

    private String named(String code) {
        return terms.own(dossier.book().get(code).name());
    }

    private String standard(Measure measure) {
        return dossier.book().standardFor(measure).stream()
                .findFirst()
                .map(LineItem::name)
                .map(terms::own)
                .orElse("");
    }

    private String levels(List<PipeEnd> ends, Length length) {
        return levels(ends.get(0), ends.get(1), length, "levels");
    }

    /** Both sides of a drain with its tee in the middle: as one where they fall alike. */
    private String bothWays(List<PipeEnd> ends, Length side) {
        PipeEnd tee = ends.get(2);
        String first = levels(ends.get(0), tee, side, "levels.both");
        return first.equals(levels(ends.get(1), tee, side, "levels.both"))
                ? first
                : levels(ends.get(0), tee, side, "levels") + "; " + levels(ends.get(1), tee, side, "levels");
    }

    /** Empty where a level is missing. */
    private String levels(PipeEnd from, PipeEnd to, Length length, String falling) {
        return from.level()
                .flatMap(high -> to.level().map(low -> FallWords.of(terms, high, low, length, falling)))
                .orElse("");
    }

    private OutletWork outlet(Outlet outlet) {
        return new OutletWork(
                outlet.label(),
                outlet.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                outlet.what(),
                outlet.level().map(Length::levelText).orElse(""),
                outlet.fromHouse().map(Length::text).orElse(""),
                outlet.fromLotLine().map(Length::text).orElse(""),
                outlet.permission().orElse(""));
    }
}
