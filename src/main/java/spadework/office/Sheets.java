package spadework.office;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spadework.closeout.BuiltJob;
import spadework.contract.PricedChange;
import spadework.drawing.PlanSketch;
import spadework.drawing.Scene;
import spadework.job.Closed;
import spadework.job.Job;
import spadework.paperwork.Certificate;
import spadework.paperwork.CertificatePaper;
import spadework.paperwork.ChangeOrder;
import spadework.paperwork.ChangeOrderPaper;
import spadework.paperwork.Completion;
import spadework.paperwork.CompletionPaper;
import spadework.paperwork.ContractPaper;
import spadework.paperwork.CostSheetPaper;
import spadework.paperwork.Dossier;
import spadework.paperwork.Profiles;
import spadework.paperwork.ProposalPaper;
import spadework.paperwork.ScopePaper;
import spadework.paperwork.Sections;
import spadework.press.Figure;
import spadework.press.SceneSvg;

/** What is handed to the press for each paper. The proposal tells the job as proposed, every other the agreed work. */
final class Sheets {
    private final Bid bid;
    private final List<Sheet> sheets = new ArrayList<>();

    private Sheets(Bid bid) {
        this.bid = bid;
    }

    /**
     * A paper ready for the press.
     *
     * @param file its name without ending
     * @param template folder of its templates
     * @param model the finished records by the names that the templates know
     * @param date the date of the files
     */
    record Sheet(String file, String template, Map<String, Object> model, LocalDate date) {}

    /** The sheets of those papers; a change order for each change, a completion statement once something was built. */
    static List<Sheet> of(Bid bid, Set<Paper> papers) {
        Sheets sheets = new Sheets(bid);
        papers.stream().sorted().forEach(sheets::add);
        return sheets.sheets;
    }

    private void add(Paper paper) {
        Dossier agreed = bid.dossier();
        switch (paper) {
            case PROPOSAL -> proposal(bid.proposed());
            case SCOPE -> scope(agreed);
            case CONTRACT -> agreed.job().agreement().signing().ifPresent(signing -> contract(bid.contracted()));
            case WARRANTY -> warranty(agreed);
            case COST_SHEET ->
                put(paper, Map.of("sheet", CostSheetPaper.of(agreed), "plan", drawn(PlanSketch.of(agreed.job()))));
            case CHANGE_ORDER -> agreed.contract().changes().forEach(this::changeOrder);
            case COMPLETION -> agreed.job().agreement().asBuilt().ifPresent(built -> completion(agreed));
        }
    }

    private void proposal(Dossier proposed) {
        Scene plan = PlanSketch.withOptions(proposed.job());
        put(
                Paper.PROPOSAL,
                Map.of(
                        "proposal", ProposalPaper.of(proposed, plan),
                        "plan", drawn(plan),
                        "sections", Figure.of(Sections.of(proposed)),
                        "profiles", Figure.of(Profiles.of(proposed))));
    }

    private void scope(Dossier agreed) {
        Scene plan = PlanSketch.of(agreed.job());
        put(
                Paper.SCOPE,
                Map.of(
                        "scope", ScopePaper.of(agreed, plan),
                        "plan", drawn(plan),
                        "sections", Figure.of(Sections.of(agreed)),
                        "profiles", Figure.of(Profiles.of(agreed))));
    }

    /** Drawn as contracted: no later change moves what was signed. */
    private void contract(Dossier contracted) {
        Scene plan = PlanSketch.of(contracted.job());
        put(Paper.CONTRACT, Map.of("contract", ContractPaper.of(contracted, plan), "plan", drawn(plan)));
    }

    private void warranty(Dossier agreed) {
        Job job = agreed.job();
        boolean issued = job.closed().flatMap(Closed::certificate).isPresent();
        Scene plan = PlanSketch.of(issued ? BuiltJob.of(job) : job);
        Certificate certificate = CertificatePaper.of(agreed, plan);
        put(
                Paper.WARRANTY,
                Paper.WARRANTY.file(),
                Map.of("certificate", certificate, "plan", drawn(plan)),
                issued ? job.closed().orElseThrow().completed() : job.issued());
    }

    private void changeOrder(PricedChange change) {
        ChangeOrder order = ChangeOrderPaper.of(bid.proposed(), change);
        put(
                Paper.CHANGE_ORDER,
                Paper.CHANGE_ORDER.file() + "-" + order.number(),
                Map.of("change", order, "plan", drawn(order.plan())),
                change.change().issued());
    }

    private void completion(Dossier agreed) {
        Completion completion = CompletionPaper.of(agreed);
        put(
                Paper.COMPLETION,
                Paper.COMPLETION.file(),
                Map.of("completion", completion, "plan", drawn(completion.plan())),
                CompletionPaper.day(agreed));
    }

    private void put(Paper paper, Map<String, Object> model) {
        put(paper, paper.file(), model, bid.dossier().job().issued());
    }

    private void put(Paper paper, String file, Map<String, Object> model, LocalDate date) {
        sheets.add(new Sheet(file, paper.template(), model, date));
    }

    private static String drawn(Scene plan) {
        return SceneSvg.of(plan);
    }
}
