// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
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
import spadework.pricebook.LineItem;
import spadework.pricebook.PriceBook;
import spadework.pricing.Pricing;
import spadework.pricing.Quote;
import spadework.schedule.DayQuantities;
import spadework.takeoff.Takeoff;
import spadework.trench.TrenchLimits;

/**
 * What a job is priced from.
 *
 * @param book as this job uses it
 */
public record Case(Job job, Company company, PriceBook book) {
    private static final Length SHALLOWEST = Length.ofInches(6);

    /** The quote, without unit prices for the unknown. */
    public Quote quote() {
        return quote(takeoff());
    }

    /** What it takes. */
    public Takeoff takeoff() {
        return DayQuantities.takeoff(job, company, book);
    }

    Quote quote(Takeoff takeoff) {
        return Pricing.known(job, company, book, takeoff);
    }

    /** With other price rules. */
    Case with(UnaryOperator<PriceRules> rules) {
        return new Case(job, company.withPriceRules(rules.apply(company.priceRules())), book);
    }

    /** In soil of another type. */
    Case in(SoilType type) {
        Site s = job.site();
        Soil soil = new Soil(s.soil().texture(), s.soil().seepage(), type);
        return new Case(job.withSite(s.withSoil(soil)), company, book);
    }

    /** With every wall dug by machine or by hand. */
    Case dug(Access access) {
        return each(wall -> dug(wall, access, wall.digging().protection()));
    }

    /** With every wall's bank kept another way. */
    Case dug(Protection protection) {
        return each(wall -> dug(wall, wall.digging().access(), protection));
    }

    private static Wall dug(Wall wall, Access access, Protection protection) {
        Digging d = wall.digging();
        return wall.withDigging(new Digging(access, d.handShare(), d.bottomWidth(), protection, d.ends()));
    }

    /** With every wall that needs protection dug in one way; where a slope has no room, by hand behind a shield. */
    Case dug(TrenchWay way) {
        return each(wall -> TrenchLaw.needsWay(wall) ? dug(way, wall) : byHand(way, wall));
    }

    private Wall dug(TrenchWay way, Wall wall) {
        return switch (way) {
            case SLOPE -> TrenchLaw.dug(wall, wall.digging().access(), Protection.SLOPED);
            case BENCH -> TrenchLaw.dug(wall, wall.digging().access(), Protection.BENCHED);
            case SHIELD -> TrenchLaw.dug(wall, wall.digging().access(), Protection.SHIELDED);
            case HAND ->
                TrenchLaw.dug(wall, Access.HAND, TrenchLaw.slopes(job, wall) ? Protection.SLOPED : Protection.SHIELDED);
        };
    }

    private static Wall byHand(TrenchWay way, Wall wall) {
        return way == TrenchWay.HAND
                ? TrenchLaw.dug(wall, Access.HAND, wall.digging().protection())
                : wall;
    }

    /** With one wall so much deeper, or less deep, from 6 in to the depth at which an engineer designs it. */
    Case deeper(String label, Length more) {
        return each(wall -> wall.label().equals(label) ? deeper(wall, more) : wall);
    }

    private static Wall deeper(Wall wall, Length more) {
        double room = TrenchLimits.ENGINEER_OVER.minus(wall.deepestTrench()).feet();
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

    /** With another crew for all work, which takes as many hours. */
    Case worked(String crew) {
        return items(item -> item.doneBy(crew));
    }

    /** With another crew for the work of one, which takes as many hours. */
    Case worked(String instead, String crew) {
        return items(item ->
                item.labor().filter(labor -> labor.crew().equals(instead)).isPresent() ? item.doneBy(crew) : item);
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
}
