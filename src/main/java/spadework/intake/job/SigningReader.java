// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.util.List;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.job.Financing;
import spadework.job.Sale;
import spadework.job.Salesperson;
import spadework.job.Signer;
import spadework.job.Signing;
import spadework.job.SigningPlace;
import spadework.job.SigningRight;
import spadework.job.Subcontractor;

/** Reads what a contract says beyond the work. */
public final class SigningReader {
    private static final String ENGLISH = "English";

    private SigningReader() {}

    static Signing signing(ObjectFields fields) {
        return new Signing(
                sale(fields),
                financing(fields),
                fields.find("subcontractors", new ValueKind<>("[]", SigningReader::subcontractors)),
                fields.find("dateIsEssential", Texts.YES_OR_NO),
                fields.find("permits", Texts.TEXT),
                fields.list("materials", Texts.TEXT),
                fields.list("signers", ValueKind.object(SigningReader::signer)));
    }

    private static Sale sale(ObjectFields fields) {
        return new Sale(
                fields.find("on", CalendarDates.DATE),
                fields.get("place", Choices.of(SigningPlace.class), SigningPlace.HOME),
                fields.find("salesperson", ValueKind.object(SigningReader::salesperson)),
                fields.find("oldestAge", Counts.between(18, 120)),
                fields.get("language", Texts.LABEL, ENGLISH),
                fields.get("emergency", Texts.YES_OR_NO, false),
                fields.find("statement", Texts.FILE),
                fields.find("afterDisaster", Texts.YES_OR_NO),
                fields.find("received", CalendarDates.DATE));
    }

    private static Signer signer(ObjectFields fields) {
        return new Signer(
                fields.get("name", Texts.LABEL),
                fields.get("right", Choices.of(SigningRight.class)),
                fields.get("owner", Texts.LABEL),
                fields.find("document", Texts.FILE));
    }

    private static Financing financing(ObjectFields fields) {
        return new Financing(
                fields.find("specialOrder", DollarAmounts.FROM_ZERO),
                fields.find("depositHeld", Texts.TEXT),
                fields.get("lienOnHome", Texts.YES_OR_NO, false),
                fields.get("financed", Texts.YES_OR_NO, false));
    }

    private static Salesperson salesperson(ObjectFields fields) {
        return new Salesperson(
                fields.get("name", Texts.LABEL),
                fields.find("license", Texts.LABEL),
                fields.find("address", Texts.LABEL));
    }

    private static List<Subcontractor> subcontractors(SourceNode node) {
        ValueKind<Subcontractor> one = ValueKind.object(fields -> new Subcontractor(
                fields.get("name", Texts.LABEL),
                fields.get("address", Texts.LABEL),
                fields.get("phone", Texts.LABEL),
                fields.find("license", Texts.LABEL),
                fields.get("trade", Texts.LABEL)));
        return node.elements().stream().map(one::read).toList();
    }
}
