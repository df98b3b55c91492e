// SPDX-License-Identifier: Apache-2.0
package spadework.contract;

import java.util.List;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.money.Dollars;
import spadework.pricing.Pricing;
import spadework.pricing.SalesTax;
import spadework.pricing.SectionPrice;
import spadework.schedule.MeasuredStages;
import spadework.takeoff.Takeoff;

/** A job's takeoff with the price of its work: its sections, without the small-job minimum, which is charged once. */
record WorkPrice(Takeoff takeoff, List<SectionPrice> sections) {

    static WorkPrice of(Takeoff takeoff, MeasuredStages stages) {
        return new WorkPrice(takeoff, Pricing.work(stages.company(), stages.book(), takeoff));
    }

    private Dollars price() {
        return Dollars.total(sections.stream().map(SectionPrice::price).toList());
    }

    /** What another job costs more than this one. */
    Sum to(WorkPrice other, Company company) {
        return taxed(other.price().minus(price()), company);
    }

    /** A price with the sales tax on it, where the company collects it: each option and change is an invoice. */
    static Sum taxed(Dollars price, Company company) {
        boolean collected = company.tax().mode() == TaxMode.ON_PRICE;
        return new Sum(price, collected ? SalesTax.on(price, company.tax().rate()) : Dollars.ZERO);
    }
}
