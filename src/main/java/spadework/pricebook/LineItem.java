package spadework.pricebook;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.PriceChange;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * Something that is done or supplied, written once and used in every bid.
 *
 * @param code our own short name, as {@code DIG-MACH}
 * @param name the trade name
 * @param homeowner what it is, for the homeowner
 * @param follows the measures that drive its quantity; empty when it is only put in by hand
 * @param standard true when it is priced wherever a measure it follows occurs; false when a job has to name it
 * @param subcontract a subcontractor's or fee's price a unit
 * @param disposal tipping a unit
 * @param film what a coating promises
 * @param pipe the size of a pipe
 * @param unknown true when its unit price is quoted for what nobody can see before digging
 * @param notes for the contractor only
 * @param goodUntil the last day on which its prices hold; empty where nobody said
 * @param retired since when it is given up; it stays readable for bids that use it
 * @param history what was changed in it, oldest first
 * @param step when it is done; empty where its measure or section says so
 */
public record LineItem(
        String code,
        Section section,
        String name,
        String homeowner,
        Unit unit,
        Optional<Measure> follows,
        boolean standard,
        Optional<Material> material,
        Optional<Labor> labor,
        Optional<Dollars> subcontract,
        Optional<Dollars> disposal,
        Optional<Film> film,
        Optional<Pipe> pipe,
        boolean unknown,
        Source source,
        List<String> notes,
        Optional<LocalDate> goodUntil,
        Optional<Retirement> retired,
        List<ItemChange> history,
        Optional<WorkStep> step) {

    public LineItem {
        notes = List.copyOf(notes);
        history = List.copyOf(history);
    }

    /** An item that is done when its measure or section says so. */
    public LineItem(
            String code,
            Section section,
            String name,
            String homeowner,
            Unit unit,
            Optional<Measure> follows,
            boolean standard,
            Optional<Material> material,
            Optional<Labor> labor,
            Optional<Dollars> subcontract,
            Optional<Dollars> disposal,
            Optional<Film> film,
            Optional<Pipe> pipe,
            boolean unknown,
            Source source,
            List<String> notes,
            Optional<LocalDate> goodUntil,
            Optional<Retirement> retired,
            List<ItemChange> history) {
        this(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                standard,
                material,
                labor,
                subcontract,
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                Optional.empty());
    }

    /** Whether its prices are past their last good day. */
    public boolean isStaleOn(LocalDate day) {
        return goodUntil.filter(last -> last.isBefore(day)).isPresent();
    }

    /** Whether it was given up on that day or before. */
    public boolean isRetiredOn(LocalDate day) {
        return retired.filter(end -> !end.on().isAfter(day)).isPresent();
    }

    /** The same item, of which its crew does so many times as much in an hour. */
    public LineItem producing(BigDecimal factor) {
        Optional<Labor> paced = labor.map(l -> l.at(l.perHour().multiply(factor)));
        return new LineItem(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                standard,
                material,
                paced,
                subcontract,
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                step);
    }

    /** The same item, of which its crew does so much in an hour; one without labor stays as it is. */
    public LineItem paced(BigDecimal perHour) {
        return new LineItem(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                standard,
                material,
                labor.map(l -> l.at(perHour)),
                subcontract,
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                step);
    }

    /** The same item done by another crew in as many hours; one without labor stays as it is. */
    public LineItem doneBy(String crew) {
        Optional<Labor> other = labor.map(l -> l.by(crew));
        return new LineItem(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                standard,
                material,
                other,
                subcontract,
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                step);
    }

    /** The same item, priced only where a job names it. */
    LineItem onlyByName() {
        return new LineItem(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                false,
                material,
                labor,
                subcontract,
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                step);
    }

    /** The item at the cost that one job states. */
    LineItem changedBy(PriceChange change) {
        Optional<Material> bought =
                material.map(m -> change.materialCost().map(m::at).orElse(m));
        return new LineItem(
                code,
                section,
                name,
                homeowner,
                unit,
                follows,
                standard,
                bought,
                labor,
                change.subcontract().or(() -> subcontract),
                disposal,
                film,
                pipe,
                unknown,
                source,
                notes,
                goodUntil,
                retired,
                history,
                step);
    }
}
