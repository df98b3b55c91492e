// SPDX-License-Identifier: Apache-2.0
package spadework.intake.company;

import java.util.List;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Counts;
import spadework.intake.value.Shares;
import spadework.job.Payment;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.measure.Percent;

/** Payments and warranty, which a company has as its usual terms and a job may have of its own. */
public final class TermsReader {
    public static final ValueKind<Integer> VALID_DAYS = Counts.between(1, 365);

    private static final ValueKind<Integer> DAYS = Counts.between(1, 365);

    public static final ValueKind<WarrantyTerms> WARRANTY = ValueKind.object(fields -> new WarrantyTerms(
            fields.filled("parts", ValueKind.object(TermsReader::part)),
            fields.get("replyDays", DAYS),
            fields.get("visitDays", DAYS, WarrantyTerms.USUAL_VISIT_DAYS),
            fields.get("findingDays", DAYS, WarrantyTerms.USUAL_FINDING_DAYS),
            fields.get("beginDays", DAYS, WarrantyTerms.USUAL_BEGIN_DAYS),
            fields.get("transfers", Counts.between(0, 99)),
            fields.get("transferNoticeDays", Counts.between(0, 365)),
            fields.list("notCovered", Texts.TEXT),
            fields.list("duties", Texts.TEXT)));

    private static final ValueKind<Payment> PAYMENT = ValueKind.object(fields -> new Payment(
            fields.get("when", Texts.TEXT),
            fields.get("share", Shares.aboveZeroTo(100)),
            fields.get("atSigning", Texts.YES_OR_NO, false),
            fields.find("workDone", Shares.aboveZeroTo(100))));

    /** Payments whose shares make up the whole price. */
    public static final ValueKind<List<Payment>> PAYMENTS =
            new ValueKind<>("[{\"when\": \"…\", \"share\": \"100%\"}]", TermsReader::payments);

    private TermsReader() {}

    private static List<Payment> payments(SourceNode node) {
        List<Payment> payments = node.elements().stream().map(PAYMENT::read).toList();
        Percent sum = payments.stream().map(Payment::share).reduce(Percent.ZERO, Percent::plus);
        if (!node.isSilent() && node.sheet().isSound(node.pointer()) && !sum.equals(Percent.HUNDRED)) {
            node.fault("shares that sum to " + sum.text(), "shares that sum to 100%", "change one of the shares");
        }
        return payments;
    }

    private static WarrantyPart part(ObjectFields fields) {
        return new WarrantyPart(
                fields.get("part", Texts.LABEL),
                fields.get("promise", Texts.TEXT),
                fields.get("years", Counts.between(1, 99)));
    }
}
