// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.TaxMode;
import spadework.contract.PricedChange;
import spadework.contract.UnfitWall;
import spadework.contract.UnitLine;
import spadework.drawing.plan.PlanSketch;
import spadework.job.Accepted;
import spadework.job.Agreed;
import spadework.job.Alteration;
import spadework.job.Altered;
import spadework.job.Change;
import spadework.job.Decision;
import spadework.job.Job;
import spadework.job.Signing;
import spadework.measure.Figures;
import spadework.money.Dollars;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.SectionNames;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PriceRows;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.work.AlteredWorks;
import spadework.paperwork.work.QuantityChangeRows;
import spadework.safety.LeadPaint;
import spadework.schedule.ChangedFinish;

/** Puts a change order together. Of an accepted one the signed price counts, whatever is figured now. */
public final class ChangeOrderPaper {
    private ChangeOrderPaper() {}

    /**
     * The paper of one change order.
     *
     * @param proposed the job as proposed: the change is told from what was agreed before it
     */
    public static ChangeOrder of(Dossier proposed, PricedChange priced) {
        Change change = priced.change();
        Job before = Agreed.before(proposed.job(), change.number());
        Dossier standing = proposed.about(before);
        return new ChangeOrder(
                PaperHeads.of(proposed, change.issued()),
                subject(proposed, change),
                PlanSketch.changed(
                        before,
                        Altered.of(before, change.alteration()),
                        proposed.terms().language()),
                AlteredWorks.of(standing, change.alteration()),
                FindingNotes.forHomeowner(standing, LeadPaint.added(before, change.alteration())),
                QuantityChangeRows.all(priced.quantities(), proposed.terms()),
                price(proposed, priced),
                time(proposed, change),
                decision(proposed.terms(), change),
                subcontractors(proposed),
                ContractNotices.onChangeOrders(proposed));
    }

    private static ChangeSubject subject(Dossier proposed, Change change) {
        return new ChangeSubject(
                proposed.job()
                        .agreement()
                        .accepted()
                        .map(Accepted::on)
                        .map(proposed.terms()::day)
                        .orElse(""),
                change.number(),
                change.title(),
                proposed.terms().of("reason", change.reason()),
                change.why(),
                change.evidence(),
                proposed.photos().work().ofChange(change.number()));
    }

    private static ChangePrice price(Dossier proposed, PricedChange priced) {
        Dollars total = priced.agreed().total();
        Dollars lines =
                Dollars.total(priced.lines().stream().map(UnitLine::amount).toList());
        return new ChangePrice(
                priced.lines().stream().map(line -> line(proposed, line)).toList(),
                priced.rest(),
                priced.lines().isEmpty()
                        ? Dollars.ZERO
                        : priced.agreed().price().minus(lines).minus(priced.rest()),
                priced.isOtherwiseByPath() ? priced.byPath().total().text() : "",
                byParts(proposed, priced),
                priced.agreed().price(),
                priced.agreed().tax(),
                proposed.company().tax().mode() == TaxMode.ON_PRICE
                        ? proposed.company().tax().rate().text()
                        : "",
                total,
                total.isNegative() ? Dollars.ZERO.minus(total) : total,
                priced.before(),
                priced.after());
    }

    private static ChangeByParts byParts(Dossier proposed, PricedChange priced) {
        List<String> unfit = new ArrayList<>(priced.unfit().stream()
                .map(wall -> unfit(proposed.terms(), wall))
                .toList());
        if (!unfit.isEmpty() && priced.lines().isEmpty()) {
            unfit.add(besideTheFoot(proposed.terms(), priced));
        }
        if (!priced.lines().isEmpty()) {
            return new ChangeByParts(List.of(), Dollars.ZERO, unfit);
        }
        List<ChangeByParts.Part> parts = priced.sections().stream()
                .map(part -> new ChangeByParts.Part(
                        SectionNames.of(proposed.terms(), part.name()), part.before(), part.after(), part.difference()))
                .toList();
        return new ChangeByParts(
                parts,
                priced.agreed()
                        .price()
                        .minus(Dollars.total(parts.stream()
                                .map(ChangeByParts.Part::difference)
                                .toList())),
                unfit);
    }

    private static String unfit(PaperWords terms, UnfitWall wall) {
        String differences = wall.differences().stream()
                .sorted()
                .map(difference -> terms.of("unfit", difference))
                .collect(Collectors.joining("; "));
        return terms.get(
                "unfit.wall",
                "wall",
                wall.wall(),
                "named",
                wall.named(),
                "differences",
                differences,
                "length",
                wall.length().text(),
                "sum",
                wall.byTheFoot().text());
    }

    /** What the change comes to, beside what the price of a foot would, and what it holds that a foot does not. */
    private static String besideTheFoot(PaperWords terms, PricedChange priced) {
        Alteration added = priced.change().alteration();
        Stream<String> also = Stream.of(
                        added.restoration().map(ground -> "ground"),
                        Optional.of("pipes")
                                .filter(pipes -> !added.mains().isEmpty()
                                        || !added.roofLines().isEmpty()
                                        || !added.outlets().isEmpty()),
                        Optional.of("items").filter(items -> !added.items().isEmpty()))
                .flatMap(Optional::stream);
        String named = also.map(what -> terms.get("unfit.also." + what)).collect(Collectors.joining("; "));
        String price = priced.agreed().price().text();
        return named.isEmpty()
                ? terms.get("unfit.price", "price", price)
                : terms.get("unfit.price.also", "price", price, "also", named);
    }

    private static ChangeTime time(Dossier proposed, Change change) {
        return new ChangeTime(
                change.days(),
                finish(proposed, change.number(), 0),
                change.days() == 0 ? "" : finish(proposed, change.number(), change.days()));
    }

    private static ChangeDecision decision(PaperWords terms, Change change) {
        return new ChangeDecision(
                change.state().name().toLowerCase(Locale.ROOT),
                change.decision().map(Decision::by).orElse(List.of()),
                change.decision().map(Decision::on).map(terms::day).orElse(""),
                change.decision().map(Decision::signatures).orElse(List.of()).stream()
                        .flatMap(signature -> signature.typed().stream())
                        .collect(Collectors.joining(", ")));
    }

    private static String subcontractors(Dossier dossier) {
        return dossier.job()
                .agreement()
                .signing()
                .flatMap(Signing::subcontractors)
                .map(all -> all.isEmpty()
                        ? dossier.terms().get("subcontractors.none")
                        : dossier.terms()
                                .get(
                                        "subcontractors.some",
                                        "names",
                                        all.stream()
                                                .map(one -> one.name() + " (" + one.trade() + ")")
                                                .collect(Collectors.joining(", "))))
                .orElse("");
    }

    private static UnitLineRow line(Dossier dossier, UnitLine line) {
        UnitPriceRow price = PriceRows.unitPrice(dossier, line.price());
        return new UnitLineRow(
                price.name(),
                line.quantity(),
                Figures.counted(line.quantity(), line.price().unit()),
                price.unit(),
                price.price(),
                line.amount());
    }

    /** The contract's finish date, later by the working days of the changes accepted before, and by so many more. */
    private static String finish(Dossier proposed, int number, int more) {
        return ChangedFinish.of(proposed.job(), change -> change.number() < number, more)
                .day()
                .map(proposed.terms()::day)
                .orElse("");
    }
}
