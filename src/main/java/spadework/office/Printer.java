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

    /** The pages of one paper; of several change orders those of the last. */
    byte[] page(Bid bid, Paper paper) {
        List<Sheets.Sheet> sheets = Sheets.of(bid, Set.of(paper));
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("the job has no " + paper.file() + " yet");
        }
        return page(sheets.get(sheets.size() - 1), bid);
    }

    private byte[] page(Sheets.Sheet sheet, Bid bid) {
        PageInfo info = new PageInfo(LANGUAGE, bid.dossier().company().name(), sheet.date());
        return got(prepare()).print(sheet.template(), sheet.model(), info);
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
        Map<String, byte[]> files = new LinkedHashMap<>();
        sheets.forEach(sheet -> files.put(sheet.file() + ".pdf", page(sheet, bid)));
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
}
