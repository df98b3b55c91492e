// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import spadework.job.PriceChange;
import spadework.measure.Unit;
import spadework.money.Dollars;

/**
 * Something that is done or supplied, written once and used in every bid. Its parts answer by name here as well.
 *
 * @param film what a coating promises
 * @param pipe the size of a pipe
 */
@RecordBuilder
public record LineItem(
        ItemIdentity identity, ItemUse use, ItemCost cost, Optional<Film> film, Optional<Pipe> pipe, ItemUpkeep upkeep)
        implements LineItemBuilder.With {

    public String code() {
        return identity.code();
    }

    public Section section() {
        return identity.section();
    }

    public String name() {
        return identity.name();
    }

    public String homeowner() {
        return identity.homeowner();
    }

    public Unit unit() {
        return identity.unit();
    }

    public Optional<Measure> follows() {
        return use.follows();
    }

    public boolean standard() {
        return use.standard();
    }

    public boolean unknown() {
        return use.unknown();
    }

    public Optional<WorkStep> step() {
        return use.step();
    }

    public Optional<Material> material() {
        return cost.material();
    }

    public Optional<Labor> labor() {
        return cost.labor();
    }

    public Optional<Dollars> subcontract() {
        return cost.subcontract();
    }

    public Optional<Dollars> disposal() {
        return cost.disposal();
    }

    public Source source() {
        return upkeep.source();
    }

    public Optional<LocalDate> goodUntil() {
        return upkeep.goodUntil();
    }

    public Optional<Retirement> retired() {
        return upkeep.retired();
    }

    public List<ItemChange> history() {
        return upkeep.history();
    }

    public List<String> notes() {
        return upkeep.notes();
    }

    public Supplier supplier() {
        return upkeep.supplier();
    }

    /** Whether its prices are past their last good day. */
    public boolean isStaleOn(LocalDate day) {
        return goodUntil().filter(last -> last.isBefore(day)).isPresent();
    }

    /** Whether it was retired on that day or before. */
    public boolean isRetiredOn(LocalDate day) {
        return retired().filter(end -> !end.on().isAfter(day)).isPresent();
    }

    /** The same item, of which its crew does so many times as much in an hour. */
    public LineItem producing(BigDecimal factor) {
        return withCost(cost.worked(labor -> labor.at(labor.perHour().multiply(factor))));
    }

    /** The same item, of which its crew does so much in an hour; one without labor stays as it is. */
    public LineItem paced(BigDecimal perHour) {
        return withCost(cost.worked(labor -> labor.at(perHour)));
    }

    /** The same item done by another crew in as many hours; one without labor stays as it is. */
    public LineItem doneBy(String crew) {
        return withCost(cost.worked(labor -> labor.by(crew)));
    }

    /** The same item, priced only where a job names it. */
    LineItem onlyByName() {
        return withUse(use.onlyByName());
    }

    /** The item at the cost that one job states. */
    LineItem changedBy(PriceChange change) {
        return withCost(cost.changedBy(change));
    }
}
