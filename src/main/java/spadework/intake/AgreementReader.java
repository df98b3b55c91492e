package spadework.intake;

import spadework.job.Accepted;
import spadework.job.Agreement;
import spadework.job.Change;
import spadework.job.ChangeReason;
import spadework.job.ChangeState;
import spadework.job.Closed;
import spadework.job.Decision;
import spadework.job.Option;
import spadework.job.Received;
import spadework.job.Signature;
import spadework.job.UnitCount;

/** Reads options, acceptance, change orders, payments received and the end of the work. */
final class AgreementReader {
    static final Kind<Signature> SIGNATURE = Kind.object(AgreementReader::signature);

    private static final int MOST_CHANGES = 999;

    private final AlterationReader alterations;
    private final AsBuiltReader built;

    AgreementReader(Codes codes) {
        this.alterations = new AlterationReader(codes);
        this.built = new AsBuiltReader(codes);
    }

    /** Reads the keys of the job that have to do with the agreement. */
    Agreement read(Fields fields) {
        return new Agreement(
                fields.find("signing", Kind.object(SigningReader::signing)),
                fields.list("options", Kind.object(this::option)),
                fields.find("accepted", Kind.object(AgreementReader::accepted)),
                fields.list("changes", Kind.object(this::change)),
                fields.list("received", Kind.object(AgreementReader::received)),
                fields.find("asBuilt", built.kind()),
                fields.find("closed", Kind.object(AgreementReader::closed)));
    }

    private Option option(Fields fields) {
        return new Option(
                fields.get("label", Texts.LABEL),
                fields.get("title", Texts.LABEL),
                fields.get("why", Texts.TEXT),
                alterations.read(fields));
    }

    private static Accepted accepted(Fields fields) {
        return new Accepted(
                fields.get("revision", Counts.between(1, 999)),
                fields.get("on", Dates.DATE),
                fields.filled("by", Texts.LABEL),
                fields.list("options", Texts.LABEL),
                fields.list("declined", Texts.LABEL),
                fields.get("signature", SIGNATURE),
                fields.get("price", Amounts.ABOVE_ZERO),
                fields.get("bookDate", Dates.DATE),
                fields.get("templates", Texts.LABEL));
    }

    private static Signature signature(Fields fields) {
        Signature signature = new Signature(
                fields.find("file", Texts.FILE), fields.find("typed", Texts.LABEL), fields.find("consent", Texts.TEXT));
        Node node = fields.node();
        if (node.isSilent()) {
            return signature;
        }
        if (signature.file().isEmpty() == signature.typed().isEmpty()) {
            String found = signature.file().isEmpty() ? "no \"file\" and no \"typed\"" : "a file and a typed name";
            node.fault(found, "\"file\", or \"typed\" with \"consent\"", "say how it was signed, in one way");
        } else if (signature.typed().isPresent() && signature.consent().isEmpty()) {
            node.fault(
                    "a typed name without \"consent\"",
                    "\"typed\" with \"consent\"",
                    "add \"consent\": how the signer agreed to sign without paper");
        }
        return signature;
    }

    private Change change(Fields fields) {
        Change change = new Change(
                fields.get("number", Counts.between(1, MOST_CHANGES)),
                fields.get("title", Texts.LABEL),
                fields.get("issued", Dates.DATE),
                fields.get("reason", Choices.of(ChangeReason.class)),
                fields.get("why", Texts.TEXT),
                fields.get("evidence", Texts.TEXT),
                fields.list("photos", JobReader.PHOTO),
                alterations.read(fields),
                fields.list("unitPrices", Kind.object(AgreementReader::unitCount)),
                fields.get("days", Counts.between(-365, 365), 0),
                fields.get("state", Choices.of(ChangeState.class), ChangeState.PENDING),
                fields.find("decision", Kind.object(AgreementReader::decision)));
        Node node = fields.node();
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
            Node state = node.at("state");
            String found = state.json() == null ? "a decision without \"state\"" : "pending, with a decision";
            state.fault(found, "accepted or declined", "write which it was");
        }
        return change;
    }

    private static UnitCount unitCount(Fields fields) {
        Quantity quantity = fields.get("quantity", Quantity.SIGNED);
        return new UnitCount(fields.get("price", Texts.LABEL), quantity.number(), quantity.unit());
    }

    private static Decision decision(Fields fields) {
        return new Decision(
                fields.get("on", Dates.DATE),
                fields.filled("by", Texts.LABEL),
                fields.get("signature", SIGNATURE),
                fields.get("price", Amounts.SIGNED));
    }

    private static Received received(Fields fields) {
        return new Received(
                fields.get("on", Dates.DATE), fields.get("amount", Amounts.ABOVE_ZERO), fields.get("how", Texts.LABEL));
    }

    private static Closed closed(Fields fields) {
        return new Closed(
                fields.get("completed", Dates.DATE),
                fields.find("certificate", Texts.LABEL),
                fields.find("balanceWaived", Texts.TEXT));
    }
}
