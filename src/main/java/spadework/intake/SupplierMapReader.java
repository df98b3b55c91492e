package spadework.intake;

import java.util.List;
import spadework.pricebook.SupplierMap;

/** Reads the map from a supplier's list to the items of the book. */
final class SupplierMapReader {
    static final Kind<SupplierMap> MAP = Kind.object(fields -> new SupplierMap(
            fields.find("sheet", Texts.LABEL),
            fields.get("headRow", Counts.between(1, 1000), 1),
            fields.get("code", Texts.LABEL),
            fields.get("price", Texts.LABEL),
            fields.find("goodUntil", Texts.LABEL),
            fields.get("what", Choices.words(List.of("material/cost", "subcontract", "disposal")), "material/cost"),
            fields.named("items", Texts.LABEL)));

    private SupplierMapReader() {}
}
