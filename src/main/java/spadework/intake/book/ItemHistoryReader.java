// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.util.List;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.DateOrder;
import spadework.pricebook.ItemChange;
import spadework.pricebook.Retirement;
import spadework.spelling.FormerSpelling;

/** Reads what became of a line item: its changes, and its end. */
public final class ItemHistoryReader {
    static final ValueKind<Retirement> RETIRED = ValueKind.object(
            fields -> new Retirement(fields.get("on", CalendarDates.DATE), fields.get("reason", Texts.TEXT)));

    private static final ValueKind<ItemChange.Value> VALUE = ValueKind.object(fields -> new ItemChange.Value(
            FormerSpelling.current(fields.get("what", Texts.LABEL)),
            fields.find("from", Texts.TEXT),
            fields.find("to", Texts.TEXT)));

    private static final ValueKind<ItemChange> CHANGE = ValueKind.object(fields -> new ItemChange(
            fields.get("on", CalendarDates.DATE), fields.get("reason", Texts.TEXT), fields.list("changes", VALUE)));

    private ItemHistoryReader() {}

    /** The changes, oldest first. */
    static List<ItemChange> history(ObjectFields fields) {
        List<ItemChange> changes = fields.list("history", CHANGE);
        SourceNode list = fields.node().at("history");
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
