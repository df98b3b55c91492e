// SPDX-License-Identifier: Apache-2.0
package spadework.listing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import spadework.bids.BidRow;
import spadework.bids.BidStatus;
import spadework.bids.BidUse;

/** Bids side by side for other programs, as JSON: money as plain decimals, dates as ISO text. */
public final class BidsListing {
    private BidsListing() {}

    /** Where bids stand on a day. */
    public static String of(LocalDate on, List<BidRow> rows) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("on", on.toString());
        ArrayNode bids = root.putArray("bids");
        for (BidRow row : rows) {
            ObjectNode bid = bids.addObject();
            bid.put("number", row.number())
                    .put("status", word(row.standing()))
                    .put("issued", row.issued().toString());
            row.validUntil().ifPresent(day -> bid.put("validUntil", day.toString()));
            bid.put("age", row.age()).put("total", row.total().plain());
            row.margin().ifPresent(share -> bid.put("margin", share));
            bid.put("title", row.title()).put("customer", row.customer()).put("file", row.place());
        }
        return RegisterListing.text(root);
    }

    /** Every use of a line item. */
    public static String of(String code, List<BidUse> uses) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("code", code);
        ArrayNode list = root.putArray("uses");
        for (BidUse use : uses) {
            list.addObject()
                    .put("number", use.number())
                    .put("status", word(use.standing()))
                    .put("issued", use.issued().toString())
                    .put("section", use.section())
                    .put("quantity", use.quantity())
                    .put("unit", use.unit().symbol())
                    .put("unitPrice", use.unitPrice().plain())
                    .put("price", use.price().plain())
                    .put("file", use.place());
        }
        return RegisterListing.text(root);
    }

    private static String word(BidStatus standing) {
        return standing.name().toLowerCase(Locale.ROOT);
    }
}
