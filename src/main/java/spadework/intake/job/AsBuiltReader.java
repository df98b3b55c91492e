// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.math.BigDecimal;
import java.util.Optional;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Codes;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.Measures;
import spadework.intake.value.WrittenQuantity;
import spadework.job.Actual;
import spadework.job.AsBuilt;
import spadework.job.BuiltPipe;
import spadework.job.BuiltWall;
import spadework.job.CoatReadings;
import spadework.job.DayInspection;
import spadework.job.FlowTest;
import spadework.job.HoldPoint;
import spadework.job.SoilType;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.measure.Weight;
import spadework.pricebook.LineItem;

/** Reads what was built. */
public final class AsBuiltReader {
    private static final ValueKind<Length> DEPTH = Measures.lengthUpTo(20);
    private static final ValueKind<WrittenQuantity> GALLONS = WrittenQuantity.in(Unit.GALLON, "0", "5000");
    private static final ValueKind<WrittenQuantity> HOURS = WrittenQuantity.in(Unit.HOUR, "0", "10000");
    private static final ValueKind<WrittenQuantity> TONS = WrittenQuantity.in(Unit.TON, "0", "10000");

    private final Codes codes;

    AsBuiltReader(Codes codes) {
        this.codes = codes;
    }

    ValueKind<AsBuilt> kind() {
        return ValueKind.object(fields -> new AsBuilt(
                fields.get("started", CalendarDates.DATE),
                fields.find("finished", CalendarDates.DATE),
                fields.list("walls", ValueKind.object(AsBuiltReader::wall)),
                fields.list("pipes", ValueKind.object(AsBuiltReader::pipe)),
                fields.find("stone", TONS).map(WrittenQuantity::number).map(tons -> new Weight(tons.doubleValue())),
                fields.find("loads", Counts.between(0, 10_000)),
                fields.find("soilFound", Choices.of(SoilType.class)),
                fields.list("flowTests", ValueKind.object(AsBuiltReader::flowTest)),
                fields.list("actuals", ValueKind.object(this::actual)),
                fields.list("inspections", ValueKind.object(AsBuiltReader::inspection)),
                fields.get("note", Texts.TEXT, "")));
    }

    private static BuiltWall wall(ObjectFields fields) {
        return new BuiltWall(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(1000)),
                fields.get("depthStart", DEPTH),
                fields.get("depthEnd", DEPTH),
                fields.find("gallons", GALLONS).map(WrittenQuantity::number),
                fields.list("batches", Texts.LABEL),
                fields.find("temperature", Texts.LABEL),
                fields.list("holdPoints", ValueKind.object(AsBuiltReader::holdPoint)),
                fields.list("coats", ValueKind.object(AsBuiltReader::coat)));
    }

    private static CoatReadings coat(ObjectFields fields) {
        return new CoatReadings(fields.get("number", Counts.between(1, 10)), fields.list("wet", Measures.FILM));
    }

    private static DayInspection inspection(ObjectFields fields) {
        return new DayInspection(
                fields.get("on", CalendarDates.DATE),
                fields.get("by", Texts.LABEL),
                fields.get("soil", Texts.TEXT),
                fields.get("hazards", Texts.TEXT, ""),
                fields.get("done", Texts.TEXT, ""));
    }

    private static HoldPoint holdPoint(ObjectFields fields) {
        return new HoldPoint(
                fields.get("point", Texts.LABEL),
                fields.get("on", CalendarDates.DATE),
                fields.get("by", Texts.LABEL),
                fields.find("photo", Texts.FILE),
                fields.find("waived", Texts.TEXT));
    }

    private static BuiltPipe pipe(ObjectFields fields) {
        return new BuiltPipe(
                fields.get("label", Texts.LABEL),
                fields.get("length", Measures.lengthUpTo(5000)),
                fields.find("startInvert", Measures.LEVEL),
                fields.find("endInvert", Measures.LEVEL),
                fields.find("teeInvert", Measures.LEVEL));
    }

    private static FlowTest flowTest(ObjectFields fields) {
        return new FlowTest(
                fields.get("on", CalendarDates.DATE),
                fields.get("passed", Texts.YES_OR_NO),
                fields.get("what", Texts.TEXT),
                fields.get("by", Texts.LABEL),
                fields.find("line", Texts.LABEL));
    }

    private Actual actual(ObjectFields fields) {
        String code = fields.get("code", codes.kind());
        WrittenQuantity quantity = fields.get("quantity", WrittenQuantity.ANY);
        SourceNode written = fields.node().at("quantity");
        Optional<Unit> due = codes.find(code).map(LineItem::unit);
        if (!written.isSilent() && due.filter(unit -> unit != quantity.unit()).isPresent()) {
            String unit = due.get().symbol();
            written.fault(written.written(), "a quantity in " + unit, "state it in " + unit);
        }
        Optional<BigDecimal> hours = fields.find("hours", HOURS).map(WrittenQuantity::number);
        return new Actual(
                code, quantity.number(), quantity.unit(), hours, fields.find("material", DollarAmounts.FROM_ZERO));
    }
}
