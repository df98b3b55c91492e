// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.intake.book.BookReader;
import spadework.intake.book.SupplierMapReader;
import spadework.intake.company.CompanyReader;
import spadework.intake.law.StateRuleBook;
import spadework.intake.source.FileText;
import spadework.intake.source.JsonPass;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Names;
import spadework.job.Job;
import spadework.pricebook.PriceBook;

/**
 * Reads jobs with the company and the price book that lie in the job's folder or nearest above it. Company and book
 * are read once and kept for the other jobs that this object is asked for. It may be used by several threads.
 */
public final class Intake {
    private static final String JOB = "job.json";
    private static final String COMPANY = "company.json";
    private static final String BOOK = "price-book.json";
    private static final String RULES = "state-rules.json";
    private static final String BUNDLED = "the bundled price book";
    private static final Comparator<Fault> BY_PLACE = Comparator.<Fault, String>comparing(
                    fault -> fault.place().file())
            .thenComparing(fault -> fault.place().line())
            .thenComparing(fault -> fault.place().column())
            .thenComparing(fault -> fault.place().pointer());

    private static final String BOOK_RESOURCE = "/spadework/pricebook/default.json";

    private final Supplier<byte[]> bundledBook;
    private final Supplier<byte[]> bundledRules;
    private final Map<List<Optional<Path>>, CompanyAndBook> shops = new ConcurrentHashMap<>();
    private final Map<Optional<Path>, RuleSheet> rules = new ConcurrentHashMap<>();

    /** The rules of a file beside the job, with its faults. */
    private record RuleSheet(StateRuleBook book, List<Fault> faults) {}

    private final Map<KeptFiles, CompanyAndBook> keptShops = new ConcurrentHashMap<>();
    private final Map<KeptFiles, RuleSheet> keptRules = new ConcurrentHashMap<>();

    /** An intake whose price books may start from the bundled one. */
    public Intake() {
        this(BOOK_RESOURCE);
    }

    public Intake(String bundledBook) {
        this(() -> resource(bundledBook), StateRuleBook::bundledFile);
    }

    private Intake(Supplier<byte[]> bundledBook, Supplier<byte[]> bundledRules) {
        this.bundledBook = bundledBook;
        this.bundledRules = bundledRules;
    }

    /**
     * An intake that starts from another bundled book and other bundled rules, as those of an earlier version of the
     * program.
     *
     * @param book the bytes of that book's file
     * @param rules the bytes of the file of those state rules
     */
    public static Intake startingFrom(byte[] book, byte[] rules) {
        byte[] keptBook = book.clone();
        byte[] keptRules = rules.clone();
        return new Intake(() -> keptBook, () -> keptRules);
    }

    /** The file of the price book that comes with the program, as it is. */
    public static byte[] bundledBookFile() {
        return resource(BOOK_RESOURCE);
    }

    /**
     * The files beside a job that go with it, by their plain names: {@code company.json}, {@code price-book.json} and
     * {@code state-rules.json}, where there are such.
     */
    public static Map<String, Path> filesOf(Path job) {
        Path folder = NearbyFiles.folderOf(fileOf(job));
        Map<String, Path> files = new LinkedHashMap<>();
        for (String name : List.of(COMPANY, BOOK, RULES)) {
            NearbyFiles.find(folder, name).ifPresent(path -> files.put(name, path));
        }
        return files;
    }

    /**
     * Reads a job.
     *
     * @param job the job's file, or the folder that holds its {@code job.json}
     * @return the job, or every fault of its three files, sorted by file, line and column
     */
    public Reading read(Path job) {
        Path file = fileOf(job);
        return read(
                file,
                () -> Files.isRegularFile(file)
                        ? sheet(file)
                        : missing(file.toString(), "a job file", "check the path"));
    }

    /**
     * Reads a job whose text is at hand, as one that is being edited.
     *
     * @param text what the file would say
     * @param file where it lies or will lie: company and price book are sought from there, and faults name it
     * @return the job, or every fault, as if the text had been read from that file
     */
    public Reading read(String text, Path file) {
        return read(file, () -> JsonPass.over(file.toString(), text));
    }

    /**
     * Reads a company whose text is at hand.
     *
     * @param shown its name in faults
     * @return every fault of it, sorted by place; none for one that can be used
     */
    public List<Fault> faultsOfCompany(String text, String shown) {
        SourceFile sheet = JsonPass.over(shown, text);
        sheet.root().ifPresent(CompanyReader::read);
        return sheet.faults().stream().sorted(BY_PLACE).toList();
    }

