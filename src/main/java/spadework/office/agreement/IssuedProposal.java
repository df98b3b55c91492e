// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spadework.intake.ReadJob;
import spadework.job.AfterAcceptance;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.BidResult;
import spadework.office.Office;
import spadework.office.records.JobRecords;
import spadework.office.records.JobSource;
import spadework.register.Entry;

/** The proposal that was issued last, read and priced from the source that was kept with it. */
public final class IssuedProposal implements AutoCloseable {
    private final Entry entry;
    private final JobSource source;
    private final SourceCheckout kept;

    private IssuedProposal(Entry entry, JobSource source, SourceCheckout kept) {
        this.entry = entry;
        this.source = source;
        this.kept = kept;
    }

    /**
     * Lays the kept source out; close it to take that away again.
     *
     * @return empty where nothing was issued, or its source is gone
     */
    static Optional<IssuedProposal> last(JobRecords records) throws IOException {
        Optional<Entry> issued = records.proposal();
        Optional<JobSource> source = issued.isPresent() ? records.source(issued.get()) : Optional.empty();
        return source.isPresent()
                ? Optional.of(new IssuedProposal(issued.get(), source.get(), SourceCheckout.of(source.get())))
                : Optional.empty();
    }

    Entry entry() {
        return entry;
    }

    String number() {
        return entry.number().orElseThrow().text();
    }

    /** The last day on which its price stands, as it says itself. */
    LocalDate validUntil(Job job) {
        return entry.fact("validUntil")
                .map(LocalDate::parse)
                .orElse(job.issued().plusDays(job.validDays()));
    }

    /** The total that its line in the register has. */
    Optional<Dollars> total() {
        return entry.fact("total").map(Dollars::of);
    }

    /** The words of that day and the books of that day. */
    Office office() throws IOException {
        return kept.office();
    }

    /** The job file as it was when the proposal was issued. */
    JobText text() {
        return JobText.of(source.text(JobSource.JOB));
    }

    /** What of the job reads otherwise now, in words; empty where nothing that was proposed does. */
    Optional<String> moved(JobText now, Job nowJob) throws IOException {
        Optional<Job> then = kept.intake().read(kept.job()) instanceof ReadJob understood
                ? Optional.of(understood.job())
                : Optional.empty();
        return then.filter(job -> AfterAcceptance.isMoved(job, nowJob))
                .map(job -> JobDifference.described(text().draft(), now.draft()));
    }

    /** The job as issued with what both sides wrote since: how it is signed, and who answers for a stop. */
    JobText withSigning(JobText now) {
        return text().with(now, List.of("/signing", "/acceptedStops"));
    }

    /** The bid of a text in the light of what was kept. */
    BidResult bid(JobText text) throws IOException {
        return office().bidWhileSigning(text.text(), kept.job());
    }

    /** The source of the contract: what was kept, with the job as it is signed. */
    byte[] archive(JobText signed) {
        Map<String, byte[]> files = new TreeMap<>(source.files());
        files.put(JobSource.JOB, signed.bytes());
        return new JobSource(files).archive();
    }

    /** What the proposal says that it comes to, beside what the kept source comes to today; empty where they agree. */
    Optional<String> otherwise(Bid bid) {
        Dollars figured = bid.proposed().contract().proposed().total();
        return total().filter(promised -> !promised.equals(figured))
                .map(promised ->
                        number() + " says " + promised.text() + ", and its kept source comes to " + figured.text()
                                + " with this version of the program. Its price stands, but a contract cannot "
                                + "be printed for"
                                + " it: sign it with the version that issued it, or issue it again.");
    }

    @Override
    public void close() {
        kept.close();
    }
}
