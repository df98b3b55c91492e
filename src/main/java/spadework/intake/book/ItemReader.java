// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.WorkCondition;
import spadework.intake.source.Excerpt;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceFile;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.Limits;
import spadework.intake.value.Measures;
import spadework.intake.value.Names;
import spadework.intake.value.Shares;
import spadework.intake.value.WrittenQuantity;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.pricebook.DigKind;
import spadework.pricebook.Film;
import spadework.pricebook.ItemCost;
import spadework.pricebook.ItemIdentity;
import spadework.pricebook.ItemUpkeep;
import spadework.pricebook.ItemUse;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.pricebook.Supplier;
import spadework.pricebook.TreatmentKind;
import spadework.pricebook.WorkStep;
import spadework.spelling.FormerSpelling;

/** Reads the line items of a price book and holds their units together. */
public final class ItemReader {
    private static final ValueKind<Supplier> SUPPLIER = ValueKind.object(fields -> new Supplier(
            fields.get("name", Texts.LABEL),
            fields.get("number", Texts.LABEL, ""),
            fields.get("leadDays", Counts.between(0, 90), 0)));
    private static final ValueKind<Film> FILM = ValueKind.object(fields -> new Film(
            fields.get("generic", Choices.of(TreatmentKind.class)),
            fields.get("volumeSolids", Shares.aboveZeroTo(100)),
            fields.get("dryFilm", Measures.FILM),
            fields.get("coats", Counts.between(1, 10))));

    private static final Limits<BigDecimal> ABOVE_ZERO =
            Limits.above(BigDecimal.ZERO, BigDecimal.valueOf(1_000_000), BigDecimal::toPlainString);

    private final Names crews;
    private final Names machines;

    ItemReader(Names crews, Names machines) {
        this.crews = crews;
        this.machines = machines;
    }

    /** The items by code, without those that another book replaces. */
    Map<String, LineItem> read(SourceNode list, Set<String> replaced) {
        Map<String, LineItem> items = new LinkedHashMap<>();
        for (SourceNode node : list.elements()) {
            if (node.isObject()
                    && replaced.contains(
                            FormerSpelling.currentCode(node.json().path("code").asText()))) {
                continue;
            }
            LineItem item = ValueKind.object(this::item).read(node);
            String pointer = node.pointer() + "/code";
            if (!node.sheet().isSound(pointer)) {
                continue;
            }
            if (items.putIfAbsent(item.code(), item) != null) {
                String found = "the code " + Excerpt.quoted(item.code()) + " a second time";
                node.sheet().fault(pointer, found, "each code once", "give one of the two another code");
            }
        }
        return items;
    }

    /** The unit of the item that is read; empty where it has a fault, so that nothing is held to it. */
    private record ItemUnit(Optional<Unit> sound) {}

    private LineItem item(ObjectFields fields) {
        Unit unit = fields.get("unit", Choices.UNIT);
        Optional<Measure> follows = fields.find("follows", Choices.MEASURE);
        if (sound(fields, "unit") && sound(fields, "follows")) {
            follows.ifPresent(measure -> checkFollows(fields, unit, measure));
        }
        ItemUnit itemUnit = new ItemUnit(sound(fields, "unit") ? Optional.of(unit) : Optional.empty());
        return new LineItem(
                new ItemIdentity(
                        FormerSpelling.currentCode(fields.get("code", Texts.LABEL)),
                        fields.get("section", Choices.of(Section.class)),
                        fields.get("name", Texts.LABEL),
                        fields.get("homeowner", Texts.TEXT),
                        unit),
                new ItemUse(
                        follows,
                        standard(fields, follows.isPresent()),
                        fields.get("unknown", Texts.YES_OR_NO, false),
                        fields.find("step", Choices.of(WorkStep.class))),
                new ItemCost(
                        fields.find("material", ValueKind.object(inside -> material(inside, itemUnit))),
                        fields.find("labor", ValueKind.object(inside -> labor(inside, itemUnit))),
                        fields.find("subcontract", DollarAmounts.FROM_ZERO),
                        fields.find("disposal", DollarAmounts.FROM_ZERO)),
                fields.find("film", FILM),
                follows.map(measure -> PipeReader.find(fields, measure)).orElseGet(() -> PipeReader.find(fields)),
                new ItemUpkeep(
                        fields.get("source", EarthFactorReader.SOURCE),
                        fields.find("goodUntil", CalendarDates.DATE),
                        fields.find("retired", ItemHistoryReader.RETIRED),
                        ItemHistoryReader.history(fields),
                        fields.list("notes", Texts.TEXT),
                        fields.find("supplier", SUPPLIER).orElse(Supplier.UNKNOWN)));
    }

