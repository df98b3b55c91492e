package spadework.office;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import spadework.drawing.PlanSketch;
import spadework.drawing.Scene;
import spadework.paperwork.CertificatePaper;
import spadework.paperwork.CostSheetPaper;
import spadework.paperwork.Dossier;
import spadework.paperwork.Profiles;
import spadework.paperwork.ProposalPaper;
import spadework.paperwork.ScopePaper;
import spadework.paperwork.Sections;
import spadework.press.Figure;
import spadework.press.PageInfo;
import spadework.press.PagePress;
import spadework.press.SceneSvg;
import spadework.press.Templates;
import spadework.press.WorkbookPress;

/** Prints finished papers: pages and workbook of each. */
final class Printer {
    static final String LANGUAGE = "en-US";

    private final Templates templates;
    private CompletableFuture<PagePress> pages;

    Printer(Templates templates) {
        this.templates = templates;
    }

    /** Readies the page press on a second thread. Only printing needs it, and it takes as long as reading a job. */
    synchronized CompletableFuture<PagePress> prepare() {
        if (pages == null) {
            pages = CompletableFuture.supplyAsync(() -> PagePress.warm(templates));
        }
        return pages;
    }

    /** The files by name. Workbooks are made on a second thread while the pages are set. */
    Map<String, byte[]> print(Dossier dossier, Set<Paper> papers) {
        Scene plan = PlanSketch.of(dossier.job());
        Map<Paper, Map<String, Object>> models = new LinkedHashMap<>();
        List<Figure> sections = Figure.of(Sections.of(dossier));
        List<Figure> profiles = Figure.of(Profiles.of(dossier));
        papers.stream().sorted()
                .forEach(paper -> models.put(paper, model(paper, dossier, plan, sections, profiles)));
        PageInfo info = new PageInfo(LANGUAGE, dossier.company().name(), dossier.job().issued());
        CompletableFuture<Map<String, byte[]>> workbooks = CompletableFuture.supplyAsync(() -> {
            Map<String, byte[]> files = new LinkedHashMap<>();
            models.forEach((paper, model) -> files.put(
                    paper.file() + ".xlsx",
                    WorkbookPress.print(templates, paper.template(), model, dossier.job().issued())));
            return files;
        });
        PagePress press = got(prepare());
        Map<String, byte[]> files = new LinkedHashMap<>();
        models.forEach((paper, model) -> files.put(paper.file() + ".pdf", press.print(paper.template(), model, info)));
        files.putAll(got(workbooks));
        return files;
    }

    /** What the other thread made, or what it threw, as if it had been done here. */
    private static <T> T got(CompletableFuture<T> made) {
        try {
            return made.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException fault ? fault : e;
        }
    }

    private static Map<String, Object> model(
            Paper paper, Dossier dossier, Scene plan, List<Figure> sections, List<Figure> profiles) {
        String drawn = SceneSvg.of(plan);
        return switch (paper) {
            case PROPOSAL -> Map.of("proposal", ProposalPaper.of(dossier, plan), "plan", drawn,
                    "sections", sections, "profiles", profiles);
            case SCOPE -> Map.of("scope", ScopePaper.of(dossier, plan), "plan", drawn,
                    "sections", sections, "profiles", profiles);
            case WARRANTY -> Map.of("certificate", CertificatePaper.of(dossier, plan), "plan", drawn);
            case COST_SHEET -> Map.of("sheet", CostSheetPaper.of(dossier), "plan", drawn);
        };
    }
}
