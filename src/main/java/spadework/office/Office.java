// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import spadework.company.Company;
import spadework.contract.Revision;
import spadework.disk.AtomicFile;
import spadework.disk.Disk;
import spadework.disk.InsideFolder;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.job.Job;
import spadework.office.files.FileName;
import spadework.office.files.JobNumbers;
import spadework.office.records.AgreedRecord;
import spadework.office.records.JobRecords;
import spadework.office.records.SignedJob;
import spadework.office.records.SignedSource;
import spadework.office.reply.TemplateFolder;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.contract.CancellationAcknowledgment;
import spadework.paperwork.contract.ContractChecks;
import spadework.press.page.PageInfo;
import spadework.press.template.Templates;
import spadework.pricebook.PriceBook;
import spadework.register.Entry;
import spadework.register.IssuedFolders;
import spadework.register.SealMark;
import spadework.wording.Language;

/** The whole pipe: files in, files out. Company, book, words and fonts are read once and kept for further jobs. */
public final class Office {
    private final Intake intake;
    private final Templates templates;
    private final OfficeWords words;
    private final Phrases phrases;
    private final OfficeFindings findings;
    private final Bidding bidding;
    private final PaperPrinter printer;
    private final SignedSource.Latest latest = new SignedSource.Latest();

    /**
     * An office that prints with the bundled templates, some of them replaced by those of a folder.
     *
     * @throws spadework.press.template.TemplateFault if the folder or its words cannot be used
     */
    public static Office with(TemplateFolder own) {
        return new Office(new Intake(), own.templates());
    }

    public Office(Intake intake, Templates templates) {
        this.intake = intake;
        this.templates = templates;
        this.words = new OfficeWords(templates);
        this.phrases = words.phrases(Language.ENGLISH);
        this.findings = new OfficeFindings(words);
        this.bidding = new Bidding(words, new PrintedWarranty(templates));
        this.printer = new PaperPrinter(templates);
    }

