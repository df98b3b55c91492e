// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spadework.company.Company;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.office.PaperPrinter;
import spadework.office.book.BookService;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.paperwork.PaperWords;
import spadework.paperwork.season.SeasonPaper;
import spadework.paperwork.season.SeasonReport;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.svg.SceneSvg;
import spadework.press.template.Templates;

/** The report of a season, for the owner of the firm alone. */
public final class SeasonService {
    private static final String FILE = "season";

    private final Path tree;
    private final BookService book;

    /**
     * Reports on the jobs of a tree.
     *
     * @param book beside which the company's file lies
     */
    public SeasonService(Path tree, BookService book) {
        this.tree = tree;
        this.book = book;
    }

    /** From and until when proposals were dated, both days counted. */
    public record Span(LocalDate from, LocalDate until) {}

    /**
     * Writes the report as PDF and XLSX.
     *
     * @param on the day that it carries
     * @throws IOException if a file cannot be read or written
     */
    public Reply print(Span span, LocalDate on, Path folder, TemplateFolder own) throws IOException {
        if (span.until().isBefore(span.from())) {
            return Reply.refused(List.of(new Fault(
                    Place.ofFile(tree.toString()),
                    "a season from " + span.from() + " until " + span.until(),
                    "a last day that is the first one or later",
                    "change the two days")));
        }
        SeasonReader.Read read = new SeasonReader(span.from(), span.until()).read(tree);
        if (read.season().jobs().isEmpty()) {
            return Reply.refused(List.of(new Fault(
                            Place.ofFile(tree.toString()),
                            "no proposal that was issued from " + span.from() + " until " + span.until(),
                            "issued jobs with a proposal of those days",
                            "give other days, or another folder")))
                    .andWrong(read.unread());
        }
        Company company =
                book.read().company().orElseThrow(() -> new IOException("no company.json beside " + book.file()));
        Templates words = own.templates();
        SeasonReport report =
                SeasonPaper.of(company, read.season(), new PaperWords(words.words("words/terms.properties")), on);
        Map<String, Object> model =
                Map.of("report", report, "offers", SceneSvg.of(report.offers()), "money", SceneSvg.of(report.money()));
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put(
                FILE + ".pdf",
                new PagePress(words).print(FILE, model, new PageInfo(PaperPrinter.LANGUAGE, company.name(), on)));
        files.put(FILE + ".xlsx", WorkbookPress.print(words, FILE, model, on));
        Disk.folders(folder);
        List<String> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            AtomicFile.write(folder.resolve(file.getKey()).toAbsolutePath(), file.getValue());
            written.add(folder.resolve(file.getKey()).toString());
        }
        return Reply.done(written).andWrong(read.unread());
    }
}
