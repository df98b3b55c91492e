// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import spadework.contract.Contracting;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.job.Change;
import spadework.job.Job;
import spadework.job.UnitCount;
import spadework.pricing.Quote;

/** A change order may charge only by unit prices that the contract has, in their unit. */
public final class UnitPriceFaults {
    private UnitPriceFaults() {}

    public static List<Fault> of(Job job, Quote quote, Path file) {
        List<UnitCount> unknown = Contracting.unknownPrices(job, quote);
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < job.agreement().changes().size() && !unknown.isEmpty(); i++) {
            Change change = job.agreement().changes().get(i);
            for (int k = 0; k < change.unitPrices().size(); k++) {
                UnitCount count = change.unitPrices().get(k);
                if (unknown.contains(count)) {
                    faults.add(new Fault(
                            new Place(file.toString(), 0, 0, "/changes/" + i + "/unitPrices/" + k),
                            count.quantity().toPlainString() + " "
                                    + count.unit().symbol() + " at " + count.price(),
                            "a unit price of the contract, in its unit: " + allowed(quote),
                            "use one of them, or leave \"unitPrices\" out"));
                }
            }
        }
        return faults;
    }

    private static String allowed(Quote quote) {
        return quote.unitPrices().stream()
                .map(price -> price.code() + " in " + price.unit().symbol())
                .collect(Collectors.joining(", "));
    }
}
