// SPDX-License-Identifier: Apache-2.0
package spadework.takeoff;

import spadework.pricebook.PriceBook;

/** How the price book is named as a source. */
public final class Sources {
    private Sources() {}

    static String of(PriceBook book) {
        return book.title() + ", " + book.dated();
    }
}
