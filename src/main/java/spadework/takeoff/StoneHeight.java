package spadework.takeoff;

import spadework.ground.StoneProfile;
import spadework.job.FootingDrain;
import spadework.job.Job;
import spadework.job.Wall;
import spadework.measure.Length;
import spadework.pricebook.PriceBook;

/** How high the stone stands in the trench. */
public final class StoneHeight {
    private StoneHeight() {}

    /** Where it is highest above the trench's bottom, by footing or by pipe, whichever is higher (IRC R405.1). */
    public static Length of(Job job, PriceBook book, FootingDrain drain, Wall wall) {
        return Length.ofFeet(StoneProfile.of(job, book, drain).get(wall.label()).highest());
    }
}
