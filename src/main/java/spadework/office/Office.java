package spadework.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import spadework.contract.Contract;
import spadework.contract.Contracting;
import spadework.finding.Fault;
import spadework.finding.Finding;
import spadework.finding.Phrases;
import spadework.intake.Intake;
import spadework.intake.Reading;
import spadework.intake.Refused;
import spadework.intake.StateRuleBook;
import spadework.intake.Understood;
import spadework.job.Agreed;
import spadework.job.Job;
import spadework.law.DepositCheck;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.Terms;
import spadework.press.Templates;
import spadework.pricebook.PriceBook;
import spadework.pricing.Due;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.register.AtomicFile;
import spadework.safety.Checks;
import spadework.safety.Facts;
import spadework.takeoff.Measuring;

/** The whole pipe: files in, files out. Company, book, words and fonts are read once and kept for further jobs. */
public final class Office {
    private final Intake intake = new Intake();
    private final StateRuleBook states = StateRuleBook.bundled();
    private final Phrases phrases;
    private final Terms terms;
    private final Printer printer;
    private final Postbag postbag;

    /**
     * An office that prints with the bundled templates, some of them replaced by those of a folder.
     *
     * @throws spadework.press.TemplateFault if the folder or its words cannot be used
     */
    public static Office with(Optional<Path> templates) {
        return new Office(templates.map(Templates::with).orElseGet(Templates::bundled));
    }

    private Office(Templates templates) {
        this.phrases = new Phrases(templates.words("words/findings.properties"));
        this.terms = new Terms(templates.words("words/terms.properties"));
        this.printer = new Printer(templates);
        this.postbag = new Postbag(templates, printer);
    }

    /** Job → takeoff → checks → price. */
    public Answer bid(Path file) {
        return bid(intake.read(file), file);
    }

    /**
     * The same for a job that is being edited.
     *
     * @param text what the file would say
     * @param file where it lies or will lie
     */
    public Answer bid(String text, Path file) {
        return bid(intake.read(text, file), file);
    }

    /** The price book that a job at that place has, if it can be read. */
    public Optional<PriceBook> book(Path file) {
        return intake.book(file);
    }

    private Answer bid(Reading reading, Path file) {
        if (reading instanceof Refused refused) {
            return new Refusal(refused.faults());
        }
        Understood understood = (Understood) reading;
        Job job = understood.job();
        List<Fault> missing = Photos.missing(job, understood.jobFolder());
        if (!missing.isEmpty()) {
            return new Refusal(missing);
        }
        PriceBook book = understood.book().changedBy(job.priceChanges());
        Quote quote = Pricing.of(job, understood.company(), book, Measuring.of(job, book));
        List<Fault> unpriced = UnitPriceFaults.of(job, quote, file);
        return unpriced.isEmpty() ? bid(understood, book, quote) : new Refusal(unpriced);
    }

    private Bid bid(Understood understood, PriceBook book, Quote quote) {
        Job job = understood.job();
        Contract contract = Contracting.of(job, understood.company(), book, quote);
        Dossier proposed = dossier(understood, job, book, quote, contract);
        Job agreed = Agreed.of(job);
        if (agreed.equals(job)) {
            return new Bid(proposed, proposed);
        }
        Quote agreedQuote = Pricing.of(agreed, understood.company(), book, Measuring.of(agreed, book));
        return new Bid(proposed, dossier(understood, agreed, book, agreedQuote, contract));
    }

    private Dossier dossier(Understood understood, Job job, PriceBook book, Quote quote, Contract contract) {
        String state = job.site().address().state();
        return new Dossier(
                job,
                understood.company(),
                book,
                Measuring.of(job, book),
                quote,
                contract,
                states.find(state),
                Optional.empty(),
                Checks.of(new Facts(job, book)),
                contractFindings(state, contract),
                phrases,
                terms,
                Logo.of(understood.company(), understood.jobFolder()),
                Photos.of(job, understood.jobFolder()));
    }

    private List<Finding> contractFindings(String state, Contract contract) {
        Dollars deposit = Dollars.total(
                contract.payments().stream().filter(Due::atSigning).map(Due::amount).toList());
        return DepositCheck.of(state, states.find(state), contract.contracted().total(), deposit);
    }

    /**
     * Prints the papers of a job into a folder of its own, named after the job. All are made before the first is
     * written.
     *
     * @throws IOException if the folder or a file cannot be written
     */
    public Outcome documents(Path file, Path out, Set<Paper> papers) throws IOException {
        printer.prepare();
        Answer answer = bid(file);
        if (answer instanceof Refusal refusal) {
            return new Outcome.Faulty(refusal.faults());
        }
        Bid bid = (Bid) answer;
        List<Finding> stops = bid.openStops();
        if (!stops.isEmpty()) {
            return new Outcome.Stopped(stops.stream().map(this::told).toList());
        }
        Map<String, byte[]> printed = new LinkedHashMap<>(printer.print(bid.dossier(), papers));
        Path folder = out.resolve(FileName.safe(bid.dossier().job().number()));
        Files.createDirectories(folder);
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> paper : printed.entrySet()) {
            Path target = folder.resolve(paper.getKey());
            AtomicFile.write(target, paper.getValue());
            written.add(target);
        }
        return new Outcome.Printed(written);
    }

    /**
     * The pages of one paper, to be looked at.
     *
     * @return a PDF; a bid with open stops has one too, which {@link #documents} would not write
     */
    public byte[] page(Bid bid, Paper paper) {
        return printer.page(bid.dossier(), paper);
    }

    /**
     * Writes one paper as PDF where the contractor wants it.
     *
     * @throws IOException if it cannot be written
     */
    public Outcome save(Bid bid, Paper paper, Path target) throws IOException {
        return issued(bid, target, () -> printer.page(bid.dossier(), paper));
    }

    /**
     * Writes a letter to the homeowner with papers in it, as a draft for a mail program. Nothing is sent.
     *
     * @throws IllegalArgumentException if one of the papers is not for the homeowner
     * @throws IOException if it cannot be written
     */
    public Outcome letter(Bid bid, Set<Paper> papers, Path target) throws IOException {
        return issued(bid, target, () -> postbag.letter(bid.dossier(), papers).draft());
    }

    private Outcome issued(Bid bid, Path target, Supplier<byte[]> content) throws IOException {
        List<Finding> stops = bid.openStops();
        if (!stops.isEmpty()) {
            return new Outcome.Stopped(stops.stream().map(this::told).toList());
        }
        AtomicFile.write(target.toAbsolutePath(), content.get());
        return new Outcome.Printed(List.of(target));
    }

    /** Makes the page press ready on another thread, before the first page is asked for. */
    public void prepare() {
        printer.prepare();
    }

    /** What was found, with its figures. */
    public String what(Finding finding) {
        return phrases.what(finding);
    }

    /** What to do about a finding. */
    public String action(Finding finding) {
        return phrases.action(finding);
    }

    /** A finding in words on one line. */
    public String told(Finding finding) {
        return finding.id() + ": " + phrases.what(finding) + " " + phrases.action(finding) + " [" + finding.citation() + "]";
    }

    /** The sentence that leaves the last word to local code and the people on site. */
    public String deference() {
        return phrases.deference();
    }
}
