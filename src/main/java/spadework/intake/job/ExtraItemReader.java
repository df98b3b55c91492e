// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.util.Optional;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Codes;
import spadework.intake.value.DollarAmounts;
import spadework.intake.value.WrittenQuantity;
import spadework.job.ExtraItem;
import spadework.job.PriceChange;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.LineItem;

/** Reads what a job says about line items by their code: those put in by hand and those with a price of their own. */
public final class ExtraItemReader {
    /** As a job writes that an assembly takes what is measured of its driver. */
    static final String AS_MEASURED = "as measured";

    /** How much; nothing where an assembly takes what is measured of its driver. */
    private static final ValueKind<Optional<WrittenQuantity>> QUANTITY = new ValueKind<>(
            WrittenQuantity.ANY.example(),
            node -> isMeasured(node) ? Optional.empty() : Optional.of(WrittenQuantity.ANY.read(node)));

    private final Codes codes;

    ExtraItemReader(Codes codes) {
        this.codes = codes;
    }

    ValueKind<ExtraItem> item() {
        return ValueKind.object(fields -> {
            String code = fields.get("code", codes.orAssembly());
            Optional<WrittenQuantity> quantity = fields.get("quantity", QUANTITY);
            SourceNode written = fields.node().at("quantity");
            Optional<Unit> due = codes.find(code)
                    .map(LineItem::unit)
                    .or(() -> codes.findAssembly(code)
                            .map(assembly -> assembly.driver().unit()));
            String unit = due.map(Unit::symbol).orElse("");
            if (!written.isSilent()
                    && quantity.isPresent()
                    && due.filter(u -> u != quantity.get().unit()).isPresent()) {
                written.fault(written.written(), "a quantity in " + unit, "state it in " + unit);
            }
            if (!written.isSilent() && quantity.isEmpty() && codes.find(code).isPresent()) {
                String allowed = "a quantity in " + unit + "; only an assembly has a driver that is measured";
                written.fault(written.written(), allowed, "state it in " + unit);
            }
            return new ExtraItem(
                    code,
                    quantity.map(WrittenQuantity::number),
                    fields.get("section", Texts.LABEL),
                    fields.get("reason", Texts.TEXT));
        });
    }

    private static boolean isMeasured(SourceNode node) {
        return node.json() != null
                && node.json().isTextual()
                && node.json().textValue().equals(AS_MEASURED);
    }

    ValueKind<PriceChange> priceChange() {
        return ValueKind.object(fields -> {
            PriceChange change = new PriceChange(
                    fields.get("code", codes.kind()),
                    fields.find("materialCost", DollarAmounts.FROM_ZERO),
                    fields.find("subcontract", DollarAmounts.FROM_ZERO),
                    fields.get("reason", Texts.TEXT));
            check(fields.node(), change);
            return change;
        });
    }

    private void check(SourceNode node, PriceChange change) {
        if (node.isSilent()) {
            return;
        }
        if (change.materialCost().isEmpty() && change.subcontract().isEmpty()) {
            node.fault("no new price", "\"materialCost\" or \"subcontract\"", "add the price that changes");
        }
        Optional<LineItem> item = codes.find(change.code());
        Optional<Dollars> cost = change.materialCost();
        if (cost.isPresent() && item.filter(known -> known.material().isEmpty()).isPresent()) {
            useless(node.at("materialCost"), change.code(), "has no material");
        }
        if (change.subcontract().isPresent()
                && item.filter(known -> known.subcontract().isEmpty()).isPresent()) {
            useless(node.at("subcontract"), change.code(), "has no subcontract price");
        }
    }

    private static void useless(SourceNode node, String code, String why) {
        node.fault(code + ", which " + why + " to change", "a price that the item has", "take it out");
    }
}
