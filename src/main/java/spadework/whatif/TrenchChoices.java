// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spadework.measure.Figures;
import spadework.measure.Unit;
import spadework.money.Dollars;
import spadework.pricebook.Measure;
import spadework.pricebook.Section;
import spadework.pricing.PricedLine;
import spadework.pricing.PricedSection;
import spadework.pricing.Quote;
import spadework.schedule.CrewCalendar;
import spadework.schedule.ScheduledTakeoff;
import spadework.takeoff.Quantity;
import spadework.takeoff.Takeoff;

/**
 * A job in each way to dig, side by side, by the path that every price takes.
 *
 * @param all each way for all walls that need one
 * @param planned the job as it stands, where it is none of these
 */
public record TrenchChoices(List<TrenchChoice> all, Optional<PlannedWays> planned) {
    private static final Set<Measure> SOIL = Set.of(Measure.DUG, Measure.PIPE_TRENCH);

    private static final Set<Measure> RENTAL =
            Set.of(Measure.SHIELD_DAY, Measure.EXCAVATOR_DAY, Measure.STANDING_DAY, Measure.PUMP_DAY);

    public TrenchChoices {
        all = List.copyOf(all);
    }

    /** The choices for a job; none where no wall is dug. */
    public static TrenchChoices of(Case job) {
        List<TrenchChoice> all = new ArrayList<>();
        if (job.job().walls().stream().anyMatch(TrenchLaw::needsWay)) {
            for (TrenchWay way : TrenchWay.values()) {
                all.add(choice(job, way));
            }
        }
        boolean mixed = !all.isEmpty() && all.stream().noneMatch(TrenchChoice::inJob);
        return new TrenchChoices(
                all, mixed ? Optional.of(new PlannedWays(PlannedWays.of(job.job()), priced(job))) : Optional.empty());
    }

    /** The cheapest of those that may be offered. */
    public Optional<TrenchChoice> cheapest() {
        return all.stream()
                .filter(TrenchChoice::isOffered)
                .min(Comparator.comparing(
                        choice -> choice.priced().orElseThrow().price().amount()));
    }

    private static TrenchChoice choice(Case asItIs, TrenchWay way) {
        List<Unlawful> against = TrenchLaw.against(way, asItIs.job());
        Case dug = asItIs.dug(way);
        return new TrenchChoice(
                way,
                dug.job().equals(asItIs.job()),
                against,
                against.isEmpty() ? Optional.of(priced(dug)) : Optional.empty());
    }

    private static TrenchChoice.Priced priced(Case dug) {
        ScheduledTakeoff scheduled = ScheduledTakeoff.of(dug.job(), dug.company(), dug.book());
        Takeoff takeoff = scheduled.takeoff();
        CrewCalendar calendar = scheduled.calendar();
        Quote quote = dug.quote(takeoff);
        return new TrenchChoice.Priced(
                soil(takeoff),
                restoration(quote),
                calendar.workingDays(),
                calendar.finish(),
                rental(dug, quote),
                quote.total());
    }

    private static BigDecimal soil(Takeoff takeoff) {
        BigDecimal dug = takeoff.quantities().stream()
                .filter(quantity -> SOIL.contains(quantity.measure()))
                .map(Quantity::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return Figures.printed(dug, Unit.CUBIC_YARD);
    }

    private static Dollars restoration(Quote quote) {
        return Dollars.total(quote.sections().stream()
                .filter(section -> section.section().kind() == Section.GROUND)
                .map(PricedSection::price)
                .toList());
    }

    private static Dollars rental(Case dug, Quote quote) {
        return Dollars.total(quote.lines().stream()
                .filter(line -> dug.book()
                        .get(line.code())
                        .follows()
                        .filter(RENTAL::contains)
                        .isPresent())
                .map(PricedLine::price)
                .toList());
    }
}
