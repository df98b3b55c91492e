// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.billing.Receipt;
import spadework.contract.SealedFigures;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Accepted;
import spadework.job.Change;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.money.Dollars;
import spadework.register.Entry;

/**
 * What the records of a job say of it: the prices and receipts that are sealed there, and what the job file has
 * otherwise.
 *
 * @param receipts for payments that came in
 * @param findings found while the job was read beside its records
 */
public record AgreedRecord(SealedFigures sealed, List<Receipt> receipts, List<Finding> findings) {
    private static final String SOURCE = "what both sides signed";

    /** What the register has is nobody's to answer for otherwise. */
    private static final Set<String> UNANSWERABLE = Set.of(
            "contract-source-altered",
            "contract-canceled",
            "sealed-price",
            "sealed-change",
            "change-unregistered",
            BilledRecord.NOT_IN_JOB);

    public AgreedRecord {
        receipts = List.copyOf(receipts);
        findings = List.copyOf(findings);
    }

    /**
     * The record of a job.
     *
     * @throws IOException if the kept source cannot be read
     */
    public static AgreedRecord of(JobRecords records, List<Finding> findings) throws IOException {
        List<Finding> all = new ArrayList<>(findings);
        Optional<Entry> contract = records.contract();
        if (contract.isPresent() && !records.isSourceAsRegistered(contract.get())) {
            all.add(new Finding(
                    "contract-source-altered",
                    Severity.STOP,
                    "",
                    Map.of("contract", contract.get().number().orElseThrow().text()),
                    SOURCE));
        }
        records.canceled()
                .ifPresent(entry -> all.add(new Finding(
                        "contract-canceled",
                        Severity.STOP,
                        "",
                        Map.of(
                                "on", entry.on().toString(),
                                "refund",
                                        entry.fact("refund")
                                                .map(Dollars::of)
                                                .orElse(Dollars.ZERO)
                                                .text(),
                                "by", entry.fact("refundBy").orElse("")),
                        "16 CFR 429.1(g)")));
        return new AgreedRecord(records.sealed(), BilledRecord.receipts(records), all);
    }

    /** Whether a stop says that the job file has it otherwise than the register, so that it can only be put right. */
    public static boolean isOfTheRegister(Finding finding) {
        return UNANSWERABLE.contains(finding.id());
    }

    /** A stop for each signed price and each receipt that the job file has otherwise than its sealed line. */
    public List<Finding> differences(Job job) {
        List<Finding> found = new ArrayList<>();
        Optional<Dollars> written = job.agreement().accepted().map(Accepted::price);
        if (sealed.total().isPresent() && written.isPresent()) {
            differ("sealed-price", "", written.get(), sealed.total().get(), found);
        }
        for (Change change : job.agreement().acceptedChanges()) {
            Optional<Dollars> signed = change.decision().map(Decision::price);
            sealed.change(change.number())
                    .ifPresent(sum -> signed.ifPresent(price ->
                            differ("sealed-change", Integer.toString(change.number()), price, sum.total(), found)));
            if (sealed.total().isPresent() && sealed.change(change.number()).isEmpty()) {
                found.add(new Finding(
                        "change-unregistered", Severity.STOP, Integer.toString(change.number()), Map.of(), SOURCE));
            }
        }
        found.addAll(BilledRecord.differences(receipts, job.agreement().received()));
        return found;
    }

    private static void differ(String id, String about, Dollars file, Dollars register, List<Finding> found) {
        if (!file.equals(register)) {
            found.add(new Finding(
                    id, Severity.STOP, about, Map.of("file", file.text(), "register", register.text()), SOURCE));
        }
    }
}
