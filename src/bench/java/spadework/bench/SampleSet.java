// SPDX-License-Identifier: Apache-2.0
package spadework.bench;

import java.nio.file.Path;
import java.util.Map;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.reply.TemplateFolder;
import spadework.paperwork.Dossier;
import spadework.paperwork.cost.CostSheetPaper;
import spadework.paperwork.proposal.ProposalPaper;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.warranty.CertificatePaper;
import spadework.press.page.PageInfo;
import spadework.press.svg.SceneSvg;

/** A sample, read and priced, with the finished records that its templates are given. */
record SampleSet(PageInfo info, Map<String, Map<String, Object>> models) {

    /** The sample of that folder below the samples. */
    static SampleSet of(String sample) {
        Bid bid = (Bid) Office.with(TemplateFolder.NONE).bid(Path.of("sample-quotes", sample));
        Dossier dossier = bid.dossier();
        Scene plan = PlanSketch.of(dossier.job());
        String drawn = SceneSvg.of(plan);
        return new SampleSet(
                new PageInfo("en-US", dossier.company().name(), dossier.job().issued()),
                Map.of(
                        "proposal", Map.of("proposal", ProposalPaper.of(dossier, plan), "plan", drawn),
                        "scope", Map.of("scope", ScopePaper.of(dossier, plan), "plan", drawn),
                        "certificate", Map.of("certificate", CertificatePaper.of(dossier, plan), "plan", drawn),
                        "cost-sheet", Map.of("sheet", CostSheetPaper.of(dossier, bid.quote()), "plan", drawn)));
    }

    Map<String, Object> model(String document) {
        return models.get(document);
    }
}
