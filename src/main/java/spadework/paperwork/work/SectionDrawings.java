// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.ArrayList;
import java.util.List;
import spadework.drawing.section.BodySketch;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.section.WallCovering;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.ground.DigBody;
import spadework.job.Wall;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.takeoff.CrossSection;
import spadework.trench.TrenchLimits;

/** The trench cut across at each wall; walls that would print the same figures share one drawing. */
public final class SectionDrawings {
    private SectionDrawings() {}

    public static List<CaptionedDrawing> of(Dossier dossier) {
        WallWorks works = new WallWorks(dossier);
        List<Cut> cuts = new ArrayList<>();
        for (Wall wall : dossier.job().walls()) {
            add(cuts, new Cut(CrossSection.of(dossier.job(), dossier.book(), wall), covering(works.finish(wall))));
        }
        return cuts.stream().map(cut -> drawing(cut, dossier.terms())).toList();
    }

    /**
     * Those at walls, and each trench or hole away from them that is deep enough for a ladder to stand in it (29 CFR
     * 1926.651(c)(2)).
     */
    public static List<CaptionedDrawing> everywhere(Dossier dossier) {
        List<CaptionedDrawing> all = new ArrayList<>(of(dossier));
        DigBodies.of(dossier.job()).stream()
                .filter(body -> body.entered() && body.kind() != BodyKind.WALL)
                .filter(body -> TrenchLimits.needsWayOut(body.deepest()))
                .map(body -> drawing(body, dossier.terms()))
                .forEach(all::add);
        return all;
    }

    private static CaptionedDrawing drawing(DigBody body, PaperWords terms) {
        return new CaptionedDrawing(
                List.of(BodySketch.name(body, terms.language())),
                terms.get(
                        "drawing.body",
                        "depth",
                        body.deepest().text(),
                        "width",
                        BodySketch.widthAtGrade(body).text()),
                BodySketch.of(body, terms.language()));
    }

    private static void add(List<Cut> cuts, Cut cut) {
        for (int i = 0; i < cuts.size(); i++) {
            Cut before = cuts.get(i);
            if (before.covering().equals(cut.covering()) && before.section().printsLike(cut.section())) {
                cuts.set(i, new Cut(before.section().joinedWith(cut.section()), cut.covering()));
                return;
            }
        }
        cuts.add(cut);
    }

    private static WallCovering covering(FinishWork finish) {
        return new WallCovering(finish.material(), finish.dryFilm(), finish.word());
    }

    private static CaptionedDrawing drawing(Cut cut, PaperWords terms) {
        CrossSection section = cut.section();
        return new CaptionedDrawing(
                section.walls(),
                terms.get(
                        "drawing.section",
                        "depth",
                        section.trenchDepth().text(),
                        "reach",
                        section.reach().text()),
                SectionSketch.of(section, cut.covering(), terms.language()));
    }

    /** A section and what covers its wall. */
    private record Cut(CrossSection section, WallCovering covering) {}
}
