// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedDeque;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.wording.Language;

/** Prints finished papers: pages and workbook of each. */
public final class PaperPrinter {
    public static final String LANGUAGE = Language.ENGLISH.tag();

    private final Templates templates;
    private CompletableFuture<PagePress> pages;
    private PagePress second;

    PaperPrinter(Templates templates) {
        this.templates = templates;
    }

    /** Readies the page press on a second thread. Only printing needs it, and it takes as long as reading a job. */
    @SuppressWarnings("FutureReturnValueIgnored") // whoever needs the press waits for it, and gets what it threw
    void prepare() {
        press();
    }

    private synchronized CompletableFuture<PagePress> press() {
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
    byte[] page(Bid bid, PaperKind paper) {
        return pages(bid, Set.of(paper)).values().stream().findFirst().orElseThrow();
    }

    /**
     * The same for one change order out of several.
     *
     * @throws java.util.NoSuchElementException if the job has no such paper
     */
    byte[] page(Bid bid, JobPaper paper) {
        PagePress press = got(press());
        return PaperModels.of(bid, Set.of(paper.paper())).stream()
                .filter(sheet -> sheet.file().equals(paper.file()))
                .findFirst()
                .map(sheet -> set(press, bid, sheet, ""))
                .orElseThrow();
    }

    /** The pages of those papers by their names without ending. */
    Map<String, byte[]> pages(Bid bid, Set<PaperKind> papers) {
        PagePress press = got(press());
        Map<String, byte[]> files = new LinkedHashMap<>();
        PaperModels.of(bid, papers).forEach(sheet -> files.put(sheet.file(), set(press, bid, sheet, "")));
        return files;
    }

    /**
     * The files by name. Workbooks are made on a second thread while the pages are set; when they are done, that thread
     * takes what is left of the pages from the other end.
     */
    Map<String, byte[]> print(Bid bid, Set<PaperKind> papers) {
        return print(bid, papers, "");
    }

    /** The same with the code of the register at the foot of the pages. */
    Map<String, byte[]> print(Bid bid, Set<PaperKind> papers, String recordCode) {
        Set<PaperKind> first = new TreeSet<>(papers);
        boolean priced = first.size() > 1 && first.remove(PaperKind.COST_SHEET);
        List<PaperModels.Sheet> sheets = new ArrayList<>(PaperModels.of(bid, first));
        Deque<PaperModels.Sheet> unset = new ConcurrentLinkedDeque<>(sheets);
        Map<String, byte[]> done = new ConcurrentHashMap<>();
        CompletableFuture<Map<String, byte[]>> workbooks = CompletableFuture.supplyAsync(() -> {
            if (priced) {
                // The cost sheet plays a price through a thousand times: that too is done beside the pages.
                List<PaperModels.Sheet> costs = PaperModels.of(bid, Set.of(PaperKind.COST_SHEET));
                sheets.addAll(costs);
                unset.addAll(costs);
                sheets.sort(Comparator.comparing(sheet -> PaperKind.ofTemplate(sheet.template())));
            }
            Map<String, byte[]> files = new LinkedHashMap<>();
            sheets.forEach(sheet -> files.put(
                    sheet.file() + ".xlsx",
                    WorkbookPress.print(templates, sheet.template(), sheet.model(), sheet.date(), sheet.language())));
            for (PaperModels.Sheet sheet = unset.pollLast(); sheet != null; sheet = unset.pollLast()) {
                done.put(sheet.file(), set(secondPress(), bid, sheet, recordCode));
            }
            return files;
        });
        PagePress press = got(press());
        for (PaperModels.Sheet sheet = unset.pollFirst(); sheet != null; sheet = unset.pollFirst()) {
            done.put(sheet.file(), set(press, bid, sheet, recordCode));
        }
        Map<String, byte[]> books = got(workbooks);
        Map<String, byte[]> files = new LinkedHashMap<>();
        sheets.forEach(sheet -> files.put(sheet.file() + ".pdf", done.get(sheet.file())));
        files.putAll(books);
        PaperModels.readingCopies(bid, papers)
                .forEach(copy -> files.put(copy.file() + ".pdf", set(press, bid, copy, recordCode)));
        return files;
    }

    /**
     * Page and workbook of a paper that is none of the set.
     *
     * @param template the folder of its templates, which is its name as well
     * @param date the day that it carries
     * @param recordCode the code of the register at the foot of its pages
     */
    Map<String, byte[]> apart(Bid bid, String template, Map<String, Object> model, LocalDate date, String recordCode) {
        String language = HomeownerPapers.language(bid.dossier(), template).tag();
        return apart(
                template, model, new PageInfo(language, bid.dossier().company().name(), date, recordCode));
    }

    /** The same in the language that the page names. */
    Map<String, byte[]> apart(String template, Map<String, Object> model, PageInfo info) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(template + ".pdf", pageApart(template, model, info));
        files.put(
                template + ".xlsx",
                WorkbookPress.print(templates, template, model, info.issued(), Language.ofTag(info.language())));
        return files;
    }

    /** The page alone, of a paper that no workbook belongs to. */
    byte[] pageApart(String template, Map<String, Object> model, PageInfo info) {
        return got(press()).print(template, model, info);
    }

    private static byte[] set(PagePress press, Bid bid, PaperModels.Sheet sheet, String recordCode) {
        PageInfo info = new PageInfo(
                sheet.language().tag(),
                bid.dossier().company().name(),
                sheet.date(),
                recordCode,
                sheet.governing().map(Language::tag).orElse(""));
        return press.print(sheet.template(), sheet.model(), info);
    }

    private synchronized PagePress secondPress() {
        if (second == null) {
            second = PagePress.beside(templates);
        }
        return second;
    }

    /** What the other thread made, or what it threw, as if it had been done here. */
    private static <T> T got(CompletableFuture<T> made) {
        try {
            return made.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException fault ? fault : e;
        }
    }
}
