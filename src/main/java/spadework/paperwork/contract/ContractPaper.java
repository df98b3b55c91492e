package spadework.paperwork.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.contract.Contract;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.job.Salesperson;
import spadework.job.Signing;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.proposal.ProposalPaper;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
import spadework.pricing.Due;

/** Puts the contract together: the work as contracted, its price, and what the law wants beside them. */
public final class ContractPaper {
    private ContractPaper() {}

    /**
     * The contract of a job.
     *
     * @param dossier of the work as contracted: with the options taken, without any change order
     * @throws java.util.NoSuchElementException if the job says nothing of its signing
     */
    public static ContractTerms of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        Company company = dossier.company();
        Contract contract = dossier.contract();
        Signing signing = job.agreement().signing().orElseThrow();
        PipeWorks runs = new PipeWorks(dossier);
        List<Due> deposits = contract.payments().stream().filter(Due::atSigning).toList();
        return new ContractTerms(
                PaperHeads.of(dossier),
                ContractNotices.isDraft(dossier),
                signing.sale().on().map(PrintedDates::words).orElse(""),
                job.customer().mailing().orElse(job.site().address()).text(),
                more(company),
                signing.sale().salesperson().map(ContractPaper::named).orElse(""),
                plan,
                new WallWorks(dossier).all(),
                runs.all(),
                runs.outlets(),
                FindingNotes.forHomeowner(dossier).stream()
                        .filter(note -> note.severity().equals("stop"))
                        .toList(),
                OptionRows.of(dossier),
                job.agreement().accepted().isPresent(),
                ProposalPaper.prices(dossier, contract.proposed()),
                contract.proposed().tax(),
                contract.contracted().total(),
                contract.proposed().unitPrices().stream()
                        .map(price -> ProposalPaper.unitPrice(dossier, price))
                        .toList(),
                PaymentRows.of(contract.payments()),
                numbers(contract.payments()),
                Dollars.total(deposits.stream().map(Due::amount).toList()),
                signing.financing().specialOrder(),
                signing.financing().depositHeld().orElse(""),
                PrintedDates.words(job.schedule().earliestStart()),
                PrintedDates.words(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                job.schedule().note(),
                signing.dateIsEssential(),
                ProposalPaper.included(dossier),
                Stream.concat(company.excluded().stream(), job.excluded().stream())
                        .distinct()
                        .toList(),
                job.assumed(),
                job.protection(),
                company.preparation(),
                signing.permits().orElse(""),
                signing.subcontractors(),
                signing.financing().lienOnHome(),
                signing.financing().financed(),
                WarrantyPromises.specimen(job),
                Stream.concat(company.terms().stream(), job.terms().stream()).toList(),
                ContractNotices.of(dossier),
                CancelRights.of(dossier, signing),
                signing.sale().emergency());
    }

    private static ContractTerms.LicenseMore more(Company company) {
        return new ContractTerms.LicenseMore(
                company.license().classification().orElse(""),
                company.license().until().map(PrintedDates::words).orElse(""),
                company.taxId().orElse(""),
                company.bond().orElse(""),
                company.insurance().phone().orElse(""),
                company.insurance().workers().orElse(""),
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
