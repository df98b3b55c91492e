package spadework.paperwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.drawing.ProfileChain;
import spadework.drawing.ProfileReach;
import spadework.drawing.ProfileSketch;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Outlet;
import spadework.job.SolidRun;
import spadework.job.TeeAt;
import spadework.measure.Length;
import spadework.pricebook.LineItem;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;

/** The way of the water seen from the side: each drain through its main, and each roof line, down to the outlet. */
public final class Profiles {
    private final Dossier dossier;
    private final Job job;

    private Profiles(Dossier dossier) {
        this.dossier = dossier;
        this.job = dossier.job();
    }

    public static List<Drawing> of(Dossier dossier) {
        return new Profiles(dossier).all();
    }

    private List<Drawing> all() {
        List<Drawing> drawings = new ArrayList<>();
        for (FootingDrain drain : job.water().drains()) {
            for (ProfileReach reach : reaches(drain)) {
                Optional<SolidRun> main = job.water().mains().stream()
                        .filter(run -> run.label().equals(drain.into()))
                        .findFirst();
                List<ProfileReach> reaches = new ArrayList<>(List.of(reach));
                main.ifPresent(run -> reaches.add(solid(run, ProfileReach.Kind.MAIN, Measure.MAIN_PIPE)));
                drawings.add(drawing(reaches, main.map(SolidRun::into).orElse(drain.into())));
            }
        }
        for (SolidRun line : job.water().roofLines()) {
            drawings.add(drawing(
                    List.of(solid(line, ProfileReach.Kind.ROOF_LINE, Measure.ROOF_PIPE)), line.into()));
        }
        return drawings;
    }

    private Drawing drawing(List<ProfileReach> reaches, String into) {
        Optional<Outlet> outlet = job.water().outlets().stream()
                .filter(candidate -> candidate.label().equals(into))
                .findFirst();
        ProfileChain chain = new ProfileChain(
                reaches,
                into,
                outlet.map(Outlet::what).orElse(""),
                outlet.flatMap(Outlet::level),
                job.site().benchmark().orElse(""));
        return new Drawing(
                reaches.stream().map(ProfileReach::label).toList(),
                dossier.terms().get("drawing.profile", "outlet", into),
                ProfileSketch.of(chain));
    }

    /** A drain in the direction of flow; one that is teed in the middle falls from both ends, to a level not measured. */
    private List<ProfileReach> reaches(FootingDrain drain) {
        Length whole = length(drain);
        if (drain.teeAt() == TeeAt.MIDDLE) {
            Length half = Length.ofFeet(whole.feet() / 2);
            return List.of(
                    perforated(drain, dossier.terms().get("drawing.start", "label", drain.label()), half,
                            drain.startInvert(), Optional.empty()),
                    perforated(drain, dossier.terms().get("drawing.end", "label", drain.label()), half,
                            drain.endInvert(), Optional.empty()));
        }
        boolean turned = drain.teeAt() == TeeAt.START;
        return List.of(perforated(drain, drain.label(), whole,
                turned ? drain.endInvert() : drain.startInvert(), turned ? drain.startInvert() : drain.endInvert()));
    }

    private ProfileReach perforated(
            FootingDrain drain, String label, Length length, Optional<Length> start, Optional<Length> end) {
        return new ProfileReach(label, ProfileReach.Kind.DRAIN, length, start, end, Optional.empty(),
                Optional.empty(), inside(drain.item(), Measure.DRAIN_PIPE));
    }

    private ProfileReach solid(SolidRun run, ProfileReach.Kind kind, Measure measure) {
        return new ProfileReach(run.label(), kind, run.length(), run.startInvert(), run.endInvert(), Optional.empty(),
                Optional.empty(), inside(run.item(), measure));
    }

    private Length inside(Optional<String> chosen, Measure measure) {
        return chosen.map(dossier.book()::get)
                .or(() -> dossier.book().standardFor(measure).stream().findFirst())
                .flatMap(LineItem::pipe)
                .map(Pipe::inside)
                .orElse(Length.ZERO);
    }

    /** The drain's length as it was measured for the price. */
    private Length length(FootingDrain drain) {
        return dossier.takeoff().quantities().stream()
                .filter(quantity -> quantity.measure() == Measure.DRAIN_PIPE
                        && quantity.id().startsWith(drain.label() + "."))
                .map(quantity -> Length.ofFeet(quantity.value().doubleValue()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("drain " + drain.label() + " was not measured"));
    }
}
