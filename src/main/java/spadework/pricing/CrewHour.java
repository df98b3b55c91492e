// SPDX-License-Identifier: Apache-2.0
package spadework.pricing;

import java.math.BigDecimal;
import spadework.company.Company;
import spadework.company.CrewPlace;
import spadework.money.ExactDollars;
import spadework.pricebook.Labor;

/** What an hour of a crew and of its machine costs: loaded wages of its members, and the machine's hourly cost. */
public final class CrewHour {
    private CrewHour() {}

    /** Crew and machine together. */
    public static ExactDollars of(Company company, Labor labor) {
        return crew(company, labor.crew()).plus(machine(company, labor));
    }

    static ExactDollars crew(Company company, String crew) {
        ExactDollars sum = ExactDollars.ZERO;
        for (CrewPlace place : company.crews().get(crew)) {
            sum = sum.plus(company.wages().get(place.wage()).loaded().times(BigDecimal.valueOf(place.count())));
        }
        return sum;
    }

    static ExactDollars machine(Company company, Labor labor) {
        return labor.machine().map(name -> company.machines().get(name).exact()).orElse(ExactDollars.ZERO);
    }
}
