package spadework.intake;

import java.util.List;
import spadework.pricebook.ItemChange;
import spadework.pricebook.Retirement;

/** Reads what became of a line item: its changes, and its end. */
final class ItemPast {
    static final Kind<Retirement> RETIRED =
            Kind.object(fields -> new Retirement(fields.get("on", Dates.DATE), fields.get("reason", Texts.TEXT)));

    private static final Kind<ItemChange.Value> VALUE = Kind.object(fields -> new ItemChange.Value(
            fields.get("what", Texts.LABEL), fields.find("from", Texts.TEXT), fields.find("to", Texts.TEXT)));

    private static final Kind<ItemChange> CHANGE = Kind.object(fields -> new ItemChange(
            fields.get("on", Dates.DATE), fields.get("reason", Texts.TEXT), fields.list("changes", VALUE)));

    private ItemPast() {}

    /** The changes, oldest first. */
    static List<ItemChange> history(Fields fields) {
        List<ItemChange> changes = fields.list("history", CHANGE);
        Node list = fields.node().at("history");
        for (int i = 1; i < changes.size(); i++) {
            String before = list.pointer() + "/" + (i - 1) + "/on";
            String after = list.pointer() + "/" + i + "/on";
            DateOrder.inOrder(
                    list.sheet(),
                    before,
                    changes.get(i - 1).on(),
                    after,
                    changes.get(i).on());
        }
        return changes;
    }
}
