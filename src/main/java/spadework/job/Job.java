// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A job as it was measured and promised. Nothing in it is computed. Its parts answer by name here as well.
 *
 * @param pricing what of the price this job decides for itself
 * @param notes for the contractor only; no homeowner's paper carries them
 */
@RecordBuilder
public record Job(
        JobHead head,
        Customer customer,
        Site site,
        Survey survey,
        Work work,
        JobPricing pricing,
        ContractTerms contractTerms,
        List<AcceptedStop> acceptedStops,
        Agreement agreement,
        List<String> notes)
        implements JobBuilder.With {

    public Job {
        acceptedStops = List.copyOf(acceptedStops);
        notes = List.copyOf(notes);
    }

    public String number() {
        return head.number();
    }

    public String title() {
        return head.title();
    }

    public LocalDate issued() {
        return head.issued();
    }

    public int validDays() {
        return head.validDays();
    }

    public List<Observation> observations() {
        return survey.observations();
    }

    public List<String> notFixed() {
        return survey.notFixed();
    }

    public List<Photo> photos() {
        return survey.photos();
    }

    public List<Wall> walls() {
        return work.walls();
    }

    public List<Corner> corners() {
        return work.corners();
    }

    public Water water() {
        return work.water();
    }

    public Restoration restoration() {
        return work.restoration();
    }

    public List<String> protection() {
        return work.protection();
    }

    public Schedule schedule() {
        return work.schedule();
    }

    public List<ExtraItem> items() {
        return pricing.items();
    }

    public List<PriceChange> priceChanges() {
        return pricing.priceChanges();
    }

    public Optional<String> taxClass() {
        return pricing.taxClass();
    }

    public List<String> excluded() {
        return contractTerms.excluded();
    }

    public List<String> assumed() {
        return contractTerms.assumed();
    }

    public List<Payment> payments() {
        return contractTerms.payments();
    }

    /** The warranty's terms, without what this job does not have. */
    public WarrantyTerms warranty() {
        return JobWarranty.of(contractTerms.warranty(), this);
    }

    public List<String> terms() {
        return contractTerms.terms();
    }

    /**
     * The wall with that label.
     *
     * @throws IllegalArgumentException if there is none; intake has checked every label
     */
    public Wall getWall(String label) {
        int index = indexOfWall(label);
        if (index < 0) {
            throw new IllegalArgumentException("no wall " + label);
        }
        return walls().get(index);
    }

    /** Place of the wall with that label among the walls, from 0; below 0 where there is none. */
    public int indexOfWall(String label) {
        List<Wall> walls = walls();
        for (int i = 0; i < walls.size(); i++) {
            if (walls.get(i).label().equals(label)) {
                return i;
            }
        }
        return -1;
    }

    /** The end of the work; empty until then. */
    public Optional<Closed> closed() {
        return agreement.closed();
    }

    /** The same job with one wall in place of the one with its label. */
    public Job withWall(Wall other) {
        return withWalls(walls().stream()
                .map(wall -> wall.label().equals(other.label()) ? other : wall)
                .toList());
    }

    /** The same job with other walls. */
    public Job withWalls(List<Wall> others) {
        return withWork(work.withWalls(others));
    }

    /** The same job with other pipes. */
    public Job withWater(Water other) {
        return withWork(work.withWater(other));
    }

    /** The same job with other items put in by hand. */
    public Job withItems(List<ExtraItem> others) {
        return withPricing(pricing.withItems(others));
    }
}
