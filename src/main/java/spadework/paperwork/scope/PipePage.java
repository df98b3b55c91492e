// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.PitPlace;
import spadework.job.Restoration;
import spadework.job.SolidRun;
import spadework.job.SumpPit;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.part.MarkedLine;
import spadework.paperwork.part.MarkedLines;
import spadework.paperwork.work.DigWork;
import spadework.paperwork.work.DigWorks;
import spadework.schedule.RoofOverWall;

/** The steps at pipes, outlets and ground. The water test stands before anything is filled. */
final class PipePage {
    private final Dossier dossier;
    private final Job job;
    private final PaperWords terms;
    private final StepTexts texts;

    PipePage(Dossier dossier, StepLines lines) {
        this.dossier = dossier;
        this.job = dossier.job();
        this.terms = dossier.terms();
        this.texts = new StepTexts(dossier, lines, "");
    }

    List<ScopeStep> steps() {
        MarkedLines.atPipes(dossier).forEach(this::line);
        trenches();
        texts.sold(StepKind.MAIN, "", "labels", labels(job.water().mains()));
        texts.sold(StepKind.ROOF_LINE, "", "labels", labels(roofLines(false)));
        texts.sold(StepKind.DOWNSPOUTS, "");
        daylight();
        texts.sold(StepKind.STORM, "", "outlets", terms.row(outlets(OutletKind.APPROVED_STORM)));
        texts.sold(StepKind.SUMP, inTheYard() ? ".yard" : "", "outlets", terms.row(outlets(OutletKind.SUMP)));
        texts.sold(StepKind.DISCHARGE, "");
        if (!job.water().drains().isEmpty()) {
            texts.add(StepKind.LEAD, "", List.of(), "leads", leads());
        }
        texts.sold(StepKind.CLEANOUTS, "");
        test();
        roofOver();
        texts.sold(StepKind.FILL_PIPES, "");
        ground();
        return texts.with(StepPage.PIPES);
    }

    /** Where a pipe would end, or may end, under its ground, that comes before its outlet is built. */
    private void daylight() {
        ground(StepKind.OUTLET_UNDER, "outlet-under-ground");
        ground(StepKind.OUTLET_GROUND, "outlet-ground-unmeasured");
        List<String> outlets = outlets(OutletKind.DAYLIGHT);
        texts.sold(StepKind.OUTLET, outlets.size() == 1 ? "" : ".several", "outlets", terms.row(outlets));
    }

    private void ground(StepKind kind, String finding) {
        List<String> outlets = dossier.findings().site().stream()
                .filter(found -> found.id().equals(finding))
                .map(Finding::about)
                .distinct()
                .toList();
        if (!outlets.isEmpty()) {
            texts.add(kind, "", List.of(), "outlets", terms.row(outlets));
        }
    }

    private void line(MarkedLine line) {
        texts.add(
                StepKind.PIPE_LINE,
                "",
                List.of(),
                "labels",
                terms.row(line.near()),
                "distance",
                line.distance(),
                "wall",
                line.wall());
    }

    /** Pipe trenches and pits: how each is dug, what keeps its bank, and the way out of it. */
    private void trenches() {
        List<DigWork> digs = DigWorks.of(job);
        if (digs.isEmpty()) {
            texts.sold(StepKind.PIPE_TRENCH, ".within");
            return;
        }
        texts.add(
                StepKind.PIPE_TRENCH,
                "",
                List.of(),
                "digs",
                digs.stream().map(this::dig).collect(Collectors.joining("; ")));
        besideTheHouse();
        texts.add(StepKind.PIPE_BANK, "", List.of(), "ways", banks(digs));
        texts.add(StepKind.PIPE_INSPECT, "", List.of(), "type", soilType());
        List<DigWork> high = digs.stream().filter(DigWork::wayOut).toList();
        if (!high.isEmpty()) {
            texts.add(StepKind.PIPE_LADDER, "", List.of(), "digs", names(high));
        }
    }

    /** Where a bank that is laid back would run under a wall of the house itself. */
    private void besideTheHouse() {
        List<String> labels = dossier.findings().site().stream()
                .filter(finding -> StepKind.PIPE_WALL.carries().contains(finding.id()))
                .map(Finding::about)
                .toList();
        if (!labels.isEmpty()) {
            texts.add(StepKind.PIPE_WALL, "", List.of(), "labels", terms.row(labels));
        }
    }

