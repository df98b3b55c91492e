package spadework.intake;

import java.util.Optional;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/**
 * The line items that a job may name.
 *
 * @param book the price book; empty when it could not be read
 * @param names their codes
 * @param sound true when the book has no fault, so that what an item says can be relied on
 */
record Codes(Optional<PriceBook> book, Names names, boolean sound) {

    /** The code of a line item. */
    Kind<String> kind() {
        return names.kind();
    }

    /** The item, if it is there and can be relied on. */
    Optional<LineItem> find(String code) {
        return sound ? book.flatMap(prices -> prices.find(code)) : Optional.empty();
    }
}
