// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import spadework.company.Company;
import spadework.finding.Fault;
import spadework.intake.book.BookReader;
import spadework.intake.company.CompanyReader;
import spadework.intake.job.JobReader;
import spadework.intake.source.SourceFile;
import spadework.intake.value.Codes;
import spadework.intake.value.Names;
import spadework.job.Job;
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
    private static final String CREW = "a crew of company.json";
    private static final String MACHINE = "a machine of company.json";

    /**
     * Reads the two files, and the bundled book where the own one starts from it; a file without a root has given its
     * fault already.
     */
    static CompanyAndBook read(SourceFile companySheet, SourceFile bookSheet, Supplier<SourceFile> bundled) {
        Optional<Company> company = companySheet.root().map(CompanyReader::read);
        Names crews = company.map(c -> new Names(CREW, c.crews().keySet(), companySheet.isWhole("/crews")))
                .orElse(Names.unknown(CREW));
        Names machines = company.map(c -> new Names(MACHINE, c.machines().keySet(), companySheet.isWhole("/machines")))
                .orElse(Names.unknown(MACHINE));
        BookReader reader = new BookReader(crews, machines);
        Optional<SourceFile> base =
                bookSheet.root().filter(BookReader::startsFromBundled).map(root -> bundled.get());
        Optional<PriceBook> book = bookSheet
                .root()
                .map(root -> base.flatMap(SourceFile::root)
                        .map(first -> reader.read(root, first))
                        .orElseGet(() -> reader.read(root)));
        List<Fault> bookFaults = new ArrayList<>(bookSheet.faults());
        base.ifPresent(sheet -> bookFaults.addAll(sheet.faults()));
        List<Fault> faults = new ArrayList<>(companySheet.faults());
        faults.addAll(bookFaults);
        Codes codes = book.map(prices -> codes(prices, bookSheet, bookFaults.isEmpty()))
                .orElseGet(() -> Codes.unknown(CODE));
        return new CompanyAndBook(company, book, codes, List.copyOf(faults));
    }

    private static Codes codes(PriceBook book, SourceFile sheet, boolean sound) {
        boolean complete = sheet.isWhole("/items") && sheet.isWhole("/startsFrom") && allCodesWhole(sheet);
        return Codes.of(book, new Names(CODE, book.items().keySet(), complete), sound);
    }

    /** Reads the job of that company, by that book. */
    Optional<Job> job(SourceFile sheet) {
        JobReader reader = company.map(known -> new JobReader(known, codes)).orElseGet(() -> new JobReader(codes));
        return sheet.root().map(reader::read);
    }

    private static boolean allCodesWhole(SourceFile sheet) {
        int count = sheet.root().map(root -> root.json().path("items").size()).orElse(0);
        boolean whole = true;
        for (int i = 0; i < count; i++) {
            whole &= sheet.isWhole("/items/" + i + "/code");
        }
        return whole;
    }
}