    /** What keeps each bank, a sentence for each way; those that may stand upright last. */
    private String banks(List<DigWork> digs) {
        List<String> ways = new ArrayList<>();
        for (String way : List.of("sloped", "benched", "shielded", "upright")) {
            List<DigWork> these = digs.stream()
                    .filter(dig -> dig.protection().equals(way) && !dig.isShallow())
                    .toList();
            if (!these.isEmpty()) {
                ways.add(texts.text(
                        "scope.pipe-bank." + way,
                        "digs",
                        names(these),
                        "slope",
                        these.get(0).slope()));
            }
        }
        if (digs.stream().anyMatch(DigWork::isShallow)) {
            ways.add(texts.text("scope.pipe-bank." + (ways.isEmpty() ? "shallow" : "others")));
        }
        return String.join(" ", ways);
    }

    private String soilType() {
        return terms.of("soiltype", job.site().soil().type());
    }

    private String dig(DigWork dig) {
        return texts.text(
                "scope.dig-of." + (dig.length().isEmpty() ? "pit" : "pipe"),
                "what",
                name(dig),
                "length",
                dig.length(),
                "depth",
                dig.depth(),
                "width",
                dig.width());
    }

    private String names(List<DigWork> digs) {
        return terms.row(digs.stream().map(this::name).toList());
    }

    private String name(DigWork dig) {
        return texts.text("scope.dig-name." + dig.kind(), "label", dig.label());
    }

    private void test() {
        if (job.water().drains().isEmpty() && job.water().roofLines().isEmpty()) {
            return;
        }
        List<StepEvidence> evidence = new ArrayList<>();
        job.water().drains().forEach(drain -> evidence.add(minutes(drain.label())));
        roofLines(false).forEach(line -> evidence.add(minutes(line.label())));
        evidence.add(StepEvidence.photo(texts.text("scope.photo.outlet")));
        evidence.add(StepEvidence.initials(texts.text("scope.contractor")));
        evidence.add(StepEvidence.initials(texts.text("scope.homeowner")));
        boolean sump = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        String roof = roofLines(false).isEmpty() ? "" : ".roof";
        texts.add(StepKind.HOLD_3, (sump ? ".sump" : "") + roof, evidence);
    }

    /** Over a dug wall a roof line lies in the fill, over a drain that passed its test; it is tested by itself. */
    private void roofOver() {
        List<SolidRun> over = roofLines(true);
        if (!over.isEmpty()) {
            texts.add(
                    StepKind.ROOF_OVER,
                    "",
                    over.stream().map(line -> minutes(line.label())).toList(),
                    "labels",
                    labels(over));
        }
    }

    private List<SolidRun> roofLines(boolean over) {
        return job.water().roofLines().stream()
                .filter(line -> RoofOverWall.isOver(job, line) == over)
                .toList();
    }

    private StepEvidence minutes(String label) {
        return StepEvidence.figures(texts.text("scope.minutes", "label", label), 1);
    }

    private void ground() {
        Restoration after = job.restoration();
        texts.sold(StepKind.IMPORT, "");
        texts.sold(StepKind.REGRADE, "", "length", after.regrade().text());
        texts.add(StepKind.HAUL, texts.isSold(StepKind.HAUL) ? "" : ".waste", List.of());
        texts.sold(StepKind.CONCRETE_BACK, "");
        texts.sold(StepKind.TOPSOIL, "", "depth", after.topsoilDepth().text());
        texts.sold(StepKind.PLANTS_BACK, "", "count", Integer.toString(after.plants()));
        texts.sold(StepKind.SEED, "");
        texts.sold(StepKind.SOD, "");
        texts.sold(StepKind.PHOTOS, "");
        texts.add(StepKind.CLEAN_UP, "", List.of());
    }

    private boolean inTheYard() {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == OutletKind.SUMP)
                .anyMatch(outlet -> outlet.pit().map(SumpPit::place).equals(Optional.of(PitPlace.OUTSIDE)));
    }

    private String leads() {
        return job.water().drains().stream()
                .map(drain -> texts.text("scope.leads", "drain", drain.label(), "into", drain.into()))
                .collect(Collectors.joining("; "));
    }

    private List<String> outlets(OutletKind kind) {
        return job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == kind)
                .map(outlet -> outlet.label())
                .toList();
    }

    private static String labels(List<SolidRun> runs) {
        return runs.stream().map(SolidRun::label).collect(Collectors.joining(", "));
    }
}
