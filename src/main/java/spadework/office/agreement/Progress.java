// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.closeout.Account;
import spadework.closeout.BalanceWaiver;
import spadework.closeout.CloseChecks;
import spadework.contract.Contract;
import spadework.contract.PricedChange;
import spadework.contract.QuantityChange;
import spadework.intake.Intake;
import spadework.job.Agreement;
import spadework.job.ChangeState;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.office.Bid;
import spadework.office.Office;
import spadework.office.records.JobRecords;
import spadework.register.DocumentKind;
import spadework.register.DocumentNumber;
import spadework.register.Entry;

/**
 * Where a job stands on its way from the proposal to the warranty, by its register and its file.
 *
 * @param proposal the one that was issued last
 * @param lost whether the homeowner declined it
 * @param canceled what follows where the buyer canceled the contract
 * @param contract what both sides signed
 * @param accepted whether the job file knows of the contract
 * @param options what the homeowner may take or leave
 * @param changes change orders, by number
 * @param certificate of the warranty, once the job is closed
 * @param closed whether the job file knows of the certificate
 * @param recorded whether it is recorded what was built
 * @param open what keeps the job from being closed, in words
 */
public record Progress(
        Optional<Mark> proposal,
        boolean lost,
        Optional<Notice> canceled,
        Optional<Mark> contract,
        boolean accepted,
        List<Offer> options,
        List<Order> changes,
        Optional<Mark> certificate,
        boolean closed,
        boolean recorded,
        Sums sums,
        List<String> open) {

    /**
     * What the homeowner pays.
     *
     * @param total in all, as things stand
     * @param paid what came in
     * @param balance what is still due; below zero where too much was paid
     */
    public record Sums(Dollars total, Dollars paid, Dollars balance) {}

    /** The steps of an agreement, in their order. */
    public enum Step {
        ISSUE,
        ACCEPT,
        CANCEL,
        CHANGE,
        CLOSE
    }

    /** Why a step is not due. */
    public enum Wait {
        NOT_ISSUED,
        SIGNED,
        NOT_SIGNED,
        NO_CHANGE_PENDING,
        NOT_RECORDED,
        CLOSED,
        CANCELED
    }

    /**
     * A line of the register.
     *
     * @param total the price that it fixes; nothing where it fixes none
     * @param by who signed
     * @param until how long the price stands
     * @param signatures each that is on it, in the order in which they came in
     */
    public record Mark(
            String number,
            LocalDate on,
            Optional<Dollars> total,
            Optional<String> by,
            Optional<String> until,
            SignatureList signatures) {

        private static Mark of(Entry entry, SignatureList signatures) {
            return new Mark(
                    entry.number().map(DocumentNumber::text).orElse(""),
                    entry.on(),
                    entry.fact("total").map(Dollars::of),
                    entry.fact("by"),
                    entry.fact("validUntil"),
                    signatures);
        }
    }

    /**
     * A notice of cancellation with what follows from it.
     *
     * @param number of the acknowledgment
     * @param on the day the notice came
     * @param refund what goes back
     * @param by the last day for it
     */
    public record Notice(String number, LocalDate on, Dollars refund, String by) {

        private static Notice of(Entry entry) {
            return new Notice(
                    entry.number().map(DocumentNumber::text).orElse(""),
                    entry.on(),
                    entry.fact("refund").map(Dollars::of).orElse(Dollars.ZERO),
                    entry.fact("refundBy").orElse("?"));
        }
    }

    /** An option with what it adds to the price. */
    public record Offer(String label, String title, Dollars price, boolean taken) {}

    /**
     * A change order.
     *
     * @param open whether nobody has decided yet, or the job file does not know of the decision
     * @param price what it adds, with any sales tax; below zero for a credit
     * @param quantities what it changes, each in words
     */
    public record Order(
            int number,
            String title,
            boolean open,
            boolean accepted,
            Dollars before,
            Dollars price,
            Dollars after,
            int days,
            List<String> quantities,
            SignatureList signatures) {

        private static Order of(PricedChange change, SignatureList signatures) {
            ChangeState state = change.change().state();
            return new Order(
                    change.change().number(),
                    change.change().title(),
                    state == ChangeState.PENDING,
                    state == ChangeState.ACCEPTED,
                    change.before(),
                    change.agreed().total(),
                    change.after(),
                    change.change().days(),
                    change.quantities().stream().map(Order::described).toList(),
                    signatures);
        }

        private static String described(QuantityChange quantity) {
            String sign = quantity.difference().signum() < 0 ? "" : "+";
            return quantity.description() + ": " + sign + quantity.difference().toPlainString() + " "
                    + quantity.unit().symbol();
        }
    }

    public Progress {
        options = List.copyOf(options);
        changes = List.copyOf(changes);
        open = List.copyOf(open);
    }

    /**
     * Reads where a job stands.
     *
     * @param file the job's file, beside which its register lies
     * @throws IOException if the register cannot be read
     */
    public static Progress of(Office office, Bid bid, Path file) throws IOException {
        JobRecords records = JobRecords.beside(Intake.fileOf(file));
        Contract contract = bid.dossier().contract();
        Job job = bid.dossier().job();
        Agreement agreement = job.agreement();
        Optional<Entry> signed = records.contract();
        SignatureList onProposal = records.proposal()
                .filter(issued -> signed.isEmpty())
                .flatMap(Entry::number)
                .map(paper -> SignatureList.gathered(records, paper, job))
                .orElse(SignatureList.NONE);
        Account account = Account.of(contract, agreement.received());
        return new Progress(
                records.proposal().map(entry -> Mark.of(entry, onProposal)),
                records.isLost(),
                records.canceled().map(Notice::of),
                signed.map(entry -> Mark.of(
                        entry, agreement.accepted().map(SignatureList::of).orElse(SignatureList.NONE))),
                agreement.accepted().isPresent(),
                contract.options().stream()
                        .map(one -> new Offer(
                                one.option().label(),
                                one.option().title(),
                                one.sum().total(),
                                one.taken() || onProposal.hasTaken(one.option().label())))
                        .toList(),
                contract.changes().stream()
                        .map(change -> Order.of(change, signatures(records, change, job)))
                        .toList(),
                records.certificate().map(entry -> Mark.of(entry, SignatureList.NONE)),
                job.closed().isPresent(),
                agreement.finishedWork().isPresent(),
                new Sums(account.total(), account.paid(), account.balance()),
                Closing.checks(bid, BalanceWaiver.NONE).stream()
                        .filter(CloseChecks::isOpen)
                        .map(office::described)
                        .toList());
    }

    private static SignatureList signatures(JobRecords records, PricedChange change, Job job) {
        return change.change()
                .decision()
                .map(SignatureList::of)
                .orElseGet(() -> SignatureList.gathered(
                        records,
                        new DocumentNumber(
                                job.number(),
                                DocumentKind.CHANGE_ORDER,
                                change.change().number()),
                        job));
    }

    /** Whether some of several have signed the proposal, and what they took can be taken otherwise by nobody. */
    public boolean isBeingSigned() {
        return proposal.filter(issued -> !issued.signatures().all().isEmpty()).isPresent();
    }

    /**
     * Why a step is not due; nothing for one that is. A step that is registered while the job file does not know of it
     * is due once more: it then writes what the register says.
     */
    public Optional<Wait> waits(Step step) {
        boolean signed = contract.isPresent();
        boolean done = certificate.isPresent() && closed;
        if (canceled.isPresent()) {
            return Optional.of(Wait.CANCELED);
        }
        return Optional.ofNullable(
                switch (step) {
                    case ISSUE -> signed ? Wait.SIGNED : null;
                    case ACCEPT -> signed && accepted ? Wait.SIGNED : proposal.isEmpty() ? Wait.NOT_ISSUED : null;
                    case CANCEL -> !signed ? Wait.NOT_SIGNED : done ? Wait.CLOSED : null;
                    case CHANGE ->
                        !signed
                                ? Wait.NOT_SIGNED
                                : done
                                        ? Wait.CLOSED
                                        : changes.stream().noneMatch(Order::open) ? Wait.NO_CHANGE_PENDING : null;
                    case CLOSE -> !signed ? Wait.NOT_SIGNED : done ? Wait.CLOSED : !recorded ? Wait.NOT_RECORDED : null;
                });
    }
}
