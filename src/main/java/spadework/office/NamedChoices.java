// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spadework.company.Company;
import spadework.company.CrewPlace;
import spadework.money.ExactDollars;

/** What the company and the price of a job have by name: crews, machines, unit prices, tax classes, stops. */
public final class NamedChoices {
    private NamedChoices() {}

    /** The crews, each with who is in it and what an hour of it costs the company. */
    public static List<NamedChoice> crews(Bid bid) {
        Company company = bid.dossier().company();
        return company.crews().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(crew ->
                        new NamedChoice(crew.getKey(), members(crew.getValue()), hour(company, crew.getValue()) + "/h"))
                .toList();
    }

    private static String members(List<CrewPlace> crew) {
        return crew.stream().map(place -> place.count() + " " + place.wage()).collect(Collectors.joining(", "));
    }

    private static String hour(Company company, List<CrewPlace> crew) {
        return ExactDollars.total(crew.stream()
                        .map(place -> company.rates()
                                .wages()
                                .get(place.wage())
                                .loaded()
                                .times(BigDecimal.valueOf(place.count())))
                        .toList())
                .toCents(RoundingMode.HALF_UP)
                .text();
    }

    /** The machines, each with what an hour of it costs the company. */
    public static List<NamedChoice> machines(Bid bid) {
        return bid.dossier().company().rates().machines().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(machine ->
                        new NamedChoice(machine.getKey(), "", machine.getValue().text() + "/h"))
                .toList();
    }

    /** The unit prices that the contract fixes for what nobody can see before digging. */
    public static List<NamedChoice> unitPrices(Bid bid) {
        return bid.proposedQuote().unitPrices().stream()
                .map(price -> new NamedChoice(
                        price.code(),
                        price.name(),
                        price.price().text() + "/" + price.unit().symbol()))
                .toList();
    }

    /** The company's own classes of work that is taxed another way. */
    public static List<NamedChoice> taxClasses(Bid bid) {
        return bid.dossier().company().tax().classes().keySet().stream()
                .map(name -> new NamedChoice(name, "", ""))
                .toList();
    }
}
