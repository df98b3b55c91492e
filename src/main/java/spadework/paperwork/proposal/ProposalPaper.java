package spadework.paperwork.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.company.TaxMode;
import spadework.drawing.shape.Scene;
import spadework.job.Job;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.paperwork.PrintedDates;
import spadework.paperwork.part.FindingNotes;
import spadework.paperwork.part.PaperHeads;
import spadework.paperwork.part.PaymentRows;
import spadework.paperwork.part.PriceRow;
import spadework.paperwork.part.UnitPriceRow;
import spadework.paperwork.part.WarrantyPromises;
import spadework.paperwork.work.PipeWorks;
import spadework.paperwork.work.WallWorks;
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
        PipeWorks runs = new PipeWorks(dossier);
        return new Proposal(
                PaperHeads.of(dossier),
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
                quote.bookTitle() + ", " + PrintedDates.words(quote.bookDate()),
                quote.unitPrices().stream()
                        .map(price -> unitPrice(dossier, price))
                        .toList(),
                included(dossier),
                Stream.concat(company.excluded().stream(), job.excluded().stream())
                        .distinct()
                        .toList(),
                job.assumed(),
                job.protection(),
                PrintedDates.words(job.schedule().earliestStart()),
                PrintedDates.words(job.schedule().latestFinish()),
                job.schedule().workingDays(),
                job.schedule().note(),
                PaymentRows.of(quote.payments()),
                WarrantyPromises.specimen(job),
                company.preparation(),
                FindingNotes.forHomeowner(dossier),
                Stream.concat(company.terms().stream(), job.terms().stream()).toList(),
                dossier.pictures(),
                Offers.of(dossier));
    }

    public static List<PriceRow> prices(Dossier dossier, Quote quote) {
        List<PriceRow> rows = new ArrayList<>();
        for (PricedSection section : quote.sections()) {
            String key = PaperWords.key(section.section().kind().label());
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

    public static UnitPriceRow unitPrice(Dossier dossier, UnitPrice price) {
        PaperWords terms = dossier.terms();
        String unit = terms.get("unit." + price.unit().symbol());
        return UnitPrice.wallKey(price)
                .map(key -> new UnitPriceRow(
                        terms.get("unknown." + key + ".name", "label", price.homeowner()),
                        terms.get("unknown." + key + ".explanation", "label", price.homeowner()),
                        unit,
                        price.price()))
                .orElseGet(() -> new UnitPriceRow(price.name(), price.homeowner(), unit, price.price()));
    }

    public static List<String> included(Dossier dossier) {
        Set<Measure> measured =
                dossier.takeoff().quantities().stream().map(Quantity::measure).collect(Collectors.toSet());
        return Arrays.stream(Measure.values())
                .filter(measured::contains)
                .map(measure -> dossier.terms().find("included." + PaperWords.key(measure.trade())))
                .flatMap(Optional::stream)
                .toList();
    }
}
