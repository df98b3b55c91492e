// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import spadework.disk.SharedLock;
import spadework.finding.Fault;
import spadework.finding.Place;

/**
 * The register of a job: {@code register.jsonl} in the job folder, one line of JSON for each event, and the documents
 * that its lines name: papers in {@code for-the-homeowner}, the rest in {@code kept}.
 *
 * <p>Every line holds the SHA-256 of its documents, of the line before and of itself. {@link #check()} finds every
 * change of a byte in a line or a document, a lost document, and a line taken out, put in or moved. Whole lines cut off
 * at the end do not show in the chain; {@code register.head} shows them. There is no secret in any of this: whoever
 * writes the register, its head and the documents all anew is not found, unless the seal of a line was noted elsewhere.
 *
 * <p>Several programs and threads may write at once. An entry is on disk when its method returns. A crash leaves every
 * acknowledged entry whole, and at most half a line behind them, which the next entry replaces. Dates come from the
 * caller.
 */
public final class Register {
    private static final String LOCK = "register.lock";

    private final Path folder;
    private final Documents documents;
    private final RegisterWriter writer;

    private Register(Path folder) {
        this.folder = folder;
        this.documents = new Documents(folder);
        this.writer = new RegisterWriter(folder);
    }

    /** The register of a job folder, whether or not anything stands in it yet. */
    public static Register of(Path jobFolder) {
        return new Register(jobFolder.toAbsolutePath().normalize());
    }

    /** Whether a folder has a register. */
    public static boolean isIn(Path jobFolder) {
        return Files.isRegularFile(jobFolder.resolve(HashChain.NAME));
    }

    /**
     * Takes the next free number of a kind. It is used up even if the program dies before the document is made.
     *
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     */
    public DocumentNumber take(DocumentKind kind, String job, LocalDate on) throws IOException {
        return take(kind, job, on, Guard.NONE).number().orElseThrow();
    }

    private Entry take(DocumentKind kind, String job, LocalDate on, Guard guard) throws IOException {
        try (SharedLock lock = toWrite()) {
            HashChain chain = checked(guard);
            DocumentNumber number = chain.numbers.free(kind, job);
            return writer.write(
                    chain,
                    new RegisterWriter.Occurrence(on, Event.NUMBER_TAKEN, number),
                    List.of(),
                    Issue.of(Map.of(), Map.of()));
        }
    }

    /**
     * Writes down an event that is about no document.
     *
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     */
    public Entry append(LocalDate on, Event event, Map<String, String> facts) throws IOException {
        return append(new RegisterWriter.Occurrence(on, event, Optional.empty()), facts, Guard.NONE);
    }

    /**
     * Writes down an event that brings no document and no number of its own.
     *
     * @param number the document it is about
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     */
    public Entry append(LocalDate on, Event event, DocumentNumber number, Map<String, String> facts)
            throws IOException {
        return append(on, event, number, facts, Guard.NONE);
    }

    /**
     * The same under a condition on what is registered already.
     *
     * @param number the document it is about
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     */
    public Entry append(LocalDate on, Event event, DocumentNumber number, Map<String, String> facts, Guard guard)
            throws IOException {
        return append(new RegisterWriter.Occurrence(on, event, number), facts, guard);
    }

    private Entry append(RegisterWriter.Occurrence what, Map<String, String> facts, Guard guard) throws IOException {
        if (what.event() == Event.NUMBER_TAKEN || what.event().issues()) {
            throw new IllegalArgumentException(what.event().words() + " is written by take and issue only");
        }
        try (SharedLock lock = toWrite()) {
            return writer.write(checked(guard), what, List.of(), Issue.of(Map.of(), facts));
        }
    }

    /**
     * Writes down an event about a document that has its number from the caller, with the files it brings. Once for
     * each number and event.
     *
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     * @throws java.nio.file.FileAlreadyExistsException if a document of that name was issued before
     */
    public Entry append(LocalDate on, Event event, DocumentNumber number, Guard guard, Issue issue) throws IOException {
        if (event == Event.NUMBER_TAKEN || event.issues()) {
            throw new IllegalArgumentException(event.words() + " is written by take and issue only");
        }
        try (SharedLock lock = toWrite()) {
            List<Entry> entries = new ArrayList<>();
            HashChain chain = checked(entries::addAll);
            guard.check(entries);
            documents.sweep();
            documents.clear(issue, entries);
            return writer.write(chain, new RegisterWriter.Occurrence(on, event, number), documents.write(issue), issue);
        }
    }

