// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import spadework.company.Company;
import spadework.finding.Fault;
import spadework.intake.book.BookReader;
import spadework.intake.company.CompanyReader;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Codes;
import spadework.intake.value.Names;
import spadework.pricebook.PriceBook;

/**
 * A company and its price book, with the faults of both. With faults, company and book are only good for finding
 * more faults.
 *
 * @param company empty when the file is missing or no JSON
 * @param book empty when the file is missing or no JSON
 */
public record CompanyAndBook(Optional<Company> company, Optional<PriceBook> book, Codes codes, List<Fault> faults) {
    private static final String CODE = "a code of the price book";

    /**
     * Reads the two files, and the bundled book where the own one starts from it; a file without a root has given its
     * fault already.
     */
    static CompanyAndBook read(SourceFile companySheet, SourceFile bookSheet, Supplier<SourceFile> bundled) {
        Optional<Company> company = companySheet.root().map(CompanyReader::read);
        Names crews = names(
                "a crew of company.json",
                companySheet,
                "/crews",
                company.map(c -> c.crews().keySet()));
        Names machines = names(
                "a machine of company.json",
                companySheet,
                "/machines",
                company.map(c -> c.machines().keySet()));
        BookReader reader = new BookReader(crews, machines);
        Optional<SourceFile> base =
                bookSheet.root().filter(BookReader::startsFromBundled).map(root -> bundled.get());
        Optional<PriceBook> book = bookSheet.root().map(root -> reader.read(root, base.flatMap(SourceFile::root)));
        List<Fault> bookFaults = new ArrayList<>(bookSheet.faults());
        base.ifPresent(sheet -> bookFaults.addAll(sheet.faults()));
        List<Fault> faults = new ArrayList<>(companySheet.faults());
        faults.addAll(bookFaults);
        return new CompanyAndBook(company, book, codes(book, bookSheet, bookFaults.isEmpty()), List.copyOf(faults));
    }

    private static Codes codes(Optional<PriceBook> book, SourceFile sheet, boolean sound) {
        boolean complete = sheet.isWhole("/items") && sheet.isWhole("/startsFrom") && allCodesWhole(sheet);
        Names names = book.map(prices -> new Names(CODE, prices.items().keySet(), complete))
                .orElse(Names.unknown(CODE));
        return Codes.of(book, names, sound);
    }

    private static boolean allCodesWhole(SourceFile sheet) {
        int count = sheet.root().map(root -> root.json().path("items").size()).orElse(0);
        boolean whole = true;
        for (int i = 0; i < count; i++) {
            whole &= sheet.isWhole("/items/" + i + "/code");
        }
        return whole;
    }

    private static Names names(String what, SourceFile sheet, String pointer, Optional<Set<String>> known) {
        return known.map(names -> new Names(what, names, sheet.isWhole(pointer)))
                .orElse(Names.unknown(what));
    }
}
