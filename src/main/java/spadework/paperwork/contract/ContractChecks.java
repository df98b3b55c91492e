// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Signing;
import spadework.law.Content;
import spadework.law.ContentsCheck;
import spadework.law.DepositCheck;
import spadework.law.HouseLaw;
import spadework.money.Dollars;

/** What there is to say about the contract, to the contractor only: its deposit, its contents, its signing. */
public final class ContractChecks {
    /** The job says nothing of its signing, so that no contract can be printed. */
    public static final String UNPREPARED = "contract-unprepared";

    private static final String FEDERAL = "16 CFR 429.1; state home-contract law";

    private ContractChecks() {}

    /**
     * What there is to say.
     *
     * @param law the federal floor and the state's rules
     */
    public static List<Finding> of(Job job, Company company, Contract contract, HouseLaw law) {
        String state = job.site().address().state();
        Dollars deposit = PaymentChecks.beforeWork(contract.payments());
        Optional<Signing> signing = job.agreement().signing();
        Dollars price = contract.contracted().total();
        Dollars special = signing.flatMap(one -> one.financing().specialOrder()).orElse(Dollars.ZERO);
        List<Finding> found = new ArrayList<>(DepositCheck.of(state, law, price, deposit, special));
        found.addAll(PaymentChecks.of(job.payments(), contract.payments(), state, law));
        found.addAll(PaymentChecks.received(job.agreement(), deposit, state));
        if (signing.isEmpty()) {
            found.add(0, finding(UNPREPARED, Severity.MUST, state, FEDERAL));
            return found;
        }
        boolean secured = signing.get().financing().lienOnHome();
        Set<Content> holds = ContractContents.of(job, company, signing.get(), ContentsCheck.due(law, price, secured));
        found.addAll(ContentsCheck.of(state, law, holds, price, secured));
        found.addAll(laterRules(state, law, signing.get().sale().on().orElse(job.issued())));
        found.addAll(ExcessCost.of(state, law, contract));
        found.addAll(signing(state, signing.get()));
        found.addAll(
                NoticesOfTheTalk.of(state, language(job, signing.get()), law, ContentsCheck.due(law, price, secured)));
        found.addAll(SigningChecks.of(job, law));
        found.addAll(license(state, company, law));
        found.addAll(CoverChecks.of(job, company, law, price));
        if (job.agreement().accepted().isEmpty() && !job.agreement().options().isEmpty()) {
            found.add(finding("contract-options-open", Severity.MUST, state, "common practice, no source"));
        }
        return found;
    }

    /** Rules that were gathered after a contract's day do not say what held on that day. */
    private static List<Finding> laterRules(String state, HouseLaw law, LocalDate day) {
        return law
                .state()
                .filter(rules -> LocalDate.parse(rules.asOf()).isAfter(day))
                .map(rules -> new Finding(
                        "rules-later",
                        Severity.ADVISE,
                        state,
                        Map.of("asOf", rules.asOf(), "day", day.toString()),
                        String.join("; ", rules.citations())))
                .stream()
                .toList();
    }

    /** The license is held against the state of the house, where that state's law asks for one or was not read. */
    private static List<Finding> license(String state, Company company, HouseLaw law) {
        boolean asked = law.state()
                .map(rules ->
                        rules.contents().stream().anyMatch(required -> required.content() == Content.LICENSE_NUMBER))
                .orElse(true);
        if (company.licenseState().equals(state)) {
            return List.of();
        }
        return List.of(new Finding(
                asked ? "license-elsewhere" : "license-unasked",
                asked ? Severity.MUST : Severity.ADVISE,
                state,
                Map.of(
                        "license",
                        company.license().label() + " " + company.license().number(),
                        "of",
                        company.licenseState()),
                law.state().map(rules -> String.join("; ", rules.citations())).orElse("state home-contract law")));
    }

    private static List<Finding> signing(String state, Signing signing) {
        List<Finding> found = new ArrayList<>();
        if (signing.sale().on().isEmpty()) {
            found.add(finding("contract-no-signing-day", Severity.MUST, state, "16 CFR 429.1(a), (c)"));
        }
        if (signing.financing().financed()) {
            found.add(finding("contract-financed", Severity.STOP, state, "16 CFR 433.2; 15 USC 1635, 1638"));
        }
        if (signing.financing().lienOnHome()) {
            found.add(finding("contract-lien", Severity.STOP, state, "15 USC 1635"));
        }
        if (signing.sale().emergency()) {
            found.add(finding("contract-emergency", Severity.MUST, state, "16 CFR 429.0(a)(3), 429.1(d)"));
        }
        return found;
    }

    /** Of the sales talk: with a homeowner who reads another language than English it was that one. */
    private static String language(Job job, Signing signing) {
        String read = job.head().language().name();
        return job.head().language().isEnglish() || !signing.sale().language().equalsIgnoreCase("English")
                ? signing.sale().language()
                : read.substring(0, 1).toUpperCase(Locale.ROOT) + read.substring(1);
    }

    private static Finding finding(String id, Severity severity, String about, String citation) {
        return new Finding(id, severity, about, Map.of(), citation);
    }
}
