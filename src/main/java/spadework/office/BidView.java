// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.SectionNames;
import spadework.paperwork.work.CaptionedDrawing;
import spadework.paperwork.work.ProfileDrawings;
import spadework.paperwork.work.SectionDrawings;

/** What a window shows of a bid besides figures, as the office reads it: drawings, and what lines are called. */
public final class BidView {
    private final Dossier dossier;
    private final PaperWords terms;

    /** @param terms in the language of the office, with what the firm itself says in it */
    BidView(Dossier dossier, PaperWords terms) {
        this.dossier = dossier.in(terms);
        this.terms = terms;
    }

    /** The plan of the house. */
    public Scene plan() {
        return PlanSketch.of(dossier.job(), terms.language());
    }

    /** The trench cut across, by the labels of the walls where it looks so. */
    public Map<List<String>, Scene> sections() {
        return byLabels(SectionDrawings.of(dossier));
    }

    /** The way of the water seen from the side, from each run to its outlet, by the labels of the runs. */
    public Map<List<String>, Scene> profiles() {
        return byLabels(ProfileDrawings.of(dossier));
    }

    private static Map<List<String>, Scene> byLabels(List<CaptionedDrawing> drawings) {
        Map<List<String>, Scene> scenes = new LinkedHashMap<>();
        drawings.forEach(drawing -> scenes.put(drawing.labels(), drawing.scene()));
        return scenes;
    }

    /** What a section of the price is called; as takeoff and price have it where it has no other name. */
    public String section(String name) {
        return SectionNames.of(terms, name);
    }

    /** What the price book says of an item; as it stands where nobody said it in this language. */
    public String ofBook(String text) {
        return terms.own(text);
    }
}
