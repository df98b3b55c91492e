// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.closeout.BuiltJob;
import spadework.contract.PricedChange;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.shape.Scene;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.completion.CompletionPaper;
import spadework.paperwork.completion.CompletionStatement;
import spadework.paperwork.contract.ChangeOrder;
import spadework.paperwork.contract.ChangeOrderPaper;
import spadework.paperwork.contract.ContractPaper;
import spadework.paperwork.cost.CostSheetPaper;
import spadework.paperwork.cost.CostSummary;
import spadework.paperwork.cost.CrewPlan;
import spadework.paperwork.proposal.DayByDay;
import spadework.paperwork.proposal.ProposalPaper;
import spadework.paperwork.scope.ScopePaper;
import spadework.paperwork.warranty.CertificatePaper;
import spadework.paperwork.warranty.WarrantyCertificate;
import spadework.paperwork.work.ProfileDrawings;
import spadework.paperwork.work.SectionDrawings;
import spadework.press.svg.PageFigure;
import spadework.press.svg.SceneSvg;
import spadework.wording.Language;

/** What is handed to the press for each paper. The proposal tells the job as proposed, every other the agreed work. */
public final class PaperModels {
    private final Bid bid;
    private final List<Sheet> sheets = new ArrayList<>();

    /** More walls than that are read off a larger plan. */
    private static final int MANY_WALLS = 6;

    /** Plans by language and by the very job that they show: several papers of a bid show the same one. */
    private final Map<Language, Map<Job, Scene>> plans = new HashMap<>();

    private final IdentityHashMap<Scene, String> drawings = new IdentityHashMap<>();

    /** Whether they are in English, to be read beside those in the homeowner's language. */
    private final boolean reading;

    private PaperModels(Bid bid, boolean reading) {
        this.bid = bid;
        this.reading = reading;
    }

    /**
     * A paper ready for the press.
     *
     * @param file its name without ending
     * @param template folder of its templates
     * @param model the finished records by the names that the templates know
     * @param date the date of the files
     * @param language in which the paper is
     * @param governing the language of the paper beside which it is read; empty for a paper of its own
     */
    public record Sheet(
            String file,
            String template,
            Map<String, Object> model,
            LocalDate date,
            Language language,
            Optional<Language> governing) {}

    /** The sheets of those papers; a change order for each change, a completion statement once something was built. */
    static List<Sheet> of(Bid bid, Set<PaperKind> papers) {
        PaperModels sheets = new PaperModels(bid, false);
        papers.stream().sorted().forEach(sheets::add);
        return sheets.sheets;
    }

    /** Their reading copies in English, from the same bid; none where the company wants none. */
    static List<Sheet> readingCopies(Bid bid, Set<PaperKind> papers) {
        PaperModels sheets = new PaperModels(bid, true);
        papers.stream()
                .filter(paper -> HomeownerPapers.isReadInEnglish(bid.dossier(), paper.template()))
                .sorted()
                .forEach(sheets::add);
        return sheets.sheets;
    }

    private void add(PaperKind paper) {
        Dossier agreed = bid.dossier();
        switch (paper) {
            case PROPOSAL -> proposal(words(paper, bid.proposed()));
            case SCOPE -> scope(words(paper, agreed));
            case CONTRACT ->
                agreed.job().agreement().signing().ifPresent(signing -> contract(words(paper, bid.contracted())));
            case WARRANTY -> warranty(words(paper, agreed));
            case COST_SHEET -> costSheet(agreed);
            case CHANGE_ORDER -> agreed.contract().changes().forEach(this::changeOrder);
            case COMPLETION ->
                agreed.job().agreement().finishedWork().ifPresent(built -> completion(words(paper, agreed)));
        }
    }

    /** The dossier in the words of a paper. */
    private Dossier words(PaperKind paper, Dossier dossier) {
        return reading ? dossier : HomeownerPapers.words(dossier, paper.template());
    }

    private void costSheet(Dossier agreed) {
        CrewPlan plan = CrewPlan.of(agreed);
        CostSummary summary = CostSummary.of(agreed, bid.quote());
        put(
                PaperKind.COST_SHEET,
                Map.of(
                        "summary", summary,
                        "waterfall", drawn(summary.waterfall()),
                        "range", drawn(summary.range()),
                        "sheet", CostSheetPaper.of(agreed, bid.quote()),
                        "plan", drawn(plan(agreed)),
                        "days", plan,
                        "dayChart", drawn(plan.chart()),
                        "choices", DigChoices.rows(agreed),
                        "band", WallFootBandText.rows(agreed, bid.quote())));
    }

