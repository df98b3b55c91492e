// SPDX-License-Identifier: Apache-2.0
package spadework.company;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spadework.job.Address;
import spadework.job.Payment;
import spadework.job.WarrantyTerms;
import spadework.money.Dollars;

/**
 * The contractor. Its parts answer by name here as well.
 *
 * @param usualTerms what its offers say where a job says nothing else
 */
@RecordBuilder
public record Company(
        String name,
        Credentials credentials,
        Contact contact,
        Letterhead letterhead,
        Rates rates,
        Production production,
        PriceRules priceRules,
        Tax tax,
        UsualTerms usualTerms)
        implements CompanyBuilder.With {

    public License license() {
        return credentials.license();
    }

    public Insurance insurance() {
        return credentials.insurance();
    }

    public Optional<String> taxId() {
        return credentials.taxId();
    }

    public Optional<String> bond() {
        return credentials.bond();
    }

    public Optional<List<String>> affiliates() {
        return credentials.affiliates();
    }

    public Address address() {
        return contact.address();
    }

    public String phone() {
        return contact.phone();
    }

    public String email() {
        return contact.email();
    }

    public Optional<ContactPerson> contactPerson() {
        return contact.person();
    }

    public Optional<String> logo() {
        return letterhead.logo();
    }

    public Paper paper() {
        return letterhead.paper();
    }

    public Map<String, Wage> wages() {
        return rates.wages();
    }

    public Map<String, List<CrewPlace>> crews() {
        return rates.crews();
    }

    public Map<String, Dollars> machines() {
        return rates.machines();
    }

    public List<Slowdown> slowdowns() {
        return rates.slowdowns();
    }

    public Optional<WorkCalendar> calendar() {
        return production.calendar();
    }

    public Map<String, Digger> diggers() {
        return production.diggers();
    }

    public Optional<Backfill> backfill() {
        return production.backfill();
    }

    public int validDays() {
        return usualTerms.validDays();
    }

    public List<Payment> payments() {
        return usualTerms.payments();
    }

    public WarrantyTerms warranty() {
        return usualTerms.warranty();
    }

    public List<String> excluded() {
        return usualTerms.excluded();
    }

    public List<String> preparation() {
        return usualTerms.preparation();
    }

    public List<String> terms() {
        return usualTerms.terms();
    }

    /** The company as it charges tax on work of that class. */
    public Company taxing(String taxClass) {
        Tax taxSetting = tax.of(taxClass);
        if (taxSetting.equals(tax)) {
            return this;
        }
        return withTax(taxSetting);
    }

    /** The company with its license of the state in which the house stands, where it has one. */
    public Company licensedIn(String state) {
        License there = license().in(state);
        return there.equals(license()) ? this : withCredentials(credentials.with(there));
    }

    /** The state of the license. */
    public String licenseState() {
        return license().state().orElse(address().state());
    }
}
