// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import spadework.intake.source.ValueKind;
import spadework.pricebook.Assembly;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;

/**
 * The line items that a job may name.
 *
 * @param book the price book; empty when it could not be read
 * @param names their codes
 * @param orAssemblies their codes and those of the assemblies
 * @param sound true when the book has no fault, so that what an item says can be relied on
 */
public record Codes(Optional<PriceBook> book, Names names, Names orAssemblies, boolean sound) {

    public static Codes of(PriceBook book, Names names, boolean sound) {
        Set<String> both = new HashSet<>(names.known());
        both.addAll(book.assemblies().keySet());
        return new Codes(Optional.of(book), names, new Names(names.what(), Set.copyOf(both), names.complete()), sound);
    }

    /** The codes of a book that could not be read. */
    public static Codes unknown(String what) {
        Names names = Names.unknown(what);
        return new Codes(Optional.empty(), names, names, false);
    }

    /** The code of a line item. */
    public ValueKind<String> kind() {
        return names.kind();
    }

    /** The code of a line item or of an assembly. */
    public ValueKind<String> orAssembly() {
        return orAssemblies.kind();
    }

    /** The assembly, if it is there and can be relied on. */
    public Optional<Assembly> findAssembly(String code) {
        return sound ? book.flatMap(prices -> prices.findAssembly(code)) : Optional.empty();
    }

    /** The item, if it is there and can be relied on. */
    public Optional<LineItem> find(String code) {
        return sound ? book.flatMap(prices -> prices.find(code)) : Optional.empty();
    }
}