    /** Reads company, price book and state rules again from their files, as one of them may have changed. */
    public void readAgain() {
        shops.clear();
        rules.clear();
    }

    /** The price book that a job file at that place has; nothing if there is none without fault. */
    public Optional<PriceBook> book(Path file) {
        CompanyAndBook shop = shop(NearbyFiles.folderOf(file));
        return shop.faults().isEmpty() ? shop.book() : Optional.empty();
    }

    /** The number in a job's file, read without the rest; empty where it cannot be found. */
    public static Optional<String> numberOf(Path file) {
        FileText text = FileText.of(file, file.toString());
        return text.fault().isEmpty() ? JobNumberScan.of(text.text()) : Optional.empty();
    }

    /** The job's file, where its folder may have been named. */
    public static Path fileOf(Path job) {
        return Files.isDirectory(job) ? job.resolve(JOB) : job;
    }

    private Reading read(Path file, Supplier<SourceFile> text) {
        Path folder = NearbyFiles.folderOf(file);
        CompanyAndBook shop = shop(folder);
        return read(file, new JobSheets(text.get(), shop, rulesNear(folder), lacking(folder)));
    }

    /** A job's own file, with what it is read by. */
    private record JobSheets(SourceFile job, CompanyAndBook shop, RuleSheet states, Set<String> lacking) {}

    private Reading read(Path file, JobSheets sheets) {
        CompanyAndBook shop = sheets.shop();
        RuleSheet states = sheets.states();
        SourceFile sheet = sheets.job();
        Path folder = NearbyFiles.folderOf(file);
        Optional<Job> read = shop.job(sheet);

        List<Fault> faults = new ArrayList<>(sheet.faults());
        faults.addAll(shop.faults());
        faults.addAll(states.faults());
        sheets.lacking().forEach(name -> faults.addAll(nowhere(folder, name)));
        if (!faults.isEmpty()) {
            faults.sort(BY_PLACE);
            return new Refused(faults);
        }
        Job job = read.orElseThrow();
        Company company = shop.company().orElseThrow();
        return new ReadJob(
                job,
                job.taxClass()
                        .map(company::taxing)
                        .orElse(company)
                        .licensedIn(job.site().address().state()),
                shop.book().orElseThrow(),
                states.book(),
                folder);
    }

    /**
     * Reads a job with the company and the books that were kept of an earlier day, each read once for all jobs that
     * kept the same. What lies beside the job now is not looked at.
     *
     * @param text of the job
     * @param file where it lies; faults name it
     * @param kept bytes of {@code company.json}, {@code price-book.json} and {@code state-rules.json}, where there
     *     were such
     * @param bundled bytes of the book that came with the program then
     */
    public Reading readKept(String text, Path file, Map<String, byte[]> kept, byte[] bundled) {
        KeptFiles key =
                new KeptFiles(kept.getOrDefault(COMPANY, new byte[0]), kept.getOrDefault(BOOK, new byte[0]), bundled);
        CompanyAndBook shop = keptShops.computeIfAbsent(
                key,
                bytes -> CompanyAndBook.read(
                        sheet(COMPANY, kept),
                        sheet(BOOK, kept),
                        () -> sheet(FileText.decoded(bundled, BUNDLED), BUNDLED)));
        RuleSheet states = keptRules.computeIfAbsent(
                new KeptFiles(kept.getOrDefault(RULES, new byte[0])), bytes -> keptRules(kept));
        return read(
                file,
                new JobSheets(
                        JsonPass.over(file.toString(), text), shop, states, lacking(name -> !kept.containsKey(name))));
    }

    private static SourceFile sheet(String name, Map<String, byte[]> kept) {
        return kept.containsKey(name) ? sheet(FileText.decoded(kept.get(name), name), name) : new SourceFile("");
    }

    /** A file of a folder or of the nearest above it; empty where there is none. */
    private static SourceFile sheetNear(Path folder, String name) {
        return NearbyFiles.find(folder, name).map(Intake::sheet).orElseGet(() -> new SourceFile(""));
    }

    /**
     * Reads a price book, beside the company of its folder or the nearest above it.
     *
     * @param text what the file says, or would say
     * @param file where it lies; faults name it
     */
    public ReadBook readBook(String text, Path file) {
        CompanyAndBook shop = CompanyAndBook.read(
                sheetNear(NearbyFiles.folderOf(file), COMPANY), JsonPass.over(file.toString(), text), this::bundled);
        List<Fault> faults = new ArrayList<>(shop.faults());
        faults.sort(BY_PLACE);
        return new ReadBook(shop.company(), shop.book(), faults);
    }

