// SPDX-License-Identifier: Apache-2.0
package spadework.office.portfolio;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import spadework.bids.BidStatus;
import spadework.closeout.BuiltJob;
import spadework.company.Company;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.feedback.FeedbackSeason;
import spadework.feedback.JobVariances;
import spadework.feedback.RateRule;
import spadework.feedback.Suggestion;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.ReadBook;
import spadework.money.Dollars;
import spadework.office.PaperPrinter;
import spadework.office.book.BookService;
import spadework.office.files.JobTree;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;
import spadework.office.reply.TextColumns;
import spadework.paperwork.cost.FeedbackPaper;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.sheet.WorkbookPress;
import spadework.press.template.Templates;
import spadework.schedule.DayQuantities;

/** What closed jobs really took, what rates follow, and the contractor's yes to them. */
public final class FeedbackService {
    private static final String FILE = "feedback";

    private final Path tree;
    private final BookService book;
    private final RateRule rule;

    /**
     * A service over a tree of jobs.
     *
     * @param tree a job, or a folder with job folders in it
     * @param book whose rates are looked at
     */
    public FeedbackService(Path tree, BookService book, RateRule rule) {
        this.tree = tree;
        this.book = book;
        this.rule = rule;
    }

    /**
     * What closed jobs teach.
     *
     * @param unread files that are left out, and why
     */
    public record Lesson(FeedbackSeason season, List<Suggestion> suggestions, List<String> unread) {

        public Lesson {
            suggestions = List.copyOf(suggestions);
            unread = List.copyOf(unread);
        }
    }

    /** The feedback with the rates that follow; a season without jobs where none is closed with actuals. */
    public Lesson lesson() throws IOException {
        Heard heard = hear();
        return new Lesson(heard.season, suggestions(heard.season), heard.wrong);
    }

    /** Writes one suggested rate into the book, dated, with the jobs as the reason. */
    public Reply accept(Suggestion one, LocalDate on) throws IOException {
        return book.change(one.code(), Map.of(one.what(), one.to()), on, one.reason());
    }

    /** The feedback in a table, with the rates that follow and their evidence. */
    public Reply tell() throws IOException {
        Heard heard = hear();
        if (heard.season.jobs().isEmpty()) {
            return Reply.refused(List.of(nothing())).andWrong(heard.wrong);
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("item", "jobs", "estimate", "actual", "quantity", "production", "price"));
        for (FeedbackSeason.Total total : heard.season.totals()) {
            rows.add(List.of(
                    total.code(),
                    String.valueOf(total.jobs()),
                    total.estimate().text(),
                    total.actual().text(),
                    signed(total.quantityError()),
                    signed(total.productionError()),
                    signed(total.priceError())));
        }
        List<String> out = new ArrayList<>(TextColumns.of(rows));
        for (Suggestion one : suggestions(heard.season)) {
            out.add("");
            out.add(one.code() + " " + one.what() + ": " + one.from() + " → " + one.to() + " ("
                    + (one.rule() == RateRule.MEDIAN ? "median of the last jobs" : "a quarter step for each job")
                    + ")");
            one.evidence()
                    .forEach(job -> out.add(
                            "  " + job.job() + ", finished " + job.finished() + ", " + job.soil() + ": " + job.rate()));
        }
        return Reply.done(out).andWrong(heard.wrong);
    }

    /** Writes the feedback as PDF and XLSX. */
    public Reply print(Path folder, LocalDate on, TemplateFolder own) throws IOException {
        Heard heard = hear();
        if (heard.season.jobs().isEmpty()) {
            return Reply.refused(List.of(nothing())).andWrong(heard.wrong);
        }
        Company company =
                book.read().company().orElseThrow(() -> new IOException("no company.json beside " + book.file()));
        Map<String, Object> model =
                Map.of("sheet", FeedbackPaper.of(company, heard.season, suggestions(heard.season), on));
        Templates words = own.templates();
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
        return Reply.done(written).andWrong(heard.wrong);
    }

    /**
     * Writes suggested rates of those items into the book, dated, with the jobs as the reason. An item for which
     * nothing is suggested keeps all from being written.
     */
    public Reply accept(List<String> codes, LocalDate on) throws IOException {
        List<Suggestion> suggestions = suggestions(hear().season);
        List<Fault> faults = new ArrayList<>();
        String suggested = suggestions.isEmpty()
                ? "none yet: too few finished jobs say what they took"
                : suggestions.stream().map(Suggestion::code).distinct().collect(Collectors.joining(", "));
        codes.stream()
                .filter(code -> suggestions.stream().noneMatch(one -> one.code().equals(code)))
                .forEach(code -> faults.add(new Fault(
                        Place.ofFile(tree.toString()),
                        "no rate suggested for " + code,
                        suggested,
                        "see: spadework feedback " + tree)));
        if (!faults.isEmpty()) {
            return Reply.refused(faults);
        }
        List<String> out = new ArrayList<>();
        for (Suggestion one : suggestions) {
            if (codes.contains(one.code())) {
                Reply answered = accept(one, on);
                out.addAll(answered.out());
                if (!answered.done()) {
                    return new Reply(out, answered.err(), false);
                }
            }
        }
        return Reply.done(out);
    }

    private List<Suggestion> suggestions(FeedbackSeason season) throws IOException {
        ReadBook read = book.read();
        if (!read.faults().isEmpty() || read.book().isEmpty()) {
            throw new IOException(
                    read.faults().isEmpty()
                            ? book.file() + " is no price book"
                            : read.faults().get(0).text());
        }
        return season.suggestions(read.book().get(), rule);
    }

    /** What was heard, and which jobs could not be read. */
    private record Heard(FeedbackSeason season, List<String> wrong) {}

    private Heard hear() throws IOException {
        BidReader reader = new BidReader();
        List<BidReader.ReadBid<Optional<JobVariances>>> read = JobTree.each(
                tree,
                file -> reader.read(
                        file,
                        bid -> bid.standing() == BidStatus.CLOSED
                                ? JobVariances.of(
                                        bid.job(),
                                        bid.company(),
                                        bid.book(),
                                        bid.quote(),
                                        DayQuantities.takeoff(BuiltJob.of(bid.job()), bid.company(), bid.book()))
                                : Optional.empty()));
        List<JobVariances> jobs = read.stream()
                .flatMap(one -> one.drawn().stream())
                .flatMap(Optional::stream)
                .toList();
        return new Heard(new FeedbackSeason(jobs), BidsService.unread(read));
    }

    private Fault nothing() {
        return new Fault(
                Place.ofFile(tree.toString()),
                "no closed job with actuals",
                "closed jobs with \"actuals\", or stone, loads or gallons, under \"asBuilt\"",
                "write down hours, quantities and invoices of closed jobs");
    }

    private static String signed(Dollars amount) {
        return amount.isNegative() || amount.isZero() ? amount.text() : "+" + amount.text();
    }
}