    /** Issues what this kind is issued as. */
    public Entry issue(DocumentKind kind, String job, LocalDate on, Issue.Making making) throws IOException {
        return issue(kind, kind.issued(), job, on, Guard.NONE, making);
    }

    /**
     * Takes a number, has the documents made that carry it, writes them whole and registers them. While they are made
     * others may write. Dying on the way leaves a number taken and not issued, perhaps with whole files that no line
     * names.
     *
     * @param guard looked at before the number is taken, and again before the entry is written
     * @throws RegisterBroken if a line that stands there was changed; nothing is written
     * @throws java.nio.file.FileAlreadyExistsException if a document of that name was issued before
     */
    public Entry issue(DocumentKind kind, Event event, String job, LocalDate on, Guard guard, Issue.Making making)
            throws IOException {
        Entry taken = take(kind, job, on, guard);
        DocumentNumber number = taken.number().orElseThrow();
        Issue issue = making.made(number, SealMark.of(taken));
        try (SharedLock lock = toWrite()) {
            HashChain chain = checked(guard);
            documents.sweep();
            return writer.write(chain, new RegisterWriter.Occurrence(on, event, number), documents.write(issue), issue);
        }
    }

    /**
     * Reads the whole register, line by line. A line that does not hold in itself is passed over.
     *
     * @return what was found about the lines; documents are not looked at
     */
    public Examination each(Consumer<Entry> reader) throws IOException {
        try (SharedLock lock = toRead()) {
            HashChain chain = HashChain.read(folder, reader);
            List<Fault> faults = new ArrayList<>(chain.faults);
            faults.addAll(chain.openEnd);
            return new Examination(chain.lines, 0, chain.seal, faults, chain.advice);
        }
    }

    /** The mark of the last line, as it is printed on papers; empty while there is no line. */
    public Optional<SealMark> mark() throws IOException {
        List<Entry> entries = entries();
        return entries.isEmpty() ? Optional.empty() : Optional.of(SealMark.of(entries.get(entries.size() - 1)));
    }

    /** All entries that hold. */
    public List<Entry> entries() throws IOException {
        List<Entry> entries = new ArrayList<>();
        each(entries::add);
        return entries;
    }

    /** Holds every line to the one before and every document to its line. */
    public Examination check() throws IOException {
        try (SharedLock lock = toRead()) {
            Comparison comparison = new Comparison(documents);
            HashChain chain = HashChain.read(folder, comparison);
            List<Fault> faults = new ArrayList<>(chain.faults);
            faults.addAll(chain.openEnd);
            faults.addAll(comparison.faults());
            List<Fault> advice = new ArrayList<>(chain.advice);
            chain.numbers
                    .waiting()
                    .forEach((number, on) -> advice.add(new Fault(
                            Place.ofFile(folder.resolve(HashChain.NAME).toString()),
                            "the number " + number + ", taken on " + on + " and never issued",
                            "gaps: the document was given up, or the program died while it was made",
                            "nothing; the number is not used again")));
            comparison.unregistered().forEach(name -> advice.add(documents.unregistered(name)));
            return new Examination(chain.lines, comparison.documents(), chain.seal, faults, advice);
        }
    }

    private SharedLock toWrite() throws IOException {
        documents.stayInside();
        return SharedLock.toWrite(folder.resolve(LOCK));
    }

    private SharedLock toRead() throws IOException {
        documents.stayInside();
        return SharedLock.toRead(folder.resolve(LOCK));
    }

    private HashChain checked(Guard guard) throws IOException {
        List<Entry> entries = new ArrayList<>();
        HashChain chain = HashChain.read(folder, guard == Guard.NONE ? entry -> {} : entries::add);
        if (!chain.faults.isEmpty()) {
            throw new RegisterBroken(chain.faults);
        }
        guard.check(entries);
        return chain;
    }
}
