package spadework.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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
import spadework.paperwork.ContractChecks;
import spadework.paperwork.Dossier;
import spadework.paperwork.Terms;
import spadework.press.Templates;
import spadework.pricebook.PriceBook;
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
    }

    /** Job → takeoff → checks → price. */
    public Answer bid(Path file) {
        Reading reading = intake.read(file);
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
        Dossier contracted = dossier(understood, Agreed.contracted(job), book, contract, proposed);
        Dossier agreed = dossier(understood, Agreed.of(job), book, contract, contracted);
        return new Bid(proposed, contracted, agreed);
    }

    /** The dossier of a job in a later state; the one before it where nothing differs. */
    private Dossier dossier(Understood understood, Job job, PriceBook book, Contract contract, Dossier before) {
        if (job.equals(before.job())) {
            return before;
        }
        Quote quote = Pricing.of(job, understood.company(), book, Measuring.of(job, book));
        return dossier(understood, job, book, quote, contract);
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
                ContractChecks.of(job, understood.company(), contract, states.find(state)),
                phrases,
                terms,
                Logo.of(understood.company(), understood.jobFolder()),
                Photos.of(job, understood.jobFolder()));
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
        Set<Paper> prepared = prepared(bid, papers);
        if (prepared.isEmpty()) {
            return new Outcome.Stopped(bid.findings().stream()
                    .filter(finding -> finding.id().equals(ContractChecks.UNPREPARED))
                    .map(this::told)
                    .toList());
        }
        Map<String, byte[]> printed = new LinkedHashMap<>(printer.print(bid, prepared));
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

    /** The papers that the job is ready for: a contract needs to know of its signing. */
    private static Set<Paper> prepared(Bid bid, Set<Paper> papers) {
        boolean signing = bid.contracted().job().agreement().signing().isPresent();
        return papers.stream()
                .filter(paper -> paper != Paper.CONTRACT || signing)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Paper.class)));
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
