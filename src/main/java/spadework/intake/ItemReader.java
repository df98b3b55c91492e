package spadework.intake;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.WorkCondition;
import spadework.measure.Percent;
import spadework.measure.Unit;
import spadework.pricebook.Film;
import spadework.pricebook.Generic;
import spadework.pricebook.Labour;
import spadework.pricebook.LineItem;
import spadework.pricebook.Material;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;

/** Reads the line items of a price book and holds their units together. */
final class ItemReader {
    private static final Kind<Film> FILM = Kind.object(fields -> new Film(
            fields.get("generic", Choices.of(Generic.class)),
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
    Map<String, LineItem> read(Node list, Set<String> replaced) {
        Map<String, LineItem> items = new LinkedHashMap<>();
        for (Node node : list.elements()) {
            if (node.isObject() && replaced.contains(node.json().path("code").asText())) {
                continue;
            }
            LineItem item = Kind.object(this::item).read(node);
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

    private LineItem item(Fields fields) {
        Unit unit = fields.get("unit", Choices.UNIT);
        Optional<Measure> follows = fields.find("follows", Choices.MEASURE);
        if (sound(fields, "unit") && sound(fields, "follows")) {
            follows.ifPresent(measure -> checkFollows(fields, unit, measure));
        }
        Optional<Unit> itemUnit = sound(fields, "unit") ? Optional.of(unit) : Optional.empty();
        return new LineItem(
                fields.get("code", Texts.LABEL),
                fields.get("section", Choices.of(Section.class)),
                fields.get("name", Texts.LABEL),
                fields.get("homeowner", Texts.TEXT),
                unit,
                follows,
                standard(fields, follows),
                fields.find("material", Kind.object(inside -> material(inside, itemUnit))),
                fields.find("labour", Kind.object(inside -> labour(inside, itemUnit))),
                fields.find("subcontract", Amounts.FROM_ZERO),
                fields.find("disposal", Amounts.FROM_ZERO),
                fields.find("film", FILM),
                PipeReader.find(fields, follows),
                fields.get("unknown", Texts.YES_OR_NO, false),
                fields.get("source", Earth.SOURCE),
                fields.list("notes", Texts.TEXT),
                fields.find("goodUntil", Dates.DATE),
                fields.find("retired", ItemPast.RETIRED),
                ItemPast.history(fields));
    }

    /** True only makes sense beside a measure: nothing else says how much of it there is. */
    private static boolean standard(Fields fields, Optional<Measure> follows) {
        boolean standard = fields.get("standard", Texts.YES_OR_NO, false);
        if (standard && follows.isEmpty()) {
            fields.node()
                    .at("standard")
                    .fault("true without \"follows\"", "true only beside a measure", "add \"follows\", or write false");
        }
        return standard;
    }

    private static void checkFollows(Fields fields, Unit unit, Measure measure) {
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

    private Material material(Fields fields, Optional<Unit> itemUnit) {
        Quantity holds = fields.get("holds", Quantity.ANY);
        Optional<Measure> measured = fields.find("measured", Choices.MEASURE);
        Optional<BigDecimal> each = fields.find("each", Counts.ratio(ABOVE_ZERO));
        Optional<Unit> due = measured.map(Measure::unit).or(() -> each.isPresent() ? Optional.empty() : itemUnit);
        if (sound(fields, "holds") && sound(fields, "measured")) {
            due.filter(unit -> unit != holds.unit()).ifPresent(unit -> otherUnit(fields, "holds", holds, unit));
        }
        return new Material(
                fields.get("cost", Amounts.FROM_ZERO),
                fields.get("sold", Texts.LABEL),
                holds.number(),
                holds.unit(),
                each.orElse(BigDecimal.ONE),
                measured,
                fields.get("waste", Shares.fromZeroTo(100), Percent.ZERO));
    }

    private Labour labour(Fields fields, Optional<Unit> itemUnit) {
        Quantity perHour = fields.get("perHour", Quantity.ANY);
        if (sound(fields, "perHour")) {
            itemUnit.filter(unit -> unit != perHour.unit())
                    .ifPresent(unit -> otherUnit(fields, "perHour", perHour, unit));
        }
        return new Labour(
                fields.get("crew", crews.kind()),
                perHour.number(),
                fields.find("machine", machines.kind()),
                fields.list("slowedBy", Choices.of(WorkCondition.class)));
    }

    private static void otherUnit(Fields fields, String key, Quantity written, Unit due) {
        String found = "\"" + written.unit().symbol() + "\"";
        String allowed = "a number in " + due.symbol() + ", the unit of what it is for";
        fields.node().at(key).fault(found, allowed, "state it in " + due.symbol());
    }

    private static boolean sound(Fields fields, String key) {
        Node node = fields.node();
        return !node.isSilent() && node.sheet().isSound(Sheet.child(node.pointer(), key));
    }
}