    /** Job → takeoff → checks → price. A signed job is priced by the books of the day on which it was signed. */
    public BidResult bid(Path job) {
        try {
            return readAndBid(job);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * The same for a job that is being edited.
     *
     * @param text what the file would say
     * @param file where it lies or will lie
     */
    public BidResult bid(String text, Path file) {
        try {
            return bidOf(text, file, SignedJob::withoutSource);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The same for a job that says it is accepted while the step that keeps its source is still being taken. */
    public BidResult bidWhileSigning(String text, Path file) {
        try {
            return bidOf(text, file, job -> List.of());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Prices what comes next by the books as their files have them now. */
    public void readBooksAgain() {
        intake.readAgain();
    }

    /** The price book that a job at that place has, if it can be read. */
    public Optional<PriceBook> book(Path file) {
        return intake.book(file);
    }

    private BidResult bidOf(String text, Path file, Function<Job, List<Finding>> unkept) throws IOException {
        JobRecords records = JobRecords.beside(file);
        Optional<byte[]> signed = signed(records);
        if (signed.isPresent()) {
            return bidSigned(text, file, records, signed.get(), BidSource::of);
        }
        Reading reading = intake.read(text, file);
        List<Finding> said = reading instanceof ReadJob understood ? unkept.apply(understood.job()) : List.of();
        return bid(reading, BidSource.of(file, AgreedRecord.of(records, said)));
    }

    /** As {@link #bid(Path)}, where the caller says what is done about a file that cannot be read. */
    public BidResult readAndBid(Path job) throws IOException {
        return bid(job, BidSource::of);
    }

    /** The same for papers that carry a revision. */
    public BidResult bid(Path job, Revision revision) throws IOException {
        return bid(job, (file, record) -> new BidSource(file, record, Optional.of(revision)));
    }

    private BidResult bid(Path job, BiFunction<Path, AgreedRecord, BidSource> source) throws IOException {
        Path file = Intake.fileOf(job);
        JobRecords records = JobRecords.beside(file);
        Optional<byte[]> signed = signed(records);
        if (signed.isPresent() && Files.isRegularFile(file)) {
            return bidSigned(Files.readString(file), file, records, signed.get(), source);
        }
        Reading reading = intake.read(job);
        List<Finding> said =
                reading instanceof ReadJob understood ? SignedJob.withoutSource(understood.job()) : List.of();
        return bid(reading, source.apply(file, AgreedRecord.of(records, said)));
    }

    /** The source of the contract that is signed, as it was kept. */
    private static Optional<byte[]> signed(JobRecords records) throws IOException {
        Optional<Entry> contract = records.contract();
        return contract.isPresent() ? records.archive(contract.get()) : Optional.empty();
    }

    /** What a job comes to by the books that it was signed with. */
    private BidResult bidSigned(
            String text, Path file, JobRecords records, byte[] signed, BiFunction<Path, AgreedRecord, BidSource> source)
            throws IOException {
        SignedJob read = SignedJob.read(file, text, latest.of(signed, file));
        return bid(read.reading(), source.apply(file, AgreedRecord.of(records, read.findings())));
    }

    private BidResult bid(Reading reading, BidSource source) {
        return reading instanceof Refused refused
                ? new Refusal(refused.faults())
                : bidding.bid((ReadJob) reading, source);
    }

    /**
     * Prints the papers of a job into a folder of its own, named after the job. All are made before the first is
     * written. What was issued or signed is handed out as it was.
     *
     * @throws IOException if the folder or a file cannot be written
     */
    public Outcome documents(Path job, Path out, Set<PaperKind> papers) throws IOException {
        return documents(job, out, papers, JobNumbers.taken(List.of(job)));
    }

    /**
     * The same for one of many jobs, of which it was looked up before which have a number that another one has.
     *
     * @param taken by {@link JobNumbers#taken}
     */
    public Outcome documents(Path job, Path out, Set<PaperKind> papers, Map<Path, Fault> taken) throws IOException {
        if (taken.containsKey(job)) {
            return new Outcome.Faulty(List.of(taken.get(job)));
        }
        printer.prepare();
        BidResult answer = readAndBid(job);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        List<Finding> stops = bid.openStops();
        if (!stops.isEmpty()) {
            return new Outcome.Stopped(stops.stream().map(this::described).toList());
        }
        Set<PaperKind> prepared = bid.prepared(papers);
        if (prepared.isEmpty()) {
            return new Outcome.Stopped(bid.findings().stream()
                    .filter(finding -> finding.id().equals(ContractChecks.UNPREPARED))
                    .map(this::described)
                    .toList());
        }
        Map<String, byte[]> printed = new LinkedHashMap<>(print(bid, prepared));
        printed.putAll(new IssuedPapers(JobRecords.beside(Intake.fileOf(job))).of(bid, papers));
        Path folder = out.resolve(FileName.safe(bid.dossier().job().number()));
        Disk.folders(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> paper : printed.entrySet()) {
            Path target = InsideFolder.writable(folder, place(paper.getKey()) + "/" + paper.getKey());
            Disk.folders(target.getParent());
            AtomicFile.write(target, paper.getValue());
            written.add(target);
        }
        return new Outcome.Printed(written);
    }

    /** What the homeowner may have lies apart from the rest, so that mailing a folder never mails what work costs. */
    private static String place(String file) {
        boolean theirs = Arrays.stream(PaperKind.values())
                .anyMatch(paper -> paper.isForHomeowner()
                        && file.matches(Pattern.quote(paper.file()) + "(-[0-9]+)?(" + HomeownerPapers.READING
                                + ")?\\.(pdf|xlsx)"));
        return theirs ? IssuedFolders.HOMEOWNER : IssuedFolders.KEPT;
    }

    /** The files of those papers by name. */
    public Map<String, byte[]> print(Bid bid, Set<PaperKind> papers) {
        return printer.print(bid, papers);
    }

    /**
     * The files of papers that are issued: the code of the register stands at the foot of their pages, and where the
     * firm has set up a key, their PDFs are signed with it.
     *
     * @throws IOException if the key cannot be used
     */
    public Map<String, byte[]> issued(Bid bid, Set<PaperKind> papers, SealMark mark) throws IOException {
        return SignedPapers.of(
                printer.print(bid, papers, mark.text()), bid.dossier().job().issued());
    }

    /**
     * The acknowledgment of a cancellation, as page and workbook by name, issued as other papers are.
     *
     * @throws IOException if the key cannot be used
     */
    public Map<String, byte[]> acknowledgment(
            Bid bid, CancellationAcknowledgment cancellation, LocalDate date, SealMark mark) throws IOException {
        return issuedApart(bid, "cancellation", Map.of("cancellation", cancellation), date, mark);
    }

    /**
     * A paper that is none of the set, as page and workbook by name, issued as other papers are.
     *
     * @param template the folder of its templates, which is its name as well
     * @throws IOException if the key cannot be used
     */
    public Map<String, byte[]> issuedApart(
            Bid bid, String template, Map<String, Object> model, LocalDate date, SealMark mark) throws IOException {
        return SignedPapers.of(printer.apart(bid, template, model, date, mark.text()), date);
    }

    /** The same for a paper that is printed and not registered. */
    public Map<String, byte[]> printedApart(Bid bid, String template, Map<String, Object> model, LocalDate date) {
        return printer.apart(bid, template, model, date, "");
    }

    /** The same in another language. */
    public Map<String, byte[]> printedApart(
            Bid bid, String template, Map<String, Object> model, LocalDate date, String language) {
        return printer.apart(
                template, model, new PageInfo(language, bid.dossier().company().name(), date, ""));
    }

    /** The page alone of a paper that is printed and not registered, in a language. */
    public byte[] pageApart(Bid bid, String template, Map<String, Object> model, LocalDate date, String language) {
        return printer.pageApart(
                template, model, new PageInfo(language, bid.dossier().company().name(), date, ""));
    }

    /** The agreed work of a bid in the words that its crew reads. */
    public Dossier forCrew(Bid bid) {
        Company company = bid.dossier().company();
        return bid.dossier().in(words.in(company.letterhead().crewLanguage(), company));
    }

    /** Short words in English. */
    public PaperWords terms() {
        return words.in(Language.ENGLISH).terms();
    }

    public Templates templates() {
        return templates;
    }

    /**
     * The pages of one paper, to be looked at.
     *
     * @return a PDF; a bid with open stops has one too, which {@link #documents} would not write
     */
    public byte[] page(Bid bid, PaperKind paper) {
        return printer.page(bid, paper);
    }

    /** The same for a paper of which the job may have several. */
    public byte[] page(Bid bid, JobPaper paper) {
        return printer.page(bid, paper);
    }

    /**
     * One paper as it is handed out: what was issued and signed as it was, anything else as it stands.
     *
     * @param job the job's file, beside which its records lie
     * @throws IOException if what was issued cannot be read
     */
    public byte[] handedOut(Bid bid, JobPaper paper, Path job) throws IOException {
        byte[] kept = new IssuedPapers(JobRecords.beside(Intake.fileOf(job)))
                .of(bid, Set.of(paper.paper()))
                .get(paper.file() + ".pdf");
        return kept == null ? page(bid, paper) : kept;
    }

    /**
     * Writes one paper as PDF where the contractor wants it.
     *
     * @throws IOException if it cannot be written
     */
    public Outcome save(Bid bid, JobPaper paper, Path job, Path target) throws IOException {
        return bid.openStops().isEmpty() ? written(handedOut(bid, paper, job), target) : stopped(bid);
    }

    /**
     * Writes a letter to the homeowner with papers in it, as a draft for a mail program. Nothing is sent.
     *
     * @throws IllegalArgumentException if one of the papers is not for the homeowner
     * @throws IOException if it cannot be written
     */
    public Outcome letter(Bid bid, List<JobPaper> papers, Path job, Path target) throws IOException {
        if (!bid.openStops().isEmpty()) {
            return stopped(bid);
        }
        Map<JobPaper, byte[]> enclosed = new LinkedHashMap<>();
        for (JobPaper paper : papers) {
            enclosed.put(paper, handedOut(bid, paper, job));
        }
        return written(
                HomeownerLetter.letter(templates, bid.dossier(), enclosed).draft(), target);
    }

    private static Outcome written(byte[] content, Path target) throws IOException {
        AtomicFile.write(target.toAbsolutePath(), content);
        return new Outcome.Printed(List.of(target));
    }

    private Outcome stopped(Bid bid) {
        return new Outcome.Stopped(bid.openStops().stream().map(this::described).toList());
    }

    /** A fault for each of these jobs whose number another one has. */
    public static Map<Path, Fault> takenNumbers(List<Path> jobs) throws IOException {
        return JobNumbers.taken(jobs);
    }

    /** Makes the page press ready on another thread, before the first page is asked for. */
    public void prepare() {
        printer.prepare();
    }

    /** What was found, with its figures. */
    public String what(Finding finding) {
        return phrases.what(finding);
    }

    /** The same as an office has it that reads this language. */
    public String what(Finding finding, Language language) {
        return findings.what(finding, language);
    }

    /** What to do about a finding. */
    public String action(Finding finding) {
        return phrases.action(finding);
    }

    /** The same as an office has it that reads this language. */
    public String action(Finding finding, Language language) {
        return findings.action(finding, language);
    }

    /** A finding in words on one line. */
    public String described(Finding finding) {
        return phrases.described(finding);
    }

    /** What a window shows of a bid, as an office has it that reads this language. */
    public BidView view(Bid bid, Language language) {
        return new BidView(
                bid.dossier(), words.in(language, bid.dossier().company()).terms());
    }

    /** The sentence that leaves the last word to local code and the people on site. */
    public String deference() {
        return phrases.deference();
    }

    /** The same as an office has it that reads this language. */
    public String deference(Language language) {
        return findings.deference(language);
    }
}
