package spadework.office;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import spadework.press.PageInfo;
import spadework.press.PagePress;
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

    /**
     * The pages of one paper.
     *
     * @throws java.util.NoSuchElementException if the job has no such paper
     */
    byte[] page(Bid bid, Paper paper) {
        return pages(bid, Set.of(paper)).values().stream().findFirst().orElseThrow();
    }

    /** The pages of those papers by their names without ending. */
    Map<String, byte[]> pages(Bid bid, Set<Paper> papers) {
        return pages(bid, Sheets.of(bid, papers), "");
    }

    /** The files by name. Workbooks are made on a second thread while the pages are set. */
    Map<String, byte[]> print(Bid bid, Set<Paper> papers) {
        List<Sheets.Sheet> sheets = Sheets.of(bid, papers);
        CompletableFuture<Map<String, byte[]>> workbooks = CompletableFuture.supplyAsync(() -> {
            Map<String, byte[]> files = new LinkedHashMap<>();
            sheets.forEach(sheet -> files.put(
                    sheet.file() + ".xlsx",
                    WorkbookPress.print(templates, sheet.template(), sheet.model(), sheet.date())));
            return files;
        });
        Map<String, byte[]> files = pages(bid, sheets, ".pdf");
        files.putAll(got(workbooks));
        return files;
    }

    private Map<String, byte[]> pages(Bid bid, List<Sheets.Sheet> sheets, String ending) {
        PagePress press = got(prepare());
        String author = bid.dossier().company().name();
        Map<String, byte[]> files = new LinkedHashMap<>();
        sheets.forEach(sheet -> files.put(
                sheet.file() + ending,
                press.print(sheet.template(), sheet.model(), new PageInfo(LANGUAGE, author, sheet.date()))));
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
}
