// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import spadework.contract.PricedOption;
import spadework.job.Job;
import spadework.job.OutletKind;
import spadework.job.Space;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.proposal.ProposalAnswer.Alternative;
import spadework.pricing.Due;

/** What a yes does where the house stands, what follows, and what else could be done. */
final class ProposalAnswers {
    private final Dossier dossier;
    private final Job job;
    private final PaperWords terms;

    private ProposalAnswers(Dossier dossier) {
        this.dossier = dossier;
        this.job = dossier.job();
        this.terms = dossier.terms();
    }

    static ProposalAnswer of(Dossier dossier) {
        return new ProposalAnswers(dossier).answer();
    }

    private ProposalAnswer answer() {
        return new ProposalAnswer(alternatives(), next());
    }

    private List<Alternative> alternatives() {
        List<Alternative> ways = new ArrayList<>(List.of(way("nothing")));
        boolean ground = !job.water().drains().isEmpty();
        if (ground && !job.water().roofLines().isEmpty()) {
            ways.add(way("roof-first"));
        }
        if (ground && job.site().space() == Space.BASEMENT) {
            ways.add(way("inside"));
        }
        boolean pumped = job.water().outlets().stream().anyMatch(outlet -> outlet.kind() == OutletKind.SUMP);
        if (ground && !pumped && !job.water().outlets().isEmpty()) {
            ways.add(way("pump"));
        }
        boolean tooHigh = dossier.findings().site().stream()
                .anyMatch(finding ->
                        Set.of("candidate-too-high", "candidate-higher").contains(finding.id()));
        if (pumped && tooHigh) {
            ways.add(way("daylight"));
        }
        dossier.contract().options().forEach(option -> ways.add(option(option)));
        return ways;
    }

    private Alternative way(String key) {
        return new Alternative(terms.get("way." + key), terms.get("way." + key + ".says"));
    }

    private Alternative option(PricedOption priced) {
        Dollars total = priced.sum().total();
        String amount = (total.isNegative() ? Dollars.ZERO.minus(total) : total).text();
        String key = total.isZero() ? "way.option.same" : total.isNegative() ? "way.option.saves" : "way.option.adds";
        return new Alternative(
                priced.option().title(), terms.get(key, "label", priced.option().label(), "amount", amount));
    }

    private List<String> next() {
        List<String> steps = new ArrayList<>();
        steps.add(terms.get("next.contract"));
        dossier.contract().proposed().payments().stream()
                .filter(Due::atSigning)
                .findFirst()
                .ifPresent(due -> steps.add(
                        terms.get("next.due.contract", "amount", due.amount().text())));
        if (!engineer(dossier).isEmpty()) {
            steps.add(terms.get("next.engineer"));
        }
        steps.add(terms.get(job.site().locateTicket().isEmpty() ? "next.locate" : "next.located"));
        steps.add(terms.get("next.start"));
        return steps;
    }

    /** Who pays the engineer: {@code us} where a line does, else {@code you}; empty where none is due. */
    static String engineer(Dossier dossier) {
        if (dossier.takeoff().lines().stream().anyMatch(line -> line.code().equals("ENG-VISIT"))) {
            return "us";
        }
        return dossier.findings().site().stream()
                        .anyMatch(finding -> finding.id().startsWith("engineer-"))
                ? "you"
                : "";
    }
}
