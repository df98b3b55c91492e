package spadework.paperwork;

import java.util.Locale;
import spadework.drawing.Scene;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Soil;
import spadework.pricebook.Section;

/** Puts the scope of work together. It takes no money. */
public final class ScopePaper {
    private ScopePaper() {}

    public static Scope of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        Runs runs = new Runs(dossier);
        return new Scope(
                Heads.of(dossier),
                plan,
                new WallWorks(dossier).all(),
                runs.all(),
                runs.outlets(),
                !job.water().roofLines().isEmpty(),
                job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP),
                Measurements.of(dossier.takeoff().quantities().stream()
                        .filter(quantity -> quantity.section().kind() != Section.WALL
                                && quantity.section().kind() != Section.SETUP)
                        .toList()),
                job.protection(),
                Notes.all(dossier),
                dossier.phrases().deference(),
                job.site().locateTicket().orElse(""),
                soil(dossier, job.site().soil()));
    }

    private static String soil(Dossier dossier, Soil soil) {
        return dossier.terms()
                .get("soil",
                        "texture", plain(soil.texture()),
                        "seepage", plain(soil.seepage()),
                        "type", dossier.terms().of("soiltype", soil.type()));
    }

    private static String plain(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