    /** Reads the map from a supplier's list to the items of the book. */
    public static ReadMap readSupplierMap(Path file) {
        SourceFile sheet = Files.isRegularFile(file)
                ? sheet(file)
                : missing(file.toString(), "a map of columns", "check the path");
        return new ReadMap(sheet.root().map(SupplierMapReader.MAP::read), sheet.faults());
    }

    /** The price book that a job of that folder is priced with: the nearest, in the folder or above it. */
    public static Optional<Path> bookOf(Path folder) {
        return NearbyFiles.find(NearbyFiles.folderOf(folder.resolve(JOB)), BOOK);
    }

    /**
     * Reads a job with another price book than the one that lies beside it.
     *
     * @param book the text of that book
     */
    public Reading readWith(String book, Path job) {
        Path file = fileOf(job);
        Path folder = NearbyFiles.folderOf(file);
        Optional<Path> bookFile = NearbyFiles.find(folder, BOOK);
        CompanyAndBook shop = CompanyAndBook.read(
                sheetNear(folder, COMPANY),
                JsonPass.over(bookFile.map(Path::toString).orElse(BOOK), book),
                this::bundled);
        return read(file, new JobSheets(sheet(file), shop, rulesNear(folder), lacking(folder)));
    }

    /**
     * The price book that comes with the program.
     *
     * @throws IllegalStateException if it has a fault; a test reads it
     */
    public PriceBook bundledBook() {
        SourceFile sheet = bundled();
        Names any = Names.unknown("a name");
        Optional<PriceBook> book = sheet.root().map(root -> new BookReader(any, any).read(root));
        if (!sheet.faults().isEmpty()) {
            throw new IllegalStateException(sheet.faults().get(0).text());
        }
        return book.orElseThrow();
    }

    private static Set<String> lacking(Path folder) {
        return lacking(name -> NearbyFiles.find(folder, name).isEmpty());
    }

    private static Set<String> lacking(Predicate<String> isMissing) {
        return Stream.of(COMPANY, BOOK).filter(isMissing).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private RuleSheet rulesNear(Path folder) {
        return rules.computeIfAbsent(
                NearbyFiles.find(folder, RULES),
                file -> file.map(Intake::sheet).map(this::rules).orElseGet(this::rules));
    }

    private RuleSheet keptRules(Map<String, byte[]> kept) {
        return kept.containsKey(RULES) ? rules(sheet(RULES, kept)) : rules();
    }

    private RuleSheet rules() {
        return new RuleSheet(StateRuleBook.of(bundledRules.get()), List.of());
    }

    private RuleSheet rules(SourceFile sheet) {
        return new RuleSheet(rules().book().changedBy(sheet), sheet.faults());
    }

    private CompanyAndBook shop(Path folder) {
        Optional<Path> companyFile = NearbyFiles.find(folder, COMPANY);
        Optional<Path> bookFile = NearbyFiles.find(folder, BOOK);
        return shops.computeIfAbsent(
                List.of(companyFile, bookFile),
                files -> CompanyAndBook.read(sheetNear(folder, COMPANY), sheetNear(folder, BOOK), this::bundled));
    }

    private static SourceFile sheet(Path path) {
        return sheet(FileText.of(path, path.toString()), path.toString());
    }

    private static SourceFile sheet(FileText text, String shown) {
        if (text.fault().isEmpty()) {
            return JsonPass.over(shown, text.text());
        }
        SourceFile sheet = new SourceFile(shown);
        sheet.note(text.fault().get());
        return sheet;
    }

    private SourceFile bundled() {
        return sheet(FileText.decoded(bundledBook.get(), BUNDLED), BUNDLED);
    }

    private static byte[] resource(String name) {
        try (InputStream in = Intake.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + name);
            }
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static SourceFile missing(String shown, String what, String fix) {
        SourceFile sheet = new SourceFile(shown);
        sheet.note(new Fault(Place.ofFile(shown), "no file", what, fix));
        return sheet;
    }

    private static List<Fault> nowhere(Path folder, String name) {
        String shown = folder.resolve(name).toString();
        return missing(shown, name + " in the job's folder or one above it", "put it there")
                .faults();
    }
}
