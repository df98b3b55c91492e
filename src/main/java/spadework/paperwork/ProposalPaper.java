package spadework.paperwork;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.drawing.Scene;
import spadework.job.Job;
import spadework.pricebook.Measure;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.pricing.UnitPrice;
import spadework.takeoff.Quantity;

/** Puts the proposal together. Of the quote it takes prices only. */
public final class ProposalPaper {
    private ProposalPaper() {}

    public static Proposal of(Dossier dossier, Scene plan) {
        Job job = dossier.job();
        Company company = dossier.company();
        Quote quote = dossier.quote();
        Runs runs = new Runs(dossier);
        return new Proposal(
                Heads.of(dossier),
                plan,
                job.observations(),
                job.notFixed(),
                new WallWorks(dossier).all(),
                runs.all(),
                runs.outlets(),
                prices(dossier, quote),
                quote.price(),
                quote.tax(),
                company.tax().mode() == TaxMode.ON_PRICE ? company.tax().rate().text() : "",
                quote.total(),
                quote.bookTitle() + ", " + Dates.words(quote.bookDate()),
                quote.unitPrices().stream()
                        .map(price -> unitPrice(dossier, price))
                        .toList(),
                included(dossier),
                Stream.concat(company.excluded().stream(), job.excluded().stream())
                        .distinct()
                        .toList(),
                job.assumed(),
                job.protection(),
                Dates.words(job.schedule().earliestStart()),
                Dates.words(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                job.schedule().note(),
                Payments.of(quote.payments()),
                Promises.specimen(job),
                company.preparation(),
                Notes.forHomeowner(dossier),
                Stream.concat(company.terms().stream(), job.terms().stream()).toList(),
                dossier.pictures(),
                Offers.of(dossier));
    }

    static List<PriceRow> prices(Dossier dossier, Quote quote) {
        List<PriceRow> rows = new ArrayList<>();
        for (PricedSection section : quote.sections()) {
            String key = Terms.key(section.section().kind().label());
            rows.add(new PriceRow(section.section().name(), dossier.terms().get("includes." + key), section.price()));
        }
        if (!quote.minimumTopUp().isZero()) {
            rows.add(new PriceRow(
                    dossier.terms().get("minimum.name"),
                    dossier.terms().get("includes.minimum"),
                    quote.minimumTopUp()));
        }
        return rows;
    }

    static UnitPriceRow unitPrice(Dossier dossier, UnitPrice price) {
        Terms terms = dossier.terms();
        String unit = terms.get("unit." + price.unit().symbol());
        return UnitPrice.wallKey(price)
                .map(key -> new UnitPriceRow(
                        terms.get("unknown." + key + ".name", "label", price.homeowner()),
                        terms.get("unknown." + key + ".explanation", "label", price.homeowner()),
                        unit,
                        price.price()))
                .orElseGet(() -> new UnitPriceRow(price.name(), price.homeowner(), unit, price.price()));
    }

    static List<String> included(Dossier dossier) {
        Set<Measure> measured =
                dossier.takeoff().quantities().stream().map(Quantity::measure).collect(Collectors.toSet());
        return Arrays.stream(Measure.values())
                .filter(measured::contains)
                .map(measure -> dossier.terms().find("included." + Terms.key(measure.trade())))
                .flatMap(Optional::stream)
                .toList();
    }
}
