// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.Accepted;
import spadework.job.Received;
import spadework.job.Signing;
import spadework.law.Cancellation;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.PaperHeads;

/** Puts the acknowledgment of a cancellation together. */
public final class CancellationPaper {
    private CancellationPaper() {}

    /**
     * A notice of cancellation as it came in.
     *
     * @param by who gave it
     * @param sent when it was mailed or handed over: what counts for the last day (16 CFR 429.1(b))
     * @param received when it came: from that day the refund is counted (16 CFR 429.1(g))
     * @param released why the buyer is let go although the right had ended
     */
    public record Notice(List<String> by, LocalDate sent, LocalDate received, Optional<String> released) {

        public Notice {
            by = List.copyOf(by);
        }
    }

    /** The last day on which the signed contract may be canceled; empty where it is not signed. */
    public static Optional<LocalDate> lastDay(Dossier dossier) {
        return dossier.job()
                .agreement()
                .signing()
                .map(Signing::sale)
                .flatMap(sale -> SigningChecks.lastDay(sale, dossier.law()))
                .or(() -> dossier.job()
                        .agreement()
                        .accepted()
                        .map(yes -> Cancellation.of(Cancellation.Signed.on(yes.on()), dossier.law())
                                .lastDay()));
    }

    /** What came in, all of which goes back. */
    public static Dollars refund(Dossier dossier) {
        return Dollars.total(dossier.job().agreement().received().stream()
                .map(Received::amount)
                .toList());
    }

    /**
     * The acknowledgment.
     *
     * @param contract number of the contract
     * @throws java.util.NoSuchElementException if the contract is not signed
     */
    public static CancellationAcknowledgment of(Dossier dossier, String contract, Notice notice) {
        Accepted yes = dossier.job().agreement().accepted().orElseThrow();
        return new CancellationAcknowledgment(
                PaperHeads.of(dossier, notice.received()),
                contract,
                dossier.terms().day(yes.on()),
                notice.by(),
                dossier.terms().day(notice.sent()),
                dossier.terms().day(notice.received()),
                dossier.terms().day(lastDay(dossier).orElseThrow()),
                dossier.terms().day(Cancellation.refundBy(notice.received())),
                dossier.job().agreement().received().stream()
                        .map(one -> new CancellationAcknowledgment.PaidRow(
                                one.how(), dossier.terms().day(one.on()), one.amount()))
                        .toList(),
                refund(dossier),
                notice.released().orElse(""));
    }
}
