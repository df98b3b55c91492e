package spadework.intake;

import java.util.List;
import spadework.job.Payment;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.measure.Percent;

/** Payments and warranty, which a company has as its usual terms and a job may have of its own. */
final class Terms {
    static final Kind<Integer> VALID_DAYS = Counts.between(1, 365);

    static final Kind<WarrantyTerms> WARRANTY = Kind.object(fields -> new WarrantyTerms(
            fields.filled("parts", Kind.object(Terms::part)),
            fields.get("replyDays", Counts.between(1, 365)),
            fields.get("transfers", Counts.between(0, 99)),
            fields.get("transferNoticeDays", Counts.between(0, 365)),
            fields.list("notCovered", Texts.TEXT),
            fields.list("duties", Texts.TEXT)));

    private static final Kind<Payment> PAYMENT = Kind.object(fields -> new Payment(
            fields.get("when", Texts.TEXT),
            fields.get("share", Shares.aboveZeroTo(100)),
            fields.get("atSigning", Texts.YES_OR_NO, false)));

    /** Payments whose shares make up the whole price. */
    static final Kind<List<Payment>> PAYMENTS =
            new Kind<>("[{\"when\": \"…\", \"share\": \"100 %\"}]", Terms::payments);

    private Terms() {}

    private static List<Payment> payments(Node node) {
        List<Payment> payments = node.elements().stream().map(PAYMENT::read).toList();
        Percent sum = payments.stream().map(Payment::share).reduce(Percent.ZERO, Percent::plus);
        if (!node.isSilent() && node.sheet().isSound(node.pointer()) && !sum.equals(Percent.HUNDRED)) {
            node.fault("shares that sum to " + sum.text(), "shares that sum to 100 %", "change one of the shares");
        }
        return payments;
    }

    private static WarrantyPart part(Fields fields) {
        return new WarrantyPart(
                fields.get("part", Texts.LABEL),
                fields.get("promise", Texts.TEXT),
                fields.get("years", Counts.between(1, 99)));
    }
}
