// SPDX-License-Identifier: Apache-2.0
package spadework.press;

import java.util.List;
import spadework.job.Observation;
import spadework.paperwork.Picture;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.proposal.Proposal;
import spadework.paperwork.proposal.ProposalAnswer;
import spadework.paperwork.proposal.ProposalFound;
import spadework.paperwork.proposal.ProposalPrice;
import spadework.paperwork.proposal.ProposalWork;

/** Parts of papers for tests that change one of them and leave the others. */
final class FlatPapers {
    static final ProposalAnswer ANSWER = new ProposalAnswer(
            List.of(new ProposalAnswer.Alternative("Do nothing", "It costs nothing today. The water stays.")),
            List.of("You sign below. We prepare the contract.", "We call before we come."));

    private FlatPapers() {}

    static Proposal withFound(Proposal p, List<Observation> observations, List<Picture> pictures) {
        return new Proposal(
                p.head(),
                p.plan(),
                new ProposalFound(observations, p.found().notFixed(), pictures),
                p.work(),
                p.price(),
                p.conditions(),
                p.schedule(),
                p.payments(),
                p.warranty(),
                p.notes(),
                p.offer(),
                p.answer());
    }

    static Proposal withWork(Proposal p, ProposalWork work) {
        return new Proposal(
                p.head(),
                p.plan(),
                p.found(),
                work,
                p.price(),
                p.conditions(),
                p.schedule(),
                p.payments(),
                p.warranty(),
                p.notes(),
                p.offer(),
                p.answer());
    }

    static Proposal withPrices(Proposal p, List<PriceRow> rows, List<UnitPriceRow> unknowns) {
        ProposalPrice price = p.price();
        return new Proposal(
                p.head(),
                p.plan(),
                p.found(),
                p.work(),
                new ProposalPrice(
                        rows, price.price(), price.tax(), price.taxRate(), price.total(), price.listing(), unknowns),
                p.conditions(),
                p.schedule(),
                p.payments(),
                p.warranty(),
                p.notes(),
                p.offer(),
                p.answer());
    }
}