    private void proposal(Dossier proposed) {
        Scene plan = proposed.job().agreement().options().isEmpty()
                ? plan(proposed)
                : PlanSketch.withOptions(proposed.job(), proposed.terms().language());
        put(
                PaperKind.PROPOSAL,
                Map.of(
                        "proposal", ProposalPaper.of(proposed, plan),
                        "days", DayByDay.of(proposed),
                        "plan", drawn(plan),
                        "sections", PageFigure.of(SectionDrawings.of(proposed)),
                        "profiles", PageFigure.of(ProfileDrawings.of(proposed))));
    }

    private void scope(Dossier agreed) {
        Scene plan = plan(agreed);
        put(
                PaperKind.SCOPE,
                PaperKind.SCOPE.file(),
                Map.of(
                        "scope", ScopePaper.of(agreed, plan),
                        "plan", drawn(plan),
                        "planPage", planPage(agreed),
                        "sections", PageFigure.of(SectionDrawings.everywhere(agreed)),
                        "profiles", PageFigure.of(ProfileDrawings.of(agreed))),
                ScopePaper.day(agreed.job()));
    }

    /** Drawn as contracted: no later change moves what was signed. */
    private void contract(Dossier contracted) {
        Scene plan = plan(contracted);
        put(
                PaperKind.CONTRACT,
                Map.of(
                        "contract",
                        ContractPaper.of(contracted, words(PaperKind.CONTRACT, bid.proposed()), plan),
                        "plan",
                        drawn(plan),
                        "planAcross",
                        hasManyWalls(contracted)
                                ? drawn(PlanSketch.acrossThePage(
                                        contracted.job(), contracted.terms().language()))
                                : "",
                        "specimen",
                        CertificatePaper.specimen(contracted, plan)));
    }

    private void warranty(Dossier agreed) {
        Job job = agreed.job();
        boolean issued = job.closed().flatMap(Closed::certificate).isPresent();
        Scene plan = plan(issued ? BuiltJob.of(job) : job, agreed.terms().language());
        WarrantyCertificate certificate = CertificatePaper.of(agreed, plan);
        put(
                PaperKind.WARRANTY,
                PaperKind.WARRANTY.file(),
                Map.of("certificate", certificate, "plan", drawn(plan)),
                issued ? job.closed().orElseThrow().completed() : job.issued());
    }

    private void changeOrder(PricedChange change) {
        ChangeOrder order = ChangeOrderPaper.of(words(PaperKind.CHANGE_ORDER, bid.proposed()), change);
        put(
                PaperKind.CHANGE_ORDER,
                PaperKind.CHANGE_ORDER.file() + "-" + order.subject().number(),
                Map.of("change", order, "plan", drawn(order.plan())),
                change.change().issued());
    }

    private void completion(Dossier agreed) {
        CompletionStatement completion = CompletionPaper.of(agreed);
        put(
                PaperKind.COMPLETION,
                PaperKind.COMPLETION.file(),
                Map.of("completion", completion, "plan", drawn(completion.plan())),
                CompletionPaper.day(agreed));
    }

    private void put(PaperKind paper, Map<String, Object> model) {
        put(paper, paper.file(), model, bid.dossier().job().issued());
    }

    private void put(PaperKind paper, String file, Map<String, Object> model, LocalDate date) {
        Language governing = HomeownerPapers.language(bid.dossier(), paper.template());
        sheets.add(
                reading
                        ? new Sheet(
                                file + HomeownerPapers.READING,
                                paper.template(),
                                model,
                                date,
                                Language.ENGLISH,
                                Optional.of(governing))
                        : new Sheet(file, paper.template(), model, date, governing, Optional.empty()));
    }

    /** The plan once more, for a page of its own, where it shows many walls; else nothing. */
    private String planPage(Dossier dossier) {
        return hasManyWalls(dossier)
                ? drawn(PlanSketch.onItsOwnPage(dossier.job(), dossier.terms().language()))
                : "";
    }

    private static boolean hasManyWalls(Dossier dossier) {
        return dossier.job().walls().size() > MANY_WALLS;
    }

    private Scene plan(Dossier dossier) {
        return plan(dossier.job(), dossier.terms().language());
    }

    private Scene plan(Job job, Language language) {
        return plans.computeIfAbsent(language, asked -> new IdentityHashMap<>())
                .computeIfAbsent(job, shown -> PlanSketch.of(shown, language));
    }

    private String drawn(Scene scene) {
        return drawings.computeIfAbsent(scene, SceneSvg::of);
    }
}
