// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.contract.SealedFigures;
import spadework.contract.Sum;
import spadework.money.Dollars;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Register;
import spadework.register.RegisteredFile;
import spadework.wording.Wording;

/** What the register of a job folder says that the job's papers need. */
public final class JobRecords {
    private static final Wording WORDS = Wording.beside(JobRecords.class);

    /** What an accepted change order adds, before tax. */
    public static final String CHANGE_PRICE = "change.price";

    /** The sales tax on it. */
    public static final String CHANGE_TAX = "change.tax";

    private static final String SOURCE = "-source.zip";

    private final Path folder;
    private final List<Entry> entries;

    public JobRecords(Path folder, List<Entry> entries) {
        this.folder = folder;
        this.entries = entries;
    }

    /** Reads the register beside a job file; nothing is in it where there is none. */
    public static JobRecords beside(Path file) throws IOException {
        Path folder = file.toAbsolutePath().normalize().getParent();
        return new JobRecords(
                folder, Register.isIn(folder) ? Register.of(folder).entries() : List.of());
    }

    public Path folder() {
        return folder;
    }

    /** The contract that was signed. */
    public Optional<Entry> contract() {
        return last(Event.CONTRACT_SIGNED);
    }

    /** Whether the homeowner declined, and no proposal was issued since. */
    public boolean isLost() {
        return declined().isPresent();
    }

    /** The line that says so. */
    public Optional<Entry> declined() {
        return entries.stream()
                .filter(entry -> entry.event() == Event.PROPOSAL_DECLINED || entry.event() == Event.PROPOSAL_ISSUED)
                .reduce((one, next) -> next)
                .filter(entry -> entry.event() == Event.PROPOSAL_DECLINED);
    }

    /** The notice with which the buyer canceled the contract. */
    public Optional<Entry> canceled() {
        return last(Event.CONTRACT_CANCELED);
    }

    /** Why no step may follow on the contract; nothing while it stands. */
    public List<String> stopped() {
        return canceled().stream()
                .map(entry -> WORDS.get(
                        "job-records.contract-canceled-notice-came",
                        entry.on(),
                        entry.fact("refundBy").orElse("the tenth business day")))
                .toList();
    }

    /** The certificate that was issued at the close. */
    public Optional<Entry> certificate() {
        return entries.stream()
                .filter(entry -> entry.event() == Event.CERTIFICATE_ISSUED)
                .findFirst();
    }

    /** The proposal that was issued last. */
    public Optional<Entry> proposal() {
        return last(Event.PROPOSAL_ISSUED);
    }

    /** The proposal of that revision. */
    public Optional<Entry> proposal(int revision) {
        return entries.stream()
                .filter(entry -> entry.event() == Event.PROPOSAL_ISSUED && entry.revision() == revision)
                .findFirst();
    }

    /** The prices of the signed contract and of its accepted changes, as their lines have them. */
    public SealedFigures sealed() {
        Optional<Entry> contract = contract();
        if (contract.isEmpty()) {
            return SealedFigures.NONE;
        }
        Map<String, Dollars> figures = new LinkedHashMap<>();
        contract.get().facts().forEach((name, value) -> {
            if (SealedFigures.isFigure(name)) {
                figures.put(name, Dollars.of(value));
            }
        });
        Map<Integer, Sum> changes = new LinkedHashMap<>();
        Optional<Dollars> standing = Optional.ofNullable(figures.get(SealedFigures.TOTAL));
        for (Entry entry : entries) {
            if (entry.event() == Event.CHANGE_ORDER_ACCEPTED && entry.number().isPresent()) {
                Optional<Dollars> after = entry.fact(SealedFigures.TOTAL).map(Dollars::of);
                Optional<Dollars> before = standing;
                Optional<Sum> sum = change(entry)
                        .or(() -> before.flatMap(was -> after.map(is -> new Sum(is.minus(was), Dollars.ZERO))));
                sum.ifPresent(added -> changes.put(entry.number().get().count(), added));
                standing = after.isPresent() ? after : standing;
            }
        }
        return new SealedFigures(figures, changes);
    }

    /**
     * The change's own figures. Lines from before it had any say what the contract came to; the step between is then
     * the change.
     */
    private static Optional<Sum> change(Entry entry) {
        return entry.fact(CHANGE_PRICE)
                .map(Dollars::of)
                .map(price ->
                        new Sum(price, entry.fact(CHANGE_TAX).map(Dollars::of).orElse(Dollars.ZERO)));
    }

    /** The signatures that came in on a paper, while others were missing. */
    public List<Entry> signatures(DocumentNumber paper) {
        return entries.stream()
                .filter(entry -> entry.event() == Event.SIGNATURE_RECEIVED
                        && entry.number().filter(paper::equals).isPresent())
                .toList();
    }

    /** The decision on a change order. */
    public Optional<Entry> decided(DocumentNumber number) {
        return entries.stream().filter(entry -> decides(entry, number)).findFirst();
    }

    public static boolean decides(Entry entry, DocumentNumber number) {
        boolean decision = entry.event() == Event.CHANGE_ORDER_ACCEPTED || entry.event() == Event.CHANGE_ORDER_DECLINED;
        return decision && entry.number().filter(number::equals).isPresent();
    }

    /** The source that an entry kept; empty where it kept none, or the file is gone. */
    public Optional<JobSource> source(Entry entry) throws IOException {
        Optional<byte[]> archive = archive(entry);
        return archive.isEmpty() ? Optional.empty() : Optional.of(JobSource.read(archive.get()));
    }

    /** The same, as it lies there. */
    public Optional<byte[]> archive(Entry entry) throws IOException {
        return file(entry, SOURCE);
    }

    /** Whether the source that lies there is the one that the entry names; true where it kept none, or it is gone. */
    public boolean isSourceAsRegistered(Entry entry) throws IOException {
        Optional<byte[]> archive = archive(entry);
        return archive.isEmpty()
                || entry.files().stream()
                        .filter(file -> file.name().endsWith(SOURCE))
                        .allMatch(file -> file.holds(archive.get()));
    }

    /** The same, with only what prices are made from. */
    public Optional<JobSource> pricesOf(Entry entry) throws IOException {
        Optional<Path> archive = path(entry, SOURCE);
        return archive.isEmpty() ? Optional.empty() : Optional.of(JobSource.pricesOf(archive.get()));
    }

    /** The bytes of the file of an entry whose name ends so; empty where there is none, or it is gone. */
    public Optional<byte[]> file(Entry entry, String ending) throws IOException {
        Optional<Path> path = path(entry, ending);
        return path.isEmpty() ? Optional.empty() : Optional.of(Files.readAllBytes(path.get()));
    }

    private Optional<Path> path(Entry entry, String ending) {
        return entry.files().stream()
                .map(RegisteredFile::name)
                .filter(name -> name.endsWith(ending))
                .map(folder::resolve)
                .filter(Files::isRegularFile)
                .findFirst();
    }

    /** The lines that tell such an event, in their order. */
    public List<Entry> all(Event event) {
        return entries.stream().filter(entry -> entry.event() == event).toList();
    }

    private Optional<Entry> last(Event event) {
        return entries.stream().filter(entry -> entry.event() == event).reduce((one, next) -> next);
    }
}
