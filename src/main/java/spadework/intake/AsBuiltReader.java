package spadework.intake;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.job.Actual;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.BuiltWall;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.measure.Weight;
import spadework.pricebook.LineItem;

/** Reads what was built. */
final class AsBuiltReader {
    private static final Kind<Length> DEPTH = Measures.lengthUpTo(20);
    private static final Kind<Quantity> GALLONS = Quantity.in(Unit.GALLON, "0", "5000");
    private static final Kind<Quantity> HOURS = Quantity.in(Unit.HOUR, "0", "10000");
    private static final Kind<Quantity> TONS = Quantity.in(Unit.TON, "0", "10000");

    private final Codes codes;

    AsBuiltReader(Codes codes) {
        this.codes = codes;
    }

    Kind<AsBuilt> kind() {
        return Kind.object(fields -> new AsBuilt(
                fields.get("started", Dates.DATE),
                fields.get("finished", Dates.DATE),
                fields.list("walls", Kind.object(AsBuiltReader::wall)),
                fields.list("pipes", Kind.object(AsBuiltReader::pipe)),
                fields.find("stone", TONS).map(Quantity::number).map(tons -> new Weight(tons.doubleValue())),
                fields.find("loads", Counts.between(0, 10_000)),
                fields.find("soilFound", Choices.of(SoilType.class)),
                fields.list("flowTests", Kind.object(AsBuiltReader::flowTest)),
                fields.list("actuals", Kind.object(this::actual)),
                fields.get("note", Texts.TEXT, "")));
    }

    private static BuiltWall wall(Fields fields) {
        return new BuiltWall(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(1000)),
                fields.get("depthStart", DEPTH),
                fields.get("depthEnd", DEPTH),
                fields.find("gallons", GALLONS).map(Quantity::number),
                fields.list("batches", Texts.LABEL),
                fields.find("temperature", Texts.LABEL),
                fields.list("holdPoints", Kind.object(AsBuiltReader::holdPoint)));
    }

    private static HoldPoint holdPoint(Fields fields) {
        return new HoldPoint(
                fields.get("point", Texts.LABEL),
                fields.get("on", Dates.DATE),
                fields.get("by", Texts.LABEL),
                fields.find("photo", Texts.FILE));
    }

    private static BuiltPipe pipe(Fields fields) {
        return new BuiltPipe(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(5000)),
                fields.find("startInvert", Measures.LEVEL),
                fields.find("endInvert", Measures.LEVEL));
    }

    private static FlowTest flowTest(Fields fields) {
        return new FlowTest(
                fields.get("on", Dates.DATE),
                fields.get("passed", Texts.YES_OR_NO),
                fields.get("what", Texts.TEXT),
                fields.get("by", Texts.LABEL));
    }

    private Actual actual(Fields fields) {
        String code = fields.get("code", codes.kind());
        Quantity quantity = fields.get("quantity", Quantity.ANY);
        Node written = fields.node().at("quantity");
        Optional<Unit> due = codes.find(code).map(LineItem::unit);
        if (!written.isSilent() && due.filter(unit -> unit != quantity.unit()).isPresent()) {
            String unit = due.get().symbol();
            written.fault(written.written(), "a quantity in " + unit, "state it in " + unit);
        }
        Optional<BigDecimal> hours = fields.find("hours", HOURS).map(Quantity::number);
        return new Actual(code, quantity.number(), quantity.unit(), hours, fields.find("material", Amounts.FROM_ZERO));
    }
}
