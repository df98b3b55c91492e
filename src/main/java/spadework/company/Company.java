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
 * @param taxId the firm's number with the tax office; never a person's
 * @param bond the bond or deposit that stands behind the license, with its amount
 * @param affiliates contracting firms that were tied to this one in the last five years; an empty list says that
 *     there were none, a missing one that it is unknown
 * @param calendar when its crews work; empty where it does not say
 * @param diggers what its digging machines do, by the machine's name
 * @param backfill how its own fill comes out; empty where the price book's figures for the soil stand
 */
public record Company(
        String name,
        License license,
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
        List<String> terms,
        Optional<String> taxId,
        Optional<String> bond,
        Optional<List<String>> affiliates,
        Optional<WorkCalendar> calendar,
        Map<String, Digger> diggers,
        Optional<Backfill> backfill) {

    /** A company that says nothing of its calendar and of what its machines do. */
    public Company(
            String name,
            License license,
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
            List<String> terms,
            Optional<String> taxId,
            Optional<String> bond,
            Optional<List<String>> affiliates) {
        this(
                name,
                license,
                insurance,
                address,
                phone,
                email,
                logo,
                paper,
                wages,
                crews,
                machines,
                slowdowns,
                priceRules,
                tax,
                validDays,
                payments,
                warranty,
                excluded,
                preparation,
                terms,
                taxId,
                bond,
                affiliates,
                Optional.empty(),
                Map.of(),
                Optional.empty());
    }

    public Company {
        wages = Map.copyOf(wages);
        crews = Map.copyOf(crews);
        machines = Map.copyOf(machines);
        slowdowns = List.copyOf(slowdowns);
        payments = List.copyOf(payments);
        excluded = List.copyOf(excluded);
        preparation = List.copyOf(preparation);
        terms = List.copyOf(terms);
        affiliates = affiliates.map(List::copyOf);
        diggers = Map.copyOf(diggers);
    }

    /** The company as it charges tax on work of that class. */
    public Company taxing(Optional<String> taxClass) {
        Tax taxSetting = tax.of(taxClass);
        if (taxSetting.equals(tax)) {
            return this;
        }
        return new Company(
                name,
                license,
                insurance,
                address,
                phone,
                email,
                logo,
                paper,
                wages,
                crews,
                machines,
                slowdowns,
                priceRules,
                taxSetting,
                validDays,
                payments,
                warranty,
                excluded,
                preparation,
                terms,
                taxId,
                bond,
                affiliates,
                calendar,
                diggers,
                backfill);
    }

    /** The same company with other price rules. */
    public Company withPriceRules(PriceRules other) {
        return new Company(
                name,
                license,
                insurance,
                address,
                phone,
                email,
                logo,
                paper,
                wages,
                crews,
                machines,
                slowdowns,
                other,
                tax,
                validDays,
                payments,
                warranty,
                excluded,
                preparation,
                terms,
                taxId,
                bond,
                affiliates,
                calendar,
                diggers,
                backfill);
    }
}
