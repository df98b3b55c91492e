package spadework.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A job as it was measured and promised. Nothing in it is computed.
 *
 * @param number the contractor's own number; papers and files are named after it
 * @param issued the date that every paper of the set carries
 * @param validDays how long the price stands
 * @param protection what is done to keep house and garden from harm, one thing a line
 * @param excluded what is not in the price, beside the company's own list
 * @param assumed what the price takes for granted
 * @param taxClass what kind of work it is for sales tax, by the company's own names; empty for its usual one
 * @param terms what is agreed on this job beside the company's own terms
 * @param notes for the contractor only; no homeowner's paper carries them
 */
public record Job(
        String number,
        String title,
        LocalDate issued,
        int validDays,
        Customer customer,
        Site site,
        List<Observation> observations,
        List<String> notFixed,
        List<Photo> photos,
        List<Wall> walls,
        List<Corner> corners,
        Water water,
        Restoration restoration,
        List<String> protection,
        List<String> excluded,
        List<String> assumed,
        List<ExtraItem> items,
        List<PriceChange> priceChanges,
        Schedule schedule,
        List<Payment> payments,
        Optional<String> taxClass,
        WarrantyTerms warranty,
        List<AcceptedStop> acceptedStops,
        Agreement agreement,
        List<String> terms,
        List<String> notes) {

    public Job {
        observations = List.copyOf(observations);
        notFixed = List.copyOf(notFixed);
        photos = List.copyOf(photos);
        walls = List.copyOf(walls);
        corners = List.copyOf(corners);
        protection = List.copyOf(protection);
        excluded = List.copyOf(excluded);
        assumed = List.copyOf(assumed);
        items = List.copyOf(items);
        priceChanges = List.copyOf(priceChanges);
        payments = List.copyOf(payments);
        acceptedStops = List.copyOf(acceptedStops);
        terms = List.copyOf(terms);
        notes = List.copyOf(notes);
    }

    /**
     * The wall with that label.
     *
     * @throws IllegalArgumentException if there is none; intake has checked every label
     */
    public Wall getWall(String label) {
        return walls.stream()
                .filter(wall -> wall.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no wall " + label));
    }

    /** The end of the work; empty until then. */
    public Optional<Closed> closed() {
        return agreement.closed();
    }

    /** The same job with one wall in place of the one with its label. */
    public Job withWall(Wall other) {
        List<Wall> changed = walls.stream()
                .map(wall -> wall.label().equals(other.label()) ? other : wall)
                .toList();
        return new Job(
                number,
                title,
                issued,
                validDays,
                customer,
                site,
                observations,
                notFixed,
                photos,
                changed,
                corners,
                water,
                restoration,
                protection,
                excluded,
                assumed,
                items,
                priceChanges,
                schedule,
                payments,
                taxClass,
                warranty,
                acceptedStops,
                agreement,
                terms,
                notes);
    }

    /** The same job on another site. */
    public Job withSite(Site other) {
        return new Job(
                number,
                title,
                issued,
                validDays,
                customer,
                other,
                observations,
                notFixed,
                photos,
                walls,
                corners,
                water,
                restoration,
                protection,
                excluded,
                assumed,
                items,
                priceChanges,
                schedule,
                payments,
                taxClass,
                warranty,
                acceptedStops,
                agreement,
                terms,
                notes);
    }

    /** The same job with other pipes. */
    public Job withWater(Water other) {
        return new Job(
                number,
                title,
                issued,
                validDays,
                customer,
                site,
                observations,
                notFixed,
                photos,
                walls,
                corners,
                other,
                restoration,
                protection,
                excluded,
                assumed,
                items,
                priceChanges,
                schedule,
                payments,
                taxClass,
                warranty,
                acceptedStops,
                agreement,
                terms,
                notes);
    }

    /** The same job with other items put in by hand. */
    public Job withItems(List<ExtraItem> others) {
        return new Job(
                number,
                title,
                issued,
                validDays,
                customer,
                site,
                observations,
                notFixed,
                photos,
                walls,
                corners,
                water,
                restoration,
                protection,
                excluded,
                assumed,
                others,
                priceChanges,
                schedule,
                payments,
                taxClass,
                warranty,
                acceptedStops,
                agreement,
                terms,
                notes);
    }

    /** The same job with another agreement. */
    public Job withAgreement(Agreement other) {
        return new Job(
                number,
                title,
                issued,
                validDays,
                customer,
                site,
                observations,
                notFixed,
                photos,
                walls,
                corners,
                water,
                restoration,
                protection,
                excluded,
                assumed,
                items,
                priceChanges,
                schedule,
                payments,
                taxClass,
                warranty,
                acceptedStops,
                other,
                terms,
                notes);
    }
}
