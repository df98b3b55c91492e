// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.job.Payment;
import spadework.job.Restoration;
import spadework.job.Salesperson;
import spadework.job.Signing;
import spadework.law.StateRules;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.part.FindingNote;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.part.PriceRows;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.part.WorkConditions;
import spadework.paperwork.part.WorkSchedule;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
import spadework.pricing.Due;

/** Puts the contract together: the work as contracted, its price, and what the law wants beside them. */
public final class ContractPaper {
    private static final String LEAD = "lead-paint";

    private ContractPaper() {}

    /**
     * The contract of a job.
     *
     * @param dossier of the work as contracted: with the options taken, without any change order
     * @param proposed of the same job without any option
     * @throws java.util.NoSuchElementException if the job says nothing of its signing
     */
    public static ContractSheet of(Dossier dossier, Dossier proposed, Scene plan) {
        Job job = dossier.job();
        Signing signing = job.agreement().signing().orElseThrow();
        return new ContractSheet(
                PaperHeads.of(dossier),
                FindingNotes.of(dossier, ContractNotices.missing(dossier)),
                plan,
                parties(dossier, signing),
                work(dossier, proposed, signing),
                price(dossier),
                deposit(dossier.contract().payments(), job.payments(), signing),
                WorkSchedule.of(dossier.terms(), job),
                WorkConditions.of(dossier).preparing(takenOn(dossier)),
                law(dossier, signing),
                WarrantyPromises.specimen(dossier, job));
    }

    /** What the buyer took on by an option: to move the shrubs. Older words of a signed paper leave it out. */
    private static List<String> takenOn(Dossier dossier) {
        int shrubs = dossier.contract().taken().stream()
                .flatMap(option -> option.option().alteration().takenAway().restoration().stream())
                .mapToInt(Restoration::plants)
                .sum();
        return shrubs == 0
                ? List.of()
                : dossier.terms().find("beforehand.shrubs", "count", String.valueOf(shrubs)).stream()
                        .toList();
    }

    private static ContractParties parties(Dossier dossier, Signing signing) {
        Job job = dossier.job();
        return new ContractParties(
                signing.sale().on().map(dossier.terms()::day).orElse(""),
                job.customer().mailing().orElse(job.site().address()).text(),
                more(dossier),
                signing.sale().salesperson().map(ContractPaper::named).orElse(""),
                signing.sale().salesperson().flatMap(Salesperson::address).orElse(""),
                signing.subcontractors());
    }

    private static ContractWork work(Dossier dossier, Dossier proposed, Signing signing) {
        PipeWorks runs = new PipeWorks(dossier);
        List<FindingNote> notes = FindingNotes.forHomeowner(dossier);
        return new ContractWork(
                new WallWorks(dossier).all(),
                runs.all(),
                runs.outlets(),
                signing.materials(),
                notes.stream().filter(note -> note.severity().equals("stop")).toList(),
                notes.stream().filter(note -> note.id().equals(LEAD)).toList(),
                OptionRows.of(dossier, proposed),
                dossier.job().agreement().accepted().isPresent());
    }

    private static ContractPrice price(Dossier dossier) {
        Contract contract = dossier.contract();
        return new ContractPrice(
                PriceRows.prices(dossier, contract.proposed()),
                contract.proposed().tax(),
                contract.contracted().total(),
                PriceRows.unitPrices(dossier, contract.proposed()),
                PaymentRows.of(dossier.terms(), contract.payments()));
    }

    private static ContractDeposit deposit(List<Due> payments, List<Payment> paid, Signing signing) {
        return new ContractDeposit(
                numbers(payments),
                Dollars.total(payments.stream()
                        .filter(Due::atSigning)
                        .map(Due::amount)
                        .toList()),
                signing.financing().specialOrder(),
                signing.financing().depositHeld().orElse(""),
                PaymentChecks.areInStep(paid));
    }

    private static ContractLaw law(Dossier dossier, Signing signing) {
        return new ContractLaw(
                signing.permits().orElse(""),
                signing.dateIsEssential(),
                ContractNotices.of(dossier),
                CancelRights.of(dossier, signing),
                dossier.law().state().flatMap(StateRules::leastType).isPresent(),
                signing.financing().lienOnHome(),
                signing.financing().financed(),
                signing.sale().emergency());
    }

    private static ContractParties.LicenseMore more(Dossier dossier) {
        Company company = dossier.company();
        return new ContractParties.LicenseMore(
                company.license().classification().map(dossier.terms()::own).orElse(""),
                company.license().until().map(dossier.terms()::day).orElse(""),
                company.taxId().orElse(""),
                company.bond().map(dossier.terms()::own).orElse(""),
                company.insurance().phone().orElse(""),
                company.insurance().workers().map(dossier.terms()::own).orElse(""),
                company.affiliates());
    }

    private static String named(Salesperson person) {
        return Stream.of(Optional.of(person.name()), person.license())
                .flatMap(Optional::stream)
                .reduce((name, number) -> name + ", " + number)
                .orElseThrow();
    }

    private static List<Integer> numbers(List<Due> payments) {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < payments.size(); i++) {
            if (payments.get(i).atSigning()) {
                numbers.add(i + 1);
            }
        }
        return numbers;
    }
}