    /** True only makes sense beside a measure: nothing else says how much of it there is. */
    private static boolean standard(ObjectFields fields, boolean follows) {
        boolean standard = fields.get("standard", Texts.YES_OR_NO, false);
        if (standard && !follows) {
            fields.node()
                    .at("standard")
                    .fault("true without \"follows\"", "true only beside a measure", "add \"follows\", or write false");
        }
        return standard;
    }

    private static void checkFollows(ObjectFields fields, Unit unit, Measure measure) {
        if (measure.unit() != unit) {
            String due = measure.unit().symbol();
            fields.node()
                    .at("unit")
                    .fault(
                            "\"" + unit.symbol() + "\"",
                            "\"" + due + "\", in which \"" + measure.trade() + "\" is measured",
                            "write \"" + due + "\", or follow another measure");
        }
    }

    private Material material(ObjectFields fields, ItemUnit itemUnit) {
        WrittenQuantity holds = fields.get("holds", WrittenQuantity.ANY);
        Optional<Measure> measured = fields.find("measured", Choices.MEASURE);
        Optional<BigDecimal> each = fields.find("each", Counts.ratio(ABOVE_ZERO));
        Optional<Unit> due =
                measured.map(Measure::unit).or(() -> each.isPresent() ? Optional.empty() : itemUnit.sound());
        if (sound(fields, "holds") && sound(fields, "measured")) {
            due.filter(unit -> unit != holds.unit()).ifPresent(unit -> otherUnit(fields, "holds", holds, unit));
        }
        return new Material(
                fields.get("cost", DollarAmounts.FROM_ZERO),
                fields.get("sold", Texts.LABEL),
                holds.number(),
                holds.unit(),
                each.orElse(BigDecimal.ONE),
                measured,
                fields.get("waste", Shares.fromZeroTo(100), Percent.ZERO));
    }

    private Labor labor(ObjectFields fields, ItemUnit itemUnit) {
        WrittenQuantity perHour = fields.get("perHour", WrittenQuantity.ANY);
        if (sound(fields, "perHour")) {
            itemUnit.sound()
                    .filter(unit -> unit != perHour.unit())
                    .ifPresent(unit -> otherUnit(fields, "perHour", perHour, unit));
        }
        return new Labor(
                fields.get("crew", crews.kind()),
                perHour.number(),
                fields.find("machine", machines.kind()),
                fields.list("slowedBy", Choices.of(WorkCondition.class)),
                digs(fields, itemUnit));
    }

    /** Only soil by the cubic yard, with a machine, is dug at a machine's pace. */
    private static Optional<DigKind> digs(ObjectFields fields, ItemUnit itemUnit) {
        Optional<DigKind> digs = fields.find("digs", Choices.of(DigKind.class));
        boolean other = itemUnit.sound().filter(unit -> unit != Unit.CUBIC_YARD).isPresent();
        boolean noMachine = fields.node().at("machine").json() == null;
        if (digs.isPresent() && sound(fields, "digs") && (other || noMachine)) {
            SourceNode node = fields.node().at("digs");
            node.fault(
                    node.written() + (noMachine ? " without \"machine\"" : " for another unit"),
                    "a line item in cy with a machine",
                    noMachine ? "add \"machine\", or take it out" : "take it out");
        }
        return digs;
    }

    private static void otherUnit(ObjectFields fields, String key, WrittenQuantity written, Unit due) {
        String found = "\"" + written.unit().symbol() + "\"";
        String allowed = "a number in " + due.symbol() + ", the unit of what it is for";
        fields.node().at(key).fault(found, allowed, "state it in " + due.symbol());
    }

    private static boolean sound(ObjectFields fields, String key) {
        SourceNode node = fields.node();
        return !node.isSilent() && node.sheet().isSound(SourceFile.child(node.pointer(), key));
    }
}
