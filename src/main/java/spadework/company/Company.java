package spadework.company;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Address;
import spadework.job.Payment;
import spadework.job.WarrantyTerms;
import spadework.money.Dollars;

/**
 * The contractor.
 *
 * @param logo file name of a PNG or JPEG beside the company file
 * @param wages what an hour costs, by trade
 * @param crews who works together, by the crew's name
 * @param machines cost of a machine hour without its operator, by name
 * @param excluded what the company's price never includes, one thing a line
 * @param preparation what the homeowner is asked to do beforehand, one thing a line
 */
public record Company(
        String name,
        Licence licence,
        Insurance insurance,
        Address address,
        String phone,
        String email,
        Optional<String> logo,
        Paper paper,
        Map<String, Wage> wages,
        Map<String, List<CrewPlace>> crews,
        Map<String, Dollars> machines,
        List<Slowdown> slowdowns,
        PriceRules priceRules,
        Tax tax,
        int validDays,
        List<Payment> payments,
        WarrantyTerms warranty,
        List<String> excluded,
        List<String> preparation,
        List<String> terms) {

    public Company {
        wages = Map.copyOf(wages);
        crews = Map.copyOf(crews);
        machines = Map.copyOf(machines);
        slowdowns = List.copyOf(slowdowns);
        payments = List.copyOf(payments);
        excluded = List.copyOf(excluded);
        preparation = List.copyOf(preparation);
        terms = List.copyOf(terms);
    }
}
