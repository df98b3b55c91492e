// SPDX-License-Identifier: Apache-2.0
package spadework.intake.book;

import java.util.List;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Choices;
import spadework.intake.value.Counts;
import spadework.pricebook.SupplierMap;

/** Reads the map from a supplier's list to the items of the book. */
public final class SupplierMapReader {
    public static final ValueKind<SupplierMap> MAP = ValueKind.object(fields -> new SupplierMap(
            fields.find("sheet", Texts.LABEL),
            fields.get("headRow", Counts.between(1, 1000), 1),
            fields.get("code", Texts.LABEL),
            fields.get("price", Texts.LABEL),
            fields.find("goodUntil", Texts.LABEL),
            fields.get("what", Choices.words(List.of("material/cost", "subcontract", "disposal")), "material/cost"),
            fields.named("items", Texts.LABEL)));

    private SupplierMapReader() {}
}
