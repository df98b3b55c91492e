// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.util.ArrayList;
import java.util.List;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Codes;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.WrittenQuantity;
import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.Change;
import spadework.job.ChangeReason;
import spadework.job.ChangeState;
import spadework.job.Closed;
import spadework.job.Decision;
import spadework.job.ElectronicConsent;
import spadework.job.Option;
import spadework.job.Received;
import spadework.job.Signature;
import spadework.job.UnitCount;

/** Reads options, acceptance, change orders, payments received and the end of the work. */
public final class AgreementReader {
    static final ValueKind<Signature> SIGNATURE = ValueKind.object(AgreementReader::signature);

    private static final int MOST_CHANGES = 999;

    private final AlterationReader alterations;
    private final AsBuiltReader built;

    AgreementReader(Codes codes) {
        this.alterations = new AlterationReader(codes);
        this.built = new AsBuiltReader(codes);
    }

    /** Reads the keys of the job that have to do with the agreement. */
    Agreement read(ObjectFields fields) {
        return new Agreement(
                fields.find("signing", ValueKind.object(SigningReader::signing)),
                fields.list("options", ValueKind.object(this::option)),
                fields.find("accepted", ValueKind.object(AgreementReader::accepted)),
                fields.list("changes", ValueKind.object(this::change)),
                fields.list("received", ValueKind.object(AgreementReader::received)),
                fields.find("asBuilt", built.kind()),
                fields.find("closed", ValueKind.object(AgreementReader::closed)));
    }

    private Option option(ObjectFields fields) {
        return new Option(
                fields.get("label", Texts.LABEL),
                fields.get("title", Texts.LABEL),
                fields.get("why", Texts.TEXT),
                alterations.read(fields));
    }

    private static Accepted accepted(ObjectFields fields) {
        return new Accepted(
                fields.get("revision", Counts.between(1, 999)),
                fields.get("on", CalendarDates.DATE),
                fields.filled("by", Texts.LABEL),
                fields.list("options", Texts.LABEL),
                fields.list("declined", Texts.LABEL),
                signatures(fields),
                fields.get("price", DollarAmounts.ABOVE_ZERO),
                fields.get("bookDate", CalendarDates.DATE),
                fields.get("templates", Texts.LABEL));
    }

    /** The first signature stands alone, as files from before had it; those of the others follow in a list. */
    private static List<Signature> signatures(ObjectFields fields) {
        List<Signature> all = new ArrayList<>();
        all.add(fields.get("signature", SIGNATURE));
        all.addAll(fields.list("furtherSignatures", SIGNATURE));
        return all;
    }

    private static Signature signature(ObjectFields fields) {
        Signature signature = new Signature(
                fields.list("by", Texts.LABEL),
                fields.find("file", Texts.FILE),
                fields.find("typed", Texts.LABEL),
                fields.find("consent", Texts.TEXT),
                fields.find("electronic", ValueKind.object(AgreementReader::electronic)));
        SourceNode node = fields.node();
        if (node.isSilent()) {
            return signature;
        }
        if (signature.file().isEmpty() == signature.typed().isEmpty()) {
            String found = signature.file().isEmpty() ? "no \"file\" and no \"typed\"" : "a file and a typed name";
            node.fault(found, "\"file\", or \"typed\" with \"electronic\"", "say how it was signed, in one way");
        } else if (signature.typed().isPresent()
                && signature.consent().isEmpty()
                && signature.electronic().isEmpty()
                && node.at("electronic").json() == null) {
            node.fault(
                    "a typed name without \"electronic\"",
                    "\"typed\" with \"electronic\"",
                    "add \"electronic\": when the signer agreed to sign without paper and what was shown before"
                            + " (15 USC 7001(c))");
        }
        return signature;
    }

    private static ElectronicConsent electronic(ObjectFields fields) {
        ElectronicConsent consent = new ElectronicConsent(
                fields.get("given", CalendarDates.DATE),
                fields.get("disclosed", CalendarDates.DATE),
                fields.get("paper", Texts.TEXT),
                fields.get("withdrawal", Texts.TEXT),
                fields.get("equipment", Texts.TEXT),
                fields.get("access", Texts.TEXT));
        SourceNode shown = fields.node().at("disclosed");
        if (!fields.node().isSilent()
                && !shown.isSilent()
                && !fields.node().at("given").isSilent()
                && consent.disclosed().isAfter(consent.given())) {
            shown.fault(
                    consent.disclosed().toString(),
                    "a day not after \"given\", " + consent.given(),
                    "the statement is shown before the signer agrees: change one of the two dates");
        }
        return consent;
    }

    private Change change(ObjectFields fields) {
        Change change = new Change(
                fields.get("number", Counts.between(1, MOST_CHANGES)),
                fields.get("title", Texts.LABEL),
                fields.get("issued", CalendarDates.DATE),
                fields.get("reason", Choices.of(ChangeReason.class)),
                fields.get("why", Texts.TEXT),
                fields.get("evidence", Texts.TEXT),
                fields.list("photos", JobReader.PHOTO),
                alterations.read(fields),
                fields.list("unitPrices", ValueKind.object(AgreementReader::unitCount)),
                fields.get("days", Counts.between(-365, 365), 0),
                fields.get("state", Choices.of(ChangeState.class), ChangeState.PENDING),
                fields.find("decision", ValueKind.object(AgreementReader::decision)));
        SourceNode node = fields.node();
        boolean accepted = change.state() == ChangeState.ACCEPTED;
        if (!node.isSilent() && accepted && change.decision().isEmpty()) {
            node.fault(
                    "a change order that is accepted without \"decision\"",
                    "\"decision\" with who signed, when and what price",
                    "record it with the command \"change\", or write pending");
        }
        if (!node.isSilent()
                && change.state() == ChangeState.PENDING
                && change.decision().isPresent()) {
            SourceNode state = node.at("state");
            String found = state.json() == null ? "a decision without \"state\"" : "pending, with a decision";
            state.fault(found, "accepted or declined", "write which it was");
        }
        return change;
    }

    private static UnitCount unitCount(ObjectFields fields) {
        WrittenQuantity quantity = fields.get("quantity", WrittenQuantity.SIGNED);
        return new UnitCount(
                fields.get("price", Texts.LABEL), quantity.number(), quantity.unit(), fields.find("wall", Texts.LABEL));
    }

    private static Decision decision(ObjectFields fields) {
        return new Decision(
                fields.get("on", CalendarDates.DATE),
                fields.filled("by", Texts.LABEL),
                signatures(fields),
                fields.get("price", DollarAmounts.SIGNED));
    }

    private static Received received(ObjectFields fields) {
        return new Received(
                fields.get("on", CalendarDates.DATE),
                fields.get("amount", DollarAmounts.ABOVE_ZERO),
                fields.get("how", Texts.LABEL));
    }

    private static Closed closed(ObjectFields fields) {
        return new Closed(
                fields.get("completed", CalendarDates.DATE),
                fields.find("certificate", Texts.LABEL),
                fields.find("balanceWaived", Texts.TEXT));
    }
}
