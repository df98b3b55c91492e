// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Restoration;
import spadework.job.SolidRun;
import spadework.measure.Series;
import spadework.paperwork.Dossier;

/** The steps at pipes, outlets and ground. The water test stands before anything is filled. */
final class PipePage {
    private final Job job;
    private final StepTexts texts;

    PipePage(Dossier dossier, StepLines lines) {
        this.job = dossier.job();
        this.texts = new StepTexts(dossier, lines, "");
    }

    List<ScopeStep> steps() {
        texts.sold(StepKind.PIPE_TRENCH, "");
        texts.sold(StepKind.MAIN, "", "labels", labels(job.water().mains()));
        texts.sold(StepKind.ROOF_LINE, "", "labels", labels(job.water().roofLines()));
        texts.sold(StepKind.DOWNSPOUTS, "");
        texts.sold(StepKind.OUTLET, several(OutletKind.DAYLIGHT), "outlets", outlets(OutletKind.DAYLIGHT));
        texts.sold(StepKind.STORM, "", "outlets", outlets(OutletKind.APPROVED_STORM));
        texts.sold(StepKind.SUMP, "", "outlets", outlets(OutletKind.SUMP));
        texts.sold(StepKind.DISCHARGE, "");
        if (!job.water().drains().isEmpty()) {
            texts.add(StepKind.LEAD, "", List.of(), "leads", leads());
        }
        texts.sold(StepKind.CLEANOUTS, "");
        test();
        texts.sold(StepKind.FILL_PIPES, "");
        ground();
        return texts.with(StepPage.PIPES);
    }

    private void test() {
        if (job.water().drains().isEmpty() && job.water().roofLines().isEmpty()) {
            return;
        }
        List<StepEvidence> evidence = new ArrayList<>();
        job.water().drains().forEach(drain -> evidence.add(minutes(drain.label())));
        job.water().roofLines().forEach(line -> evidence.add(minutes(line.label())));
        evidence.add(StepEvidence.photo(texts.text("scope.photo.outlet")));
        evidence.add(StepEvidence.initials(texts.text("scope.contractor")));
        evidence.add(StepEvidence.initials(texts.text("scope.homeowner")));
        boolean sump = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        String roof = job.water().roofLines().isEmpty() ? "" : ".roof";
        texts.add(StepKind.HOLD_3, (sump ? ".sump" : "") + roof, evidence);
    }

    private StepEvidence minutes(String label) {
        return StepEvidence.figures(texts.text("scope.minutes", "label", label), 1);
    }

    private void ground() {
        Restoration after = job.restoration();
        texts.sold(StepKind.IMPORT, "");
        texts.sold(StepKind.REGRADE, "", "length", after.regrade().text());
        texts.sold(StepKind.CONCRETE_BACK, "");
        texts.sold(StepKind.PLANTS_BACK, "", "count", Integer.toString(after.plants()));
        texts.sold(StepKind.TOPSOIL, "", "depth", after.topsoilDepth().text());
        texts.sold(StepKind.SEED, "");
        texts.sold(StepKind.SOD, "");
        texts.add(StepKind.HAUL, texts.isSold(StepKind.HAUL) ? "" : ".waste", List.of());
        texts.sold(StepKind.PHOTOS, "");
        texts.add(StepKind.CLEAN_UP, "", List.of());
    }

    private String leads() {
        return job.water().drains().stream()
                .map(drain -> texts.text("scope.leads", "drain", drain.label(), "into", drain.into()))
                .collect(Collectors.joining("; "));
    }

    private String several(OutletKind kind) {
        boolean one = job.water().outlets().stream()
                        .filter(outlet -> outlet.kind() == kind)
                        .count()
                == 1;
        return one ? "" : ".several";
    }

    private String outlets(OutletKind kind) {
        return Series.text(job.water().outlets().stream()
                .filter(outlet -> outlet.kind() == kind)
                .map(outlet -> outlet.label())
                .toList());
    }

    private static String labels(List<SolidRun> runs) {
        return runs.stream().map(SolidRun::label).collect(Collectors.joining(", "));
    }
}
