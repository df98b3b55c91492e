package spadework.whatif;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import spadework.company.Company;
import spadework.company.PriceRules;
import spadework.job.Access;
import spadework.job.Digging;
import spadework.job.Job;
import spadework.job.Protection;
import spadework.job.Site;
import spadework.job.Soil;
import spadework.job.SoilType;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.Labor;
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.takeoff.Measuring;

/**
 * What a job is priced from.
 *
 * @param book as this job uses it
 */
public record Case(Job job, Company company, PriceBook book) {
    /** Trenches at and over 20 ft are an engineer's (29 CFR 1926.652(b)(1), App. B, T-14); none is reckoned here. */
    private static final Length DEEPEST = Length.ofFeet(19.9);

    private static final Length SHALLOWEST = Length.ofInches(6);

    /** The quote, without unit prices for the unknown. */
    public Quote quote() {
        return Pricing.known(job, company, book, Measuring.of(job, book));
    }

    /** With other price rules. */
    Case with(UnaryOperator<PriceRules> rules) {
        return new Case(job, company.withPriceRules(rules.apply(company.priceRules())), book);
    }

    /** In soil of another type. */
    Case in(SoilType type) {
        Site s = job.site();
        Soil soil = new Soil(s.soil().texture(), s.soil().seepage(), type);
        return new Case(
                job.withSite(new Site(
                        s.address(),
                        s.yearBuilt(),
                        s.space(),
                        s.house(),
                        s.benchmark(),
                        s.insideFloor(),
                        soil,
                        s.rain(),
                        s.limits(),
                        s.locateTicket(),
                        s.catchment())),
                company,
                book);
    }

    /** With every wall dug another way. */
    Case dug(Optional<Access> access, Optional<Protection> protection) {
        return each(wall -> {
            Digging d = wall.digging();
            return digging(
                    wall,
                    new Digging(
                            access.orElse(d.access()),
                            d.handShare(),
                            d.bottomWidth(),
                            protection.orElse(d.protection())));
        });
    }

    /** With one wall so much deeper, or less deep, as far as a trench of 6 in to 20 ft allows. */
    Case deeper(String label, Length more) {
        return each(wall -> wall.label().equals(label) ? deeper(wall, more) : wall);
    }

    private static Wall deeper(Wall wall, Length more) {
        double room = DEEPEST.minus(wall.deepestTrench()).feet();
        Length shallow = wall.depthStart().compareTo(wall.depthEnd()) <= 0 ? wall.depthStart() : wall.depthEnd();
        double least = SHALLOWEST.minus(shallow).feet();
        return wall.deeperBy(Length.ofFeet(Math.max(Math.min(more.feet(), Math.max(0, room)), Math.min(0, least))));
    }

    private Case each(UnaryOperator<Wall> change) {
        Job changed = job;
        for (Wall wall : job.walls()) {
            changed = changed.withWall(change.apply(wall));
        }
        return new Case(changed, company, book);
    }

    /** With crews that do so many times as much in an hour; above 0. */
    Case producing(BigDecimal factor) {
        return items(item -> item.producing(factor));
    }

    /**
     * With another crew, which takes as many hours.
     *
     * @param instead whose work it does; empty for all work
     */
    Case worked(Optional<String> instead, String crew) {
        return items(
                item -> instead.isEmpty() || item.labor().map(Labor::crew).equals(instead) ? item.doneBy(crew) : item);
    }

    private Case items(UnaryOperator<LineItem> change) {
        Map<String, LineItem> items = new HashMap<>(book.items());
        items.replaceAll((code, item) -> change.apply(item));
        return new Case(
                job,
                company,
                new PriceBook(
                        book.title(),
                        book.dated(),
                        items,
                        book.assemblies(),
                        book.earth(),
                        book.stoneTonsPerCubicYard(),
                        book.truckCubicYards()));
    }

    private static Wall digging(Wall w, Digging digging) {
        return new Wall(
                w.label(),
                w.where(),
                w.faces(),
                w.from(),
                w.length(),
                w.depthStart(),
                w.depthEnd(),
                w.footing(),
                w.kind(),
                w.condition(),
                w.strip(),
                w.openings(),
                w.windowWells(),
                w.finish(),
                digging);
    }
}
