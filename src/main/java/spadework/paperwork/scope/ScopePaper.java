// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.time.LocalDate;
import java.util.List;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.job.LocateTicket;
import spadework.job.OutletKind;
import spadework.job.Soil;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.AgreedParts;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.work.MeasuredRows;
import spadework.paperwork.work.PipeWork;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWork;
import spadework.paperwork.work.WallWorks;
import spadework.paperwork.work.WaterDesignRows;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.takeoff.Quantity;

/** Puts the scope of work together. It takes no money. */
public final class ScopePaper {
    private ScopePaper() {}

    public static ScopeOfWork of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        PipeWorks pipes = new PipeWorks(dossier);
        List<PipeWork> runs = pipes.all();
        List<WallWork> walls = new WallWorks(dossier).all();
        WaterDesignRows water = new WaterDesignRows(dossier);
        List<FindingNote> crew = FindingNotes.forCrew(dossier);
        ScopeSteps plain = StepPlan.of(dossier, walls, crew);
        List<FindingNote> notes = StepPlan.unsaid(plain, crew);
        return new ScopeOfWork(
                PaperHeads.of(dossier, day(job)),
                plan,
                StepPlan.withNotes(plain, ofWalls(notes, job, true)),
                walls,
                runs,
                pipes.outlets(),
                new ScopeWater(
                        !job.water().roofLines().isEmpty(),
                        job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP),
                        water.rows(),
                        water.sumps()),
                MeasuredRows.of(
                        dossier.takeoff().quantities().stream()
                                .filter(ScopePaper::isWork)
                                .toList(),
                        dossier.terms()),
                new ScopeSite(
                        job.site().locateTicket().map(LocateTicket::number).orElse(""),
                        soil(dossier, job.site().soil()),
                        dossier.phrases().deference()),
                job.protection(),
                ofWalls(notes, job, false),
                AgreedParts.of(dossier.terms(), job));
    }

    /** All steps of the work as the scope numbers them. */
    public static ScopeSteps steps(Dossier dossier) {
        return StepPlan.of(dossier, new WallWorks(dossier).all(), FindingNotes.forCrew(dossier));
    }

    /** The day that the scope carries: that of the last change order in it, else the proposal's. */
    public static LocalDate day(Job job) {
        return AgreedParts.day(job);
    }

    private static List<FindingNote> ofWalls(List<FindingNote> notes, Job job, boolean ofWalls) {
        return notes.stream()
                .filter(note -> (StepPlan.isOfWalls(note, job.walls())
                                && !note.severity().equals("stop"))
                        == ofWalls)
                .toList();
    }

    /** What is done apart from the walls; the balance of soil is a figure, its haul or import is work. */
    private static boolean isWork(Quantity quantity) {
        Section kind = quantity.section().kind();
        return kind != Section.WALL && kind != Section.SETUP && quantity.measure() != Measure.SURPLUS;
    }

    private static String soil(Dossier dossier, Soil soil) {
        return dossier.terms()
                .get(
                        "soil",
                        "texture",
                        dossier.terms().of("texture", soil.texture()),
                        "seepage",
                        dossier.terms().of("seepage", soil.seepage()),
                        "type",
                        dossier.terms().of("soiltype", soil.type()));
    }
}
